#include <ringfill/report/draw/labels.hpp>

#include <algorithm>

#include <boost/algorithm/string/replace.hpp>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/max_element.hpp>
#include <range/v3/algorithm/stable_sort.hpp>
#include <range/v3/numeric/accumulate.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/split.hpp>

#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// Free space between two labels [mm].
constexpr double gap = 0.5;

/// Width in the widest of the common sans-serif faces [em].
double width_of(std::uint32_t code) {
    constexpr std::pair<std::u32string_view, double> widths[] = {
        {U" .,:;ijl'|\u00A0", 0.36}, {U"ftr-()", 0.44}, {U"mwMW%", 1.0}};
    for (const auto& [letters, width] : widths)
        if (letters.find(static_cast<char32_t>(code)) != std::u32string_view::npos)
            return width;
    return code >= 0x80 || (code >= 'A' && code <= 'Z') ? 0.8 : 0.65;
}

double side_of(PaperPoint a, PaperPoint b, PaperPoint c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
    return side_of(a, b, c) * side_of(a, b, d) < 0 && side_of(c, d, a) * side_of(c, d, b) < 0;
}

/// Labels that would overlap, pushed apart as one block round their mean.
struct Block {
    double sum;
    double count;
    double height;

    double top(const LabelColumn& column) const {
        return std::clamp(sum / count, column.top, std::max(column.top, column.bottom - height));
    }
};

/// Tops of boxes in a fixed order, each as near to where it would be as the others let it.
void spread(std::vector<PlacedLabel>& placed, const LabelColumn& column) {
    std::vector<Block> blocks;
    for (const PlacedLabel& label : placed) {
        Block block{label.target.y - label.height / 2, 1, label.height};
        for (; !blocks.empty(); blocks.pop_back()) {
            const Block& before = blocks.back();
            const double shift = before.height + gap;
            if (before.top(column) + before.height + gap <= block.top(column))
                break;
            block = {before.sum + (block.sum - shift * block.count), before.count + block.count,
                     before.height + (gap + block.height)};
        }
        blocks.push_back(block);
    }
    auto label = placed.begin();
    for (const Block& block : blocks) {
        double top = block.top(column);
        for (int left = static_cast<int>(block.count); left > 0; --left, ++label) {
            label->top = top;
            top += label->height + gap;
        }
    }
}

/// Changes the place of one pair whose leaders cross; each change makes the leaders shorter together, so it
/// comes to an end. @return whether there was one.
bool uncross(std::vector<PlacedLabel>& placed, const LabelColumn& column) {
    for (auto a = placed.begin(); a != placed.end(); ++a)
        for (auto b = std::next(a); b != placed.end(); ++b)
            if (cross(a->target, a->leader_end(column), b->target, b->leader_end(column))) {
                std::iter_swap(a, b);
                spread(placed, column);
                return true;
            }
    return false;
}

/// Height of a text of that many lines, from its highest letter to its lowest [mm].
double text_height(std::size_t lines) {
    return letter_rise + letter_hang + line_step * static_cast<double>(lines - 1);
}

} // namespace

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
    for (const auto& letters : text | ranges::views::split(' ')) {
        const auto word = letters | ranges::to<std::string>();
        if (!lines.empty() && text_width(lines.back() + " " + word) <= width)
            lines.back() += " " + word;
        else
            lines.push_back(word);
    }
    return lines;
}

std::string held_together(std::string_view shown) {
    return boost::replace_all_copy(std::string(shown), " ", "\u00A0");
}

std::vector<PlacedLabel> place_labels(const std::vector<Label>& labels, const LabelColumn& column) {
    const double width = column.right - column.left;
    const auto is_too_wide = [width](const std::string& line) { return text_width(line) > width; };
    std::vector<PlacedLabel> placed;
    for (const Label& label : labels) {
        const auto lines = wrap_label(label.text, width);
        if (!lines.empty() && !ranges::any_of(lines, is_too_wide))
            placed.push_back({label, lines, text_height(lines.size())});
    }
    const auto with_gap = [](double sum, const PlacedLabel& label) { return sum + (label.height + gap); };
    while (!placed.empty() && ranges::accumulate(placed, -gap, with_gap) > column.bottom - column.top)
        placed.erase(ranges::max_element(placed, {}, &PlacedLabel::rank));
    ranges::stable_sort(placed, {}, [](const PlacedLabel& label) { return label.target.y; });
    spread(placed, column);
    for (int changes = 200; changes > 0 && uncross(placed, column);)
        --changes;
    return placed;
}

void draw_labels(Svg& svg, const std::vector<Label>& labels, const LabelColumn& column) {
    for (const PlacedLabel& label : place_labels(labels, column)) {
        svg.line(label.target, label.leader_end(column), thin_pen);
        svg.text({column.left, label.top + letter_rise}, label.lines);
    }
}

double draw_note(Svg& svg, const std::string& note, double y) {
    const auto lines = wrap_label(note, paper_width - 2);
    svg.text({1, y + letter_rise}, lines);
    return text_height(lines.size());
}

std::vector<int> numbers_shown(int count, double room) {
    int step = 1;
    while (step < room && step < count)
        step *= step == 1 || step % 2 == 0 ? 5 : 2; // 1, 5, 10, 50, …
    std::vector<int> shown;
    for (int n = 1; n <= count; ++n) {
        const bool is_clear = n - 1 >= room && (n == count || count - n >= room);
        if (n == 1 || (is_clear && (n == count || n % step == 0)))
            shown.push_back(n);
    }
    return shown;
}

} // namespace ringfill
