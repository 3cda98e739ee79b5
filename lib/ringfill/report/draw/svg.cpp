#include <ringfill/report/draw/svg.hpp>

#include <algorithm>
#include <cmath>
#include <complex>
#include <iterator>
#include <map>
#include <numbers>
#include <set>
#include <stdexcept>

#include <boost/algorithm/string/classification.hpp>
#include <boost/algorithm/string/trim.hpp>

#include <fmt/format.h>

#include <range/v3/view/chunk.hpp>

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

} // namespace

std::string svg_number(double value, int decimals) {
    if (!std::isfinite(value))
        throw std::logic_error("a number that is not finite reached a drawing");
    std::string text = fmt::format("{:.{}f}", value, decimals);
    if (decimals > 0)
        boost::trim_right_if(text, boost::is_any_of("0"));
    boost::trim_right_if(text, boost::is_any_of("."));
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
    const auto slanted = [&](const PaperPoint& at) { return Slanted(at.x, at.y) * std::conj(slant); };
    std::map<double, std::multiset<double>> lines; // where each meets the edges, by how far across it lies
    for (const PaperPoints& outline : outlines)
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Slanted a = slanted(outline[i]);
            const Slanted b = slanted(outline[(i + 1) % outline.size()]);
            const auto [low, high] = std::minmax({a.imag() / hatching.spacing, b.imag() / hatching.spacing});
            for (double line = std::ceil(low); line <= std::floor(high);
                 ++line) { // few: they are on the paper
                const double across = line * hatching.spacing;
                const double from = a.imag() - across;
                const double to = b.imag() - across;
                if ((from < 0) != (to < 0))
                    lines[across].insert(a.real() + (b.real() - a.real()) * from / (from - to));
            }
        }
    std::string commands;
    for (const auto& [across, met] : lines)
        for (const auto& ends : met | ranges::views::chunk(2)) {
            const auto [low, high] = std::pair(*ends.begin(), *std::next(ends.begin()));
            const Slanted from = Slanted(low, across) * slant;
            const Slanted to = Slanted(high, across) * slant;
            if (high - low > least_length)
                commands += open_path({{from.real(), from.imag()}, {to.real(), to.imag()}});
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
