#include <fmt/format.h>

#include <ringfill/report/page/sheet_parts.hpp>

namespace ringfill {
namespace {

Markup layer_table(const SheetBore& bore) {
    PageTable table = table_of("Layers in their order, diameters from and to", "wide",
                               {"pass", "from", "to", "rings", "torch", "metal", "arc"}, {1, 7});
    const auto layer_row = [](const Part& in, const Layer& layer, std::size_t i) {
        return row("layer " + in.figure("layer", i + 1), in.across("radius_before_mm", layer.radius_before),
                   in.across("radius_after_mm", layer.radius_after), in.figure("rings", layer.rings),
                   in.figure("torch_rpm", show_turning(layer.torch)), in.figure("laid_kg", layer.laid),
                   in.figure("arc_s", layer.arc));
    };
    const auto left_out = [](std::size_t from, std::size_t before) {
        return row(fmt::format("… {} layers more, in the result file", before - from));
    };
    return written(table.add_list(bore, "layers", bore.planned.layers, layer_row, {48, 30, 10, left_out}));
}

Markup groove_and_face_table(const SheetBore& bore) {
    PageTable table =
        table_of("Grooves and faces", "wide", {"what", "passes", "torch", "travel", "metal", "arc"}, {2, 6});
    const auto groove_row = [&](const Part& in, const GrooveFill& fill, std::size_t i) {
        const Groove& groove = bore.worn.grooves[i];
        const Markup name = fmt::format("groove {}, ", i + 1) + in.given("diameter", groove.diameter) +
                            " × " + in.given("width", groove.width);
        if (!(fill.volume > Volume()))
            return row(name, "the skim takes it away", "", "", "", "");
        return row(name, "fill before layer 1", in.figure("torch_rpm", show_turning(fill.torch)),
                   in.figure("travel_mm_min", fill.travel), in.figure("laid_kg", fill.laid),
                   in.figure("arc_s", fill.arc));
    };
    const auto face_row = [&](const Part& in, const FacePad& pad, std::size_t i) {
        const Face& face = bore.worn.faces[i];
        return row(fmt::format("face {}, ", i + 1) + in.given("inner", face.inner) + " to " +
                       in.given("outer", face.outer) + ", build " + in.given("build", face.build),
                   in.figure("layers", pad.layers) + " × " + in.figure("rings", pad.rings) + " rings",
                   in.figure("torch_first_rpm", show_turning(pad.first_torch())) + " to " +
                       in.figure("torch_last_rpm", show_turning(pad.last_torch())),
                   in.figure("travel_mm_min", pad.bead.travel), in.figure("laid_kg", pad.laid),
                   in.figure("arc_s", pad.arc));
    };
    table.add_list(bore, "grooves", bore.planned.grooves, groove_row);
    table.add_list(bore, "faces", bore.planned.faces, face_row);
    return table.rows.empty() ? Markup() : written(table);
}

Markup hole_list(const SheetBore& bore) {
    if (bore.worn.holes.empty())
        return {};
    const auto item_at = [&](std::size_t i) {
        const Hole& hole = bore.worn.holes[i];
        const Part in = bore.in("holes", i);
        return element(
            "li",
            fmt::format("hole {}: ", i + 1) + in.given("diameter", hole.diameter) + ", " +
                in.given("depth", hole.depth) + " from the near face, at " + in.given("clock", hole.clock) +
                (hole.other_end ? ", other end: " + *hole.other_end : std::string(", other end not stated")));
    };
    return element("p", "Holes to plug before the weld and to open after it:") +
           element("ul", each(bore.worn.holes.size(), item_at));
}

} // namespace

Markup sheet_layers(const SheetBore& bore) {
    return element("h3", "Weld") + layer_table(bore) + groove_and_face_table(bore) + hole_list(bore);
}

} // namespace ringfill
