#include <fmt/format.h>

#include <ringfill/report/page/sheet_parts.hpp>

namespace ringfill {
namespace {

PageTable::Row layer_row(const SheetBore& bore, std::size_t i) {
    const Layer& layer = bore.planned.layers[i];
    const Part in = bore.in("layers", i);
    return PageTable::row(
        "layer " + in.figure("layer", i + 1),
        in.figure("radius_before_mm", show(2.0 * layer.radius_before, bore.units), Shown::twice),
        in.figure("radius_after_mm", show(2.0 * layer.radius_after, bore.units), Shown::twice),
        in.figure("rings", layer.rings), in.figure("torch_rpm", show_turning(layer.torch)),
        in.figure("laid_kg", layer.laid), in.figure("arc_s", layer.arc));
}

Markup layer_table(const SheetBore& bore) {
    PageTable table{.caption = "Layers in their order, diameters from and to",
                    .heads = {"pass", "from", "to", "rings", "torch", "metal", "arc"},
                    .numbers = {1, 7},
                    .wide = true};
    table.add_list(
        bore.planned.layers.size(), {48, 30, 10}, [&](std::size_t i) { return layer_row(bore, i); },
        [](std::size_t from, std::size_t before) {
            return PageTable::row(fmt::format("… {} layers more, in the result file", before - from));
        });
    return written(table);
}

PageTable::Row groove_row(const SheetBore& bore, std::size_t i) {
    const GrooveFill& fill = bore.planned.grooves[i];
    const Groove& groove = bore.worn.grooves[i];
    const Part in = bore.in("grooves", i);
    const Markup name = fmt::format("groove {}, ", i + 1) + in.given("diameter", groove.diameter) + " × " +
                        in.given("width", groove.width);
    if (!(fill.volume > Volume()))
        return PageTable::row(name, "the skim takes it away", "", "", "", "");
    return PageTable::row(name, "fill before layer 1", in.figure("torch_rpm", show_turning(fill.torch)),
                          in.figure("travel_mm_min", fill.travel), in.figure("laid_kg", fill.laid),
                          in.figure("arc_s", fill.arc));
}

PageTable::Row face_row(const SheetBore& bore, std::size_t i) {
    const FacePad& pad = bore.planned.faces[i];
    const Face& face = bore.worn.faces[i];
    const Part in = bore.in("faces", i);
    return PageTable::row(fmt::format("face {}, ", i + 1) + in.given("inner", face.inner) + " to " +
                              in.given("outer", face.outer) + ", build " + in.given("build", face.build),
                          in.figure("layers", pad.layers) + " × " + in.figure("rings", pad.rings) + " rings",
                          in.figure("torch_first_rpm", show_turning(pad.first_torch())) + " to " +
                              in.figure("torch_last_rpm", show_turning(pad.last_torch())),
                          in.figure("travel_mm_min", pad.bead.travel), in.figure("laid_kg", pad.laid),
                          in.figure("arc_s", pad.arc));
}

Markup groove_and_face_table(const SheetBore& bore) {
    if (bore.planned.grooves.empty() && bore.planned.faces.empty())
        return {};
    PageTable table{.caption = "Grooves and faces",
                    .heads = {"what", "passes", "torch", "travel", "metal", "arc"},
                    .numbers = {2, 6},
                    .wide = true};
    for (std::size_t i = 0; i < bore.planned.grooves.size(); ++i)
        table.rows.push_back(groove_row(bore, i));
    for (std::size_t i = 0; i < bore.planned.faces.size(); ++i)
        table.rows.push_back(face_row(bore, i));
    return written(table);
}

Markup hole_list(const SheetBore& bore) {
    if (bore.worn.holes.empty())
        return {};
    Markup list;
    for (std::size_t i = 0; i < bore.worn.holes.size(); ++i) {
        const Hole& hole = bore.worn.holes[i];
        const Part in = bore.in("holes", i);
        list += element(
            "li",
            fmt::format("hole {}: ", i + 1) + in.given("diameter", hole.diameter) + ", " +
                in.given("depth", hole.depth) + " from the near face, at " + in.given("clock", hole.clock) +
                (hole.other_end ? ", other end: " + *hole.other_end : std::string(", other end not stated")));
    }
    return element("p", "Holes to plug before the weld and to open after it:") + element("ul", list);
}

} // namespace

Markup sheet_layers(const SheetBore& bore) {
    return element("h3", "Weld") + layer_table(bore) + groove_and_face_table(bore) + hole_list(bore);
}

} // namespace ringfill
