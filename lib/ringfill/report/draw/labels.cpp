#include <ringfill/report/draw/labels.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// Free space between two labels [mm].
constexpr double gap = 0.5;

constexpr std::string_view no_break = "\u00A0";

/// Width in the widest of the common sans-serif faces [em].
double width_of(std::uint32_t code) {
    const auto is_one_of = [code](std::string_view letters) {
        return code < 0x80 && letters.find(static_cast<char>(code)) != std::string_view::npos;
    };
    if (is_one_of(" .,:;ijl'|") || code == 0xA0)
        return 0.36;
    if (is_one_of("ftr-()"))
        return 0.44;
    if (is_one_of("mwMW%"))
        return 1.0;
    return code >= 0x80 || (code >= 'A' && code <= 'Z') ? 0.8 : 0.65;
}

double side_of(PaperPoint a, PaperPoint b, PaperPoint c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
    return side_of(a, b, c) * side_of(a, b, d) < 0 && side_of(c, d, a) * side_of(c, d, b) < 0;
}

/// Tops of boxes in a fixed order, each as near to where it would be as the others let it: neighbours that
/// would overlap are pushed apart as one block round their mean.
void spread(std::vector<PlacedLabel>& placed, const std::vector<Label>& labels, const LabelColumn& column) {
    struct Block {
        double sum;
        double count;
        double height;
        std::size_t first;
        double top(const LabelColumn& within) const {
            return std::clamp(sum / count, within.top, std::max(within.top, within.bottom - height));
        }
    };
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < placed.size(); ++i) {
        const double wish = labels[placed[i].label].target.y - placed[i].height / 2;
        blocks.push_back({wish, 1, placed[i].height, i});
        while (blocks.size() > 1) {
            Block& before = blocks[blocks.size() - 2];
            const Block& last = blocks.back();
            if (before.top(column) + before.height + gap <= last.top(column))
                break;
            const double shift = before.height + gap;
            before.sum += last.sum - shift * last.count;
            before.count += last.count;
            before.height += gap + last.height;
            blocks.pop_back();
        }
    }
    for (std::size_t b = 0; b < blocks.size(); ++b) {
        double top = blocks[b].top(column);
        const std::size_t end = b + 1 < blocks.size() ? blocks[b + 1].first : placed.size();
        for (std::size_t i = blocks[b].first; i < end; ++i) {
            placed[i].top = top;
            top += placed[i].height + gap;
        }
    }
}

/// Changes the place of one pair whose leaders cross; each change makes the leaders shorter together, so it
/// comes to an end. @return whether there was one.
bool uncross(std::vector<PlacedLabel>& placed, const std::vector<Label>& labels, const LabelColumn& column) {
    for (std::size_t i = 0; i < placed.size(); ++i)
        for (std::size_t k = i + 1; k < placed.size(); ++k)
            if (cross(labels[placed[i].label].target, placed[i].leader_end(column),
                      labels[placed[k].label].target, placed[k].leader_end(column))) {
                std::swap(placed[i], placed[k]);
                spread(placed, labels, column);
                return true;
            }
    return false;
}

double height_together(const std::vector<PlacedLabel>& placed) {
    double sum = -gap;
    for (const PlacedLabel& label : placed)
        sum += label.height + gap;
    return sum;
}

} // namespace

double text_height(std::size_t lines) {
    return letter_rise + letter_hang + line_step * static_cast<double>(lines - 1);
}

double text_width(std::string_view utf8, double size) {
    double sum = 0;
    for (std::size_t i = 0; i < utf8.size();) {
        const Character c = character_at(utf8, i);
        sum += width_of(c.code);
        i += c.bytes;
    }
    return sum * size;
}

std::vector<std::string> wrap_label(std::string_view text, double width) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        const std::string word(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (!lines.empty() && text_width(lines.back() + " " + word) <= width)
            lines.back() += " " + word;
        else
            lines.push_back(word);
    }
    return lines;
}

std::string held_together(std::string_view shown) {
    std::string held;
    for (const char& c : shown)
        held += c == ' ' ? no_break : std::string_view(&c, 1);
    return held;
}

PaperPoint PlacedLabel::leader_end(const LabelColumn& column) const {
    return {column.left - 0.7, top + letter_rise - 0.35 * letter_size};
}

std::vector<PlacedLabel> place_labels(const std::vector<Label>& labels, const LabelColumn& column) {
    const double width = column.right - column.left;
    std::vector<PlacedLabel> placed;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        PlacedLabel label{i, wrap_label(labels[i].text, width), 0, 0};
        const auto is_too_wide = [width](const std::string& line) { return text_width(line) > width; };
        if (label.lines.empty() || std::any_of(label.lines.begin(), label.lines.end(), is_too_wide))
            continue;
        label.height = text_height(label.lines.size());
        placed.push_back(std::move(label));
    }
    while (!placed.empty() && height_together(placed) > column.bottom - column.top)
        placed.erase(std::max_element(placed.begin(), placed.end(), [&](const auto& a, const auto& b) {
            return labels[a.label].rank < labels[b.label].rank;
        }));
    std::stable_sort(placed.begin(), placed.end(), [&](const auto& a, const auto& b) {
        return labels[a.label].target.y < labels[b.label].target.y;
    });
    spread(placed, labels, column);
    for (int changes = 200; changes > 0 && uncross(placed, labels, column);)
        --changes;
    return placed;
}

void draw_labels(Svg& svg, const std::vector<Label>& labels, const LabelColumn& column) {
    for (const PlacedLabel& label : place_labels(labels, column)) {
        svg.line(labels[label.label].target, label.leader_end(column), thin_pen);
        svg.text({column.left, label.top + letter_rise}, label.lines);
    }
}

double draw_note(Svg& svg, const std::string& note, double y) {
    const auto lines = wrap_label(note, paper_width - 2);
    svg.text({1, y + letter_rise}, lines);
    return text_height(lines.size());
}

void draw_dimension(Svg& svg, const DimensionLine& dimension) {
    constexpr double past = 0.8;    // extension lines go past the line
    constexpr double outside = 2.6; // from the line to a text beside it
    constexpr double stroke = 0.7;  // half of an oblique stroke at an end
    const double y = dimension.y;
    for (const double x : {dimension.from, dimension.to}) {
        svg.line({x, dimension.begin}, {x, y + past}, thin_pen);
        svg.line({x - stroke, y + stroke}, {x + stroke, y - stroke}, outline_pen);
    }
    const double width = text_width(dimension.text);
    const bool fits = width + 2 * past < dimension.to - dimension.from;
    const bool beside = !fits && dimension.to + outside + width < paper_width - 1;
    svg.line({dimension.from, y}, {beside ? dimension.to + outside - 0.6 : dimension.to, y}, thin_pen);
    if (beside) {
        svg.text({dimension.to + outside, y + 0.36 * letter_size}, {dimension.text});
        return;
    }
    const double middle = std::clamp((dimension.from + dimension.to) / 2, 1 + width / 2,
                                     std::max(1 + width / 2, paper_width - 1 - width / 2));
    svg.text({middle, y - 1.1}, {dimension.text}, Anchor::middle);
}

std::vector<int> numbers_shown(int count, double room) {
    std::vector<int> shown;
    if (count < 1)
        return shown;
    int step = 1;
    while (step < room && step < count)
        step *= step == 1 || step % 2 == 0 ? 5 : 2; // 1, 5, 10, 50, …
    shown.push_back(1);
    for (int n = step == 1 ? 2 : step; n < count; n += step)
        if (n - 1 >= room && count - n >= room)
            shown.push_back(n);
    if (count > 1 && count - 1 >= room)
        shown.push_back(count);
    return shown;
}

} // namespace ringfill
