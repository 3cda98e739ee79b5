#pragma once

#include <cmath>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include <boost/property_tree/ptree.hpp>
#include <boost/property_tree/xml_parser.hpp>

#include <ringfill/report/draw/labels.hpp>
#include <ringfill/report/draw/svg.hpp>

namespace ringfill::testing {

struct DrawnCircle {
    double x = 0;
    double y = 0;
    double r = 0;
    std::string figure;
};

struct DrawnPath {
    std::string commands;
    std::string figure;
};

struct Box {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
};

struct DrawnText {
    std::vector<std::string> lines;
    Box box; ///< by estimate
};

/// What stands in a drawing, read back by an XML parser.
struct Drawing {
    double width = 0;
    double height = 0;
    double mm_per_unit = 0;
    std::string title;
    std::string description;
    std::vector<std::string> elements; ///< names, in order
    std::vector<std::string> ids;
    std::string labelled_by;
    std::vector<DrawnCircle> circles;
    std::vector<DrawnPath> paths;
    std::vector<DrawnText> texts;

    /// The radius of the circle that carries a figure, in mm of the bore.
    std::optional<double> radius_mm(const std::string& figure) const {
        for (const DrawnCircle& circle : circles)
            if (circle.figure == figure)
                return circle.r * mm_per_unit;
        return std::nullopt;
    }
    bool has_text(const std::string& part) const {
        for (const DrawnText& text : texts) {
            std::string whole;
            for (const std::string& line : text.lines)
                whole += (whole.empty() ? "" : " ") + line;
            if (whole.find(held_together(part)) != std::string::npos || whole.find(part) != std::string::npos)
                return true;
        }
        return false;
    }
};

inline DrawnText text_of(const boost::property_tree::ptree& node) {
    DrawnText text;
    std::string first = node.data();
    while (first.ends_with(' '))
        first.pop_back();
    text.lines.push_back(first);
    for (const auto& [name, child] : node)
        if (name == "tspan")
            text.lines.push_back(child.data());
    double width = 0;
    for (const std::string& line : text.lines)
        width = std::max(width, text_width(line));
    const auto x = node.get<double>("<xmlattr>.x");
    const auto y = node.get<double>("<xmlattr>.y");
    const auto anchor = node.get<std::string>("<xmlattr>.text-anchor");
    const double left = anchor == "start" ? x : anchor == "middle" ? x - width / 2 : x - width;
    text.box = {left, y - letter_rise, left + width,
                y + letter_hang + line_step * static_cast<double>(text.lines.size() - 1)};
    return text;
}

inline void collect(Drawing& drawing, const boost::property_tree::ptree& tree) {
    for (const auto& [name, node] : tree) {
        if (name == "<xmlattr>" || name == "<xmltext>")
            continue;
        drawing.elements.push_back(name);
        if (const auto id = node.get_optional<std::string>("<xmlattr>.id"))
            drawing.ids.push_back(*id);
        const auto figure = node.get<std::string>("<xmlattr>.data-figure", "");
        if (name == "circle")
            drawing.circles.push_back({node.get<double>("<xmlattr>.cx"), node.get<double>("<xmlattr>.cy"),
                                       node.get<double>("<xmlattr>.r"), figure});
        if (name == "path")
            drawing.paths.push_back({node.get<std::string>("<xmlattr>.d"), figure});
        if (name == "title")
            drawing.title = node.data();
        if (name == "desc")
            drawing.description = node.data();
        if (name == "text")
            drawing.texts.push_back(text_of(node));
        collect(drawing, node);
    }
}

/// Throws when the text is no XML.
inline Drawing drawing_of(const std::string& svg) {
    std::istringstream stream(svg);
    boost::property_tree::ptree tree;
    boost::property_tree::read_xml(stream, tree, boost::property_tree::xml_parser::no_comments);
    Drawing drawing;
    const auto& root = tree.get_child("svg");
    std::istringstream box(root.get<std::string>("<xmlattr>.viewBox"));
    double left = 0;
    double top = 0;
    box >> left >> top >> drawing.width >> drawing.height;
    drawing.mm_per_unit = root.get<double>("<xmlattr>.data-mm-per-unit", 0);
    drawing.labelled_by = root.get<std::string>("<xmlattr>.aria-labelledby");
    collect(drawing, tree);
    return drawing;
}

inline bool overlap(const Box& a, const Box& b) {
    constexpr double touching = 1e-6;
    return a.left < b.right - touching && b.left < a.right - touching && a.top < b.bottom - touching &&
           b.top < a.bottom - touching;
}

/// What is wrong with the texts of a drawing: those that overlap or reach out of it. Empty: nothing.
inline std::string text_faults(const Drawing& drawing) {
    std::string faults;
    for (std::size_t i = 0; i < drawing.texts.size(); ++i) {
        const DrawnText& one = drawing.texts[i];
        if (one.box.left < 0 || one.box.top < 0 || one.box.right > drawing.width ||
            one.box.bottom > drawing.height)
            faults += "outside: " + one.lines.front() + "\n";
        for (std::size_t k = i + 1; k < drawing.texts.size(); ++k)
            if (overlap(one.box, drawing.texts[k].box))
                faults += "overlap: " + one.lines.front() + " | " + drawing.texts[k].lines.front() + "\n";
    }
    return faults;
}

/// Points of a path of absolute M and L commands.
inline std::vector<PaperPoint> points_of(const std::string& commands) {
    std::vector<PaperPoint> points;
    std::string spaced;
    for (const char c : commands)
        spaced += c == 'M' || c == 'L' || c == 'Z' || c == ',' ? ' ' : c;
    std::istringstream stream(spaced);
    for (PaperPoint at; stream >> at.x >> at.y;)
        points.push_back(at);
    return points;
}

} // namespace ringfill::testing
