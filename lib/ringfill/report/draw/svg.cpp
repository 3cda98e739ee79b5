#include <ringfill/report/draw/svg.hpp>

#include <algorithm>
#include <cmath>
#include <complex>
#include <limits>
#include <numbers>
#include <stdexcept>

#include <fmt/format.h>

namespace ringfill {
namespace {

/// The attributes of a line: its pen, and the figure that it carries.
std::string stroke(const Pen& pen, std::string_view figure = {}) {
    std::string text = fmt::format(" stroke-width=\"{}\"", svg_number(pen.width));
    if (!pen.dashes.empty())
        text += fmt::format(" stroke-dasharray=\"{}\"", pen.dashes);
    if (!figure.empty())
        text += fmt::format(" data-figure=\"{}\"", escape_markup(figure));
    return text;
}

/// By the order of Anchor.
constexpr std::string_view anchor_names[] = {"start", "middle", "end"};

/// Lines of a hatching shorter than this are left out [mm].
constexpr double least_length = 0.05;

/// A point by how far it lies along the lines of a hatching and across them.
using Slanted = std::complex<double>;

/// Where the line of a hatching that lies so far across meets the edges, in order.
std::vector<double> meetings(const std::vector<std::pair<Slanted, Slanted>>& edges, double across) {
    std::vector<double> met;
    for (const auto& [a, b] : edges) {
        const double from = a.imag() - across;
        const double to = b.imag() - across;
        if ((from < 0) != (to < 0))
            met.push_back(a.real() + (b.real() - a.real()) * from / (from - to));
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
        commands += (commands.empty() ? "M" : "L") + svg_point(at);
    return commands;
}

std::string hatch(const std::vector<PaperPoints>& outlines, const Hatching& hatching) {
    const Slanted slant = std::polar(1.0, -hatching.degrees * std::numbers::pi / 180); // y runs down
    std::vector<std::pair<Slanted, Slanted>> edges;
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const PaperPoints& outline : outlines)
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const PaperPoint& next = outline[(i + 1) % outline.size()];
            edges.emplace_back(Slanted(outline[i].x, outline[i].y) * std::conj(slant),
                               Slanted(next.x, next.y) * std::conj(slant));
            low = std::min(low, edges.back().first.imag());
            high = std::max(high, edges.back().first.imag());
        }
    std::string commands;
    const double first = std::ceil(low / hatching.spacing);
    const double count = std::floor(high / hatching.spacing) - first + 1; // as many as fit on the paper
    for (int line = 0; line < count; ++line) {
        const double across = (first + line) * hatching.spacing;
        const auto met = meetings(edges, across);
        for (std::size_t i = 0; i + 1 < met.size(); i += 2)
            if (met[i + 1] - met[i] > least_length) {
                const Slanted from = Slanted(met[i], across) * slant;
                const Slanted to = Slanted(met[i + 1], across) * slant;
                commands += open_path({{from.real(), from.imag()}, {to.real(), to.imag()}});
            }
    }
    return commands;
}

void Svg::circle(PaperPoint centre, double radius, const Pen& pen, std::string_view figure) {
    // Six decimals: a radius is held against the plan.
    lines_ += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\"{}/>\n", svg_number(centre.x),
                          svg_number(centre.y), svg_number(radius, 6), stroke(pen, figure));
}

void Svg::path(std::string_view commands, const Pen& pen, std::string_view figure) {
    if (!commands.empty())
        lines_ += fmt::format("<path d=\"{}\"{}/>\n", commands, stroke(pen, figure));
}

void Svg::cover(const PaperPoints& shape, const Pen& pen) {
    lines_ += fmt::format("<path d=\"{}\" fill=\"#fff\"{}{}/>\n", closed_path(shape), stroke(pen),
                          pen.width > 0 ? "" : " stroke=\"none\"");
}

void Svg::text(PaperPoint at, const std::vector<std::string>& lines, Anchor anchor) {
    texts_ += fmt::format("<text x=\"{}\" y=\"{}\" text-anchor=\"{}\">", svg_number(at.x), svg_number(at.y),
                          anchor_names[static_cast<std::size_t>(anchor)]);
    for (std::size_t i = 0; i < lines.size(); ++i)
        texts_ += i == 0 ? escape_markup(lines[i])
                         : fmt::format(" <tspan x=\"{}\" dy=\"{}\">{}</tspan>", svg_number(at.x),
                                       svg_number(line_step), escape_markup(lines[i]));
    texts_ += "</text>\n";
}

std::string Svg::drawing(std::string_view id, std::string_view title, std::string_view words, double height,
                         double mm_per_unit) const {
    const std::string scale =
        mm_per_unit == 0 ? "" : fmt::format(" data-mm-per-unit=\"{}\"", svg_number(mm_per_unit, 9));
    // A white edge round the letters keeps lines off them, as a draughtsman breaks a line at a figure.
    return fmt::format(R"(<svg class="drawing" role="img" viewBox="0 0 {0} {1}" width="100%"{2})"
                       R"( aria-labelledby="{3}-title {3}-desc">
<title id="{3}-title">{4}</title>
<desc id="{3}-desc">{5}</desc>
<g fill="none" stroke="#000" stroke-linejoin="round">
{6}</g>
<g font-family="sans-serif" font-size="{7}" fill="#000" stroke="#fff" )"
                       R"(stroke-width="0.9" stroke-linejoin="round" paint-order="stroke">
{8}</g>
</svg>
)",
                       svg_number(paper_width), svg_number(height), scale, escape_markup(id),
                       escape_markup(title), escape_markup(words), lines_, svg_number(letter_size), texts_);
}

} // namespace ringfill
