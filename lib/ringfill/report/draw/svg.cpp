#include <ringfill/report/draw/svg.hpp>

#include <cmath>
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

std::string open_path(const std::vector<PaperPoint>& points) {
    std::string commands;
    for (const PaperPoint& at : points)
        commands += (commands.empty() ? "M" : "L") + point(at);
    return commands;
}

std::string closed_path(const std::vector<PaperPoint>& points) {
    return open_path(points) + "Z";
}

void Svg::line(PaperPoint from, PaperPoint to, const Pen& pen) {
    path(open_path({from, to}), pen);
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

void Svg::cover(const std::vector<PaperPoint>& shape, const Pen& pen) {
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
