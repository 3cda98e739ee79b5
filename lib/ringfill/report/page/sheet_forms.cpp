#include <fmt/format.h>

#include <ringfill/report/page/sheet_parts.hpp>

namespace ringfill {
namespace {

/// So many pieces and layers have columns and rows of their own; for more the page is printed again.
constexpr int most_forms = 4;
constexpr std::size_t most_layers_listed = 16;

std::vector<std::string> stages(const SheetBore& bore) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < bore.planned.grooves.size(); ++i)
        if (bore.planned.grooves[i].volume > Volume())
            names.push_back(fmt::format("groove {}", i + 1));
    for (std::size_t i = 0; i < bore.planned.layers.size() && i < most_layers_listed; ++i)
        names.push_back(fmt::format("layer {}", i + 1));
    for (std::size_t i = 0; i < bore.planned.faces.size(); ++i)
        names.push_back(fmt::format("face {}", i + 1));
    names.emplace_back("after the last ring");
    return names;
}

Markup temperatures(const SheetBore& bore, int pieces) {
    const std::string degrees = bore.units == UnitSystem::metric ? "°C" : "°F";
    PageTable table{.caption = "Temperature before each layer, written in on the way",
                    .heads = {"before"},
                    .kind = "form"};
    for (int piece = 1; piece <= pieces; ++piece)
        for (const std::string& head : {std::string("time"), degrees})
            table.heads.push_back(bore.planned.count > 1 ? fmt::format("{}: {}", piece, head) : head);
    for (const std::string& stage : stages(bore)) {
        table.rows.emplace_back(table.heads.size());
        table.rows.back().front() = words(stage);
    }
    return written(table);
}

/// The size planned after the last cut before the finish cut; nothing when there is none.
Markup planned_after_roughing(const SheetBore& bore) {
    const auto& cuts = bore.planned.boring.cuts;
    for (std::size_t i = cuts.size(); i > 0; --i)
        if (cuts[i - 1].kind == CutKind::finish)
            return bore.in("boring.cuts", i - 1).figure("diameter_from_mm", cuts[i - 1].from);
    return {};
}

Markup sizes(const SheetBore& bore, int piece) {
    const BorePlan& planned = bore.planned;
    PageTable table{.caption = "Size as measured" +
                               (planned.count > 1 ? fmt::format(", piece {}", piece) : std::string()),
                    .heads = {"", "planned", "near 12–6", "near 3–9", "far 12–6", "far 3–9"},
                    .kind = "form"};
    const auto row = [&](std::string_view stage, const Markup& size) {
        table.rows.push_back({words(stage), size, {}, {}, {}, {}});
    };
    row(planned.build.skimmed ? "after skim" : "before weld", skim_figure(bore, planned, "no skim"));
    row("after weld", weld_figure(bore, planned));
    row("after roughing", planned_after_roughing(bore));
    row("finish",
        bore.figure("boring.final_diameter_mm", show_fine(planned.boring.final_diameter, bore.units)));
    return written(table);
}

} // namespace

Markup sheet_forms(const SheetBore& bore) {
    const int pieces = std::min(bore.planned.count, most_forms);
    Markup all = element("h3", "To write in") + temperatures(bore, pieces);
    for (int piece = 1; piece <= pieces; ++piece)
        all += sizes(bore, piece);
    if (bore.planned.count > most_forms)
        all += element("p", "For the other pieces print these pages again.");
    if (bore.planned.layers.size() > most_layers_listed)
        all += element("p", "For the other layers write on: time and temperature before each.");
    return all + element("p", words("Date ") + element("span", Markup(), {{"class", "blank"}}));
}

} // namespace ringfill
