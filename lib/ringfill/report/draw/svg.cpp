#include <ringfill/report/draw/svg.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

#include <fmt/format.h>

namespace ringfill {
namespace {

std::string point(PaperPoint at) {
    return svg_number(at.x) + "," + svg_number(at.y);
}

/// The attributes of a pen. A plain thin line is what the drawing's own group sets.
std::string stroke(const Pen& pen) {
    std::string text = fmt::format(" stroke-width=\"{}\"", svg_number(pen.width));
    if (!pen.dashes.empty())
        text += fmt::format(" stroke-dasharray=\"{}\"", pen.dashes);
    return text;
}

std::string carried(std::string_view figure) {
    return figure.empty() ? std::string() : fmt::format(" data-figure=\"{}\"", escape_markup(figure));
}

std::string_view name_of(Anchor anchor) {
    return anchor == Anchor::start ? "start" : anchor == Anchor::middle ? "middle" : "end";
}

/// Lines of a hatching shorter than this are left out [mm].
constexpr double least_length = 0.05;

/// A direction on the paper and the one square to it.
struct Slant {
    double along_x;
    double along_y;

    double along(PaperPoint p) const { return p.x * along_x + p.y * along_y; }
    double across(PaperPoint p) const { return p.y * along_x - p.x * along_y; }
    PaperPoint at(double along, double across) const {
        return {along * along_x - across * along_y, along * along_y + across * along_x};
    }
};

/// Where a line of the hatching meets the edges.
std::vector<double> meetings(const std::vector<PaperPoints>& outlines, const Slant& slant, double across) {
    std::vector<double> met;
    for (const PaperPoints& outline : outlines)
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const PaperPoint& a = outline[i];
            const PaperPoint& b = outline[(i + 1) % outline.size()];
            const double from = slant.across(a) - across;
            const double to = slant.across(b) - across;
            if ((from < 0) != (to < 0))
                met.push_back(slant.along(a) + (slant.along(b) - slant.along(a)) * from / (from - to));
        }
    std::sort(met.begin(), met.end());
    return met;
}

} // namespace

std::string svg_number(double value, int decimals) {
    if (!std::isfinite(value))
        throw std::logic_error("a number that is not finite reached a drawing");
    std::string text = fmt::format("{:.{}f}", value, decimals);
    if (text.find('.') != std::string::npos)
        text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return text == "-0" ? "0" : text;
}

std::string open_path(const PaperPoints& points) {
    std::string commands;
    for (const PaperPoint& at : points)
        commands += (commands.empty() ? "M" : "L") + point(at);
    return commands;
}

std::string closed_path(const PaperPoints& points) {
    return open_path(points) + "Z";
}

std::string hatch(const std::vector<PaperPoints>& outlines, const Hatching& hatching) {
    const double angle = -hatching.degrees * std::numbers::pi / 180; // y runs down
    const Slant slant{std::cos(angle), std::sin(angle)};
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const PaperPoints& outline : outlines)
        for (const PaperPoint& p : outline) {
            low = std::min(low, slant.across(p));
            high = std::max(high, slant.across(p));
        }
    std::string commands;
    const double first = std::ceil(low / hatching.spacing);
    const double last = std::floor(high / hatching.spacing);
    if (first > last)
        return commands;
    const int more = static_cast<int>(last - first); // as many as fit on the paper
    for (int line = 0; line <= more; ++line) {
        const double across = (first + line) * hatching.spacing;
        const auto met = meetings(outlines, slant, across);
        for (std::size_t i = 0; i + 1 < met.size(); i += 2)
            if (met[i + 1] - met[i] > least_length)
                commands += open_path({slant.at(met[i], across), slant.at(met[i + 1], across)});
    }
    return commands;
}

void Svg::circle(PaperPoint centre, double radius, const Pen& pen, std::string_view figure) {
    // Six decimals: a radius is held against the plan.
    lines_ += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\"{}{}/>\n", svg_number(centre.x),
                          svg_number(centre.y), svg_number(radius, 6), stroke(pen), carried(figure));
}

void Svg::path(std::string_view commands, const Pen& pen, std::string_view figure) {
    if (!commands.empty())
        lines_ += fmt::format("<path d=\"{}\"{}{}/>\n", commands, stroke(pen), carried(figure));
}

void Svg::cover(const PaperPoints& shape, const Pen& pen) {
    lines_ += fmt::format("<path d=\"{}\" fill=\"#fff\"{}{}/>\n", closed_path(shape), stroke(pen),
                          pen.width > 0 ? "" : " stroke=\"none\"");
}

void Svg::text(PaperPoint at, const std::vector<std::string>& lines, Anchor anchor) {
    texts_ += fmt::format("<text x=\"{}\" y=\"{}\" text-anchor=\"{}\">", svg_number(at.x), svg_number(at.y),
                          name_of(anchor));
    for (std::size_t i = 0; i < lines.size(); ++i)
        texts_ += i == 0 ? escape_markup(lines[i])
                         : fmt::format(" <tspan x=\"{}\" dy=\"{}\">{}</tspan>", svg_number(at.x),
                                       svg_number(line_step), escape_markup(lines[i]));
    texts_ += "</text>\n";
}

std::string Svg::drawing(const DrawingHead& head) const {
    const std::string id = escape_markup(head.id);
    std::string text = fmt::format("<svg class=\"drawing\" role=\"img\" viewBox=\"0 0 {} {}\" width=\"100%\"",
                                   svg_number(head.width), svg_number(head.height));
    if (head.mm_per_unit != 0)
        text += fmt::format(" data-mm-per-unit=\"{}\"", svg_number(head.mm_per_unit, 9));
    text += fmt::format(" aria-labelledby=\"{0}-title {0}-desc\">\n<title id=\"{0}-title\">{1}</title>\n"
                        "<desc id=\"{0}-desc\">{2}</desc>\n",
                        id, escape_markup(head.title), escape_markup(head.description));
    text += "<g fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\">\n" + lines_ + "</g>\n";
    // A white edge round the letters keeps lines off them, as a draughtsman breaks a line at a figure.
    text += fmt::format("<g font-family=\"sans-serif\" font-size=\"{}\" fill=\"#000\" stroke=\"#fff\" "
                        "stroke-width=\"0.9\" stroke-linejoin=\"round\" paint-order=\"stroke\">\n",
                        svg_number(letter_size));
    text += texts_;
    return text + "</g>\n</svg>\n";
}

} // namespace ringfill
