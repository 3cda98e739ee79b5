#include <fmt/format.h>

#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/page_table.hpp>
#include <ringfill/report/page/sheet_bore.hpp>

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

std::string of_piece(int piece, const SheetBore& bore) {
    return bore.planned.count > 1 ? fmt::format(", piece {}", piece) : std::string();
}

Markup temperatures(const SheetBore& bore, int pieces) {
    const std::string degrees = bore.units() == UnitSystem::metric ? "°C" : "°F";
    PageTable table{"Temperature before each layer, written in on the way", {{"before"}}};
    table.kind = "form";
    for (int piece = 1; piece <= pieces; ++piece) {
        const std::string which = bore.planned.count > 1 ? fmt::format("{}: ", piece) : std::string();
        table.columns.push_back({which + "time"});
        table.columns.push_back({which + degrees});
    }
    for (const std::string& stage : stages(bore)) {
        std::vector<Markup> row(table.columns.size());
        row.front() = words(stage);
        table.rows.push_back(std::move(row));
    }
    return written(table);
}

/// The size planned after the last cut before the finish cut; nothing when there is none.
Markup planned_after_roughing(const SheetBore& bore) {
    const auto& cuts = bore.planned.boring.cuts;
    for (std::size_t i = cuts.size(); i > 0; --i)
        if (cuts[i - 1].kind == CutKind::finish)
            return figure(bore.at(fmt::format("boring.cuts[{}].diameter_from_mm", i - 1)),
                          show(cuts[i - 1].from, bore.units()));
    return {};
}

Markup sizes(const SheetBore& bore, int piece) {
    const UnitSystem units = bore.units();
    const BorePlan& planned = bore.planned;
    PageTable table{"Size as measured" + of_piece(piece, bore),
                    {{""}, {"planned"}, {"near 12–6"}, {"near 3–9"}, {"far 12–6"}, {"far 3–9"}}};
    table.kind = "form";
    const auto row = [&](std::string_view stage, const Markup& size) {
        table.rows.push_back({words(stage), size, {}, {}, {}, {}});
    };
    if (planned.build.skimmed)
        row("after skim",
            figure(bore.at("build.skim_diameter_mm"), show(2.0 * planned.build.skim_radius, units)));
    else
        row("before weld", words("no skim"));
    row("after weld", figure(bore.at(fmt::format("layers[{}].radius_after_mm", planned.layers.size() - 1)),
                             show(2.0 * planned.layers.back().radius_after, units), Shown::twice));
    row("after roughing", planned_after_roughing(bore));
    row("finish",
        figure(bore.at("boring.final_diameter_mm"), show_fine(planned.boring.final_diameter, units)));
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
