#include <fmt/format.h>

#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/page_table.hpp>
#include <ringfill/report/page/sheet_bore.hpp>

namespace ringfill {
namespace {

/// A list of more layers is told by its ends.
constexpr std::size_t longest_list = 48;
constexpr std::size_t kept_at_begin = 30;
constexpr std::size_t kept_at_end = 10;

std::vector<Markup> layer_row(const SheetBore& bore, std::size_t i) {
    const Layer& layer = bore.planned.layers[i];
    const UnitSystem units = bore.units();
    const auto at = [&](std::string_view name) { return bore.at(fmt::format("layers[{}].{}", i, name)); };
    return {words("layer ") + figure(at("layer"), fmt::format("{}", i + 1)),
            figure(at("radius_before_mm"), show(2.0 * layer.radius_before, units), Shown::twice),
            figure(at("radius_after_mm"), show(2.0 * layer.radius_after, units), Shown::twice),
            figure(at("rings"), fmt::format("{}", layer.rings)),
            figure(at("torch_rpm"), show_turning(layer.torch)),
            figure(at("laid_kg"), show(layer.laid, units)),
            figure(at("arc_s"), show(layer.arc))};
}

Markup layer_table(const SheetBore& bore) {
    PageTable table{"Layers in their order, diameters from and to",
                    {{"pass"},
                     {"from", true},
                     {"to", true},
                     {"rings", true},
                     {"torch", true},
                     {"metal", true},
                     {"arc", true}}};
    table.wide = true;
    const std::size_t count = bore.planned.layers.size();
    for (std::size_t i = 0; i < count; ++i) {
        if (count > longest_list && i == kept_at_begin) {
            const std::size_t left = count - kept_at_begin - kept_at_end;
            table.rows.push_back({words(fmt::format("… {} layers more, in the result file", left))});
            i += left;
        }
        table.rows.push_back(layer_row(bore, i));
    }
    return written(table);
}

void add_grooves(PageTable& table, const SheetBore& bore) {
    const UnitSystem units = bore.units();
    for (std::size_t i = 0; i < bore.planned.grooves.size(); ++i) {
        const GrooveFill& fill = bore.planned.grooves[i];
        const auto at = [&](std::string_view name) {
            return bore.at(fmt::format("grooves[{}].{}", i, name));
        };
        Markup name = words(fmt::format("groove {}, ", i + 1)) +
                      given(at("diameter"), show(bore.worn.grooves[i].diameter, units)) + words(" × ") +
                      given(at("width"), show(bore.worn.grooves[i].width, units));
        if (fill.volume > Volume())
            table.rows.push_back(
                {name, words("fill before layer 1"), figure(at("torch_rpm"), show_turning(fill.torch)),
                 figure(at("travel_mm_min"), show(fill.travel, units)),
                 figure(at("laid_kg"), show(fill.laid, units)), figure(at("arc_s"), show(fill.arc))});
        else
            table.rows.push_back({name, words("the skim takes it away"), {}, {}, {}, {}});
    }
}

void add_faces(PageTable& table, const SheetBore& bore) {
    const UnitSystem units = bore.units();
    for (std::size_t i = 0; i < bore.planned.faces.size(); ++i) {
        const FacePad& pad = bore.planned.faces[i];
        const Face& face = bore.worn.faces[i];
        const auto at = [&](std::string_view name) { return bore.at(fmt::format("faces[{}].{}", i, name)); };
        table.rows.push_back(
            {words(fmt::format("face {}, ", i + 1)) + given(at("inner"), show(face.inner, units)) +
                 words(" to ") + given(at("outer"), show(face.outer, units)) + words(", build ") +
                 given(at("build"), show(face.build, units)),
             figure(at("layers"), fmt::format("{}", pad.layers)) + words(" × ") +
                 figure(at("rings"), fmt::format("{}", pad.rings)) + words(" rings"),
             figure(at("torch_first_rpm"), show_turning(pad.first_torch())) + words(" to ") +
                 figure(at("torch_last_rpm"), show_turning(pad.last_torch())),
             figure(at("travel_mm_min"), show(pad.bead.travel, units)),
             figure(at("laid_kg"), show(pad.laid, units)), figure(at("arc_s"), show(pad.arc))});
    }
}

Markup hole_list(const SheetBore& bore) {
    if (bore.worn.holes.empty())
        return {};
    Markup list;
    for (std::size_t i = 0; i < bore.worn.holes.size(); ++i) {
        const Hole& hole = bore.worn.holes[i];
        const auto at = [&](std::string_view name) { return bore.at(fmt::format("holes[{}].{}", i, name)); };
        list += element("li", words(fmt::format("hole {}: ", i + 1)) +
                                  given(at("diameter"), show(hole.diameter, bore.units())) + words(", ") +
                                  given(at("depth"), show(hole.depth, bore.units())) +
                                  words(" from the near face, at ") + given(at("clock"), show(hole.clock)) +
                                  words(hole.other_end ? ", other end: " + *hole.other_end
                                                       : std::string(", other end not stated")));
    }
    return element("p", "Holes to plug before the weld and to open after it:") + element("ul", list);
}

} // namespace

Markup sheet_layers(const SheetBore& bore) {
    Markup all = element("h3", "Weld") + layer_table(bore);
    if (!bore.planned.grooves.empty() || !bore.planned.faces.empty()) {
        PageTable table{
            "Grooves and faces",
            {{"what"}, {"passes"}, {"torch", true}, {"travel", true}, {"metal", true}, {"arc", true}}};
        table.wide = true;
        add_grooves(table, bore);
        add_faces(table, bore);
        all += written(table);
    }
    return all + hole_list(bore);
}

} // namespace ringfill
