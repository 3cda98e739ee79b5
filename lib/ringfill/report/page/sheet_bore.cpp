#include <ringfill/report/page/sheet_parts.hpp>

#include <fmt/format.h>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/say/boring_sentences.hpp>
#include <ringfill/say/heat_limits.hpp>
#include <ringfill/say/weld_sentences.hpp>

namespace ringfill {
namespace {

/// A term with what stands for it.
Markup fact(std::string_view term, const Markup& shown) {
    return element("div", element("dt", term) + element("dd", shown));
}

Markup wear_facts(const SheetBore& bore) {
    const Survey& survey = bore.planned.survey;
    if (is_same_all_round(survey))
        return fact("worn to", "radius " + bore.figure("survey.largest_radius_mm", survey.largest.radius) +
                                   ", one diameter measured");
    const auto wear = [&](std::string_view term, const std::string& radius, const ClockRadius& at) {
        return fact(term, "radius " + bore.figure(radius + "_mm", at.radius) + " at " +
                              bore.figure(radius + "_clock_deg", at.clock) + " from 12");
    };
    return wear("deepest wear", "survey.largest_radius", survey.largest) +
           wear("least wear", "survey.smallest_radius", survey.smallest);
}

Markup limits_fact(const SheetBore& bore) {
    const auto& limits = bore.planned.boring.limits;
    if (!limits)
        return fact("limits", no_size_limits);
    const Part boring = bore.in("boring");
    Markup shown = boring.limit("limits_mm[0]", limits->low, Shown::up) + " to " +
                   boring.limit("limits_mm[1]", limits->high, Shown::down);
    if (!limits->size_class.empty())
        shown += ", class " + boring.text("size_class", limits->size_class);
    return fact("limits at 20 °C", shown);
}

Markup facts_of(const SheetBore& bore) {
    const WornBore& worn = bore.worn;
    const BorePlan& planned = bore.planned;
    const Build& build = planned.build;
    const std::string& approved = planned.heat.preheat.approved;
    return fact("base metal", worn.base) +
           fact("length, axis", bore.given("length", worn.length) + ", " + worn.axis) +
           fact("boss", worn.boss_diameter ? bore.given("boss_diameter", *worn.boss_diameter) : "not given") +
           wear_facts(bore) + fact("skim to", skim_figure(bore, planned, "no skim: welded as it is")) +
           fact("build a side", bore.figure("build.build_mm", build.thickness)) +
           fact("weld to", weld_figure(bore, planned) + ", asked for " +
                               bore.figure("build.weld_to_diameter_mm", 2.0 * build.weld_to_radius)) +
           fact("finish", bore.given("finish_diameter", 2.0 * build.finish_radius) + ", bored to " +
                              bore.fine("boring.final_diameter_mm", planned.boring.final_diameter)) +
           limits_fact(bore) +
           fact("weld left a side", bore.figure("build.finished_weld_mm", build.finished_weld)) +
           (build.wall ? fact("wall", bore.figure("build.wall_mm", *build.wall)) : Markup()) +
           fact("filler", planned.filler) +
           fact("procedure", bore.text("procedure", planned.procedure) +
                                 (approved.empty() ? ", no approved procedure in the job"
                                                   : ", approved: " + bore.text("heat.approved", approved))) +
           fact("layers", layers_figure(bore, planned) + " rings") +
           fact("filler, arc",
                filler_figure(bore, planned) + ", " + bore.figure("metal.arc_s", planned.metal.arc));
}

Markup drawings(const SheetBore& bore) {
    const DrawnBore drawn{bore.worn, bore.planned, bore.units};
    return element("div",
                   framed("Across, seen from the near face", cross_section(drawn, bore.id + "-cross")) +
                       framed("Along the axis", longitudinal_section(drawn, bore.id + "-long")),
                   {{"class", "drawings"}});
}

/// So many pieces and layers have columns and rows of their own; for more the page is printed again.
constexpr int most_forms = 4;
constexpr std::size_t most_layers_listed = 16;

Markup temperatures(const SheetBore& bore, int pieces) {
    const BorePlan& planned = bore.planned;
    PageTable table = table_of("Temperature before each layer, written in on the way", "form", {"before"});
    for (int piece = 1; piece <= pieces; ++piece)
        for (const char* head : {"time", bore.units == UnitSystem::metric ? "°C" : "°F"})
            table.heads.push_back(planned.count > 1 ? fmt::format("{}: {}", piece, head) : head);
    const auto add_row = [&](const std::string& stage) {
        table.rows.emplace_back(table.heads.size());
        table.rows.back().front() = stage;
    };
    for (std::size_t i = 0; i < planned.grooves.size(); ++i)
        if (planned.grooves[i].volume > Volume())
            add_row(fmt::format("groove {}", i + 1));
    for (std::size_t i = 0; i < planned.layers.size() && i < most_layers_listed; ++i)
        add_row(fmt::format("layer {}", i + 1));
    for (std::size_t i = 0; i < planned.faces.size(); ++i)
        add_row(fmt::format("face {}", i + 1));
    add_row("after the last ring");
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
    const std::string which = planned.count > 1 ? fmt::format(", piece {}", piece) : std::string();
    PageTable table = table_of("Size as measured" + which, "form",
                               {"", "planned", "near 12–6", "near 3–9", "far 12–6", "far 3–9"});
    const auto add = [&](std::string_view stage, const Markup& size) {
        table.rows.push_back(row(stage, size, "", "", "", ""));
    };
    add(planned.build.skimmed ? "after skim" : "before weld", skim_figure(bore, planned, "no skim"));
    add("after weld", weld_figure(bore, planned));
    add("after roughing", planned_after_roughing(bore));
    add("finish", bore.fine("boring.final_diameter_mm", planned.boring.final_diameter));
    return written(table);
}

/// What it is, what it shall be, what it is welded with.
Markup facts(const SheetBore& bore) {
    Sentence limits = heat_limits(bore.planned.heat, bore.units);
    limits.text = fmt::format("Preheat {}.", limits.text);
    return element("div", paragraphs(Sentences{limits}, bore.path), {{"class", "limits"}}) +
           element("dl", facts_of(bore), {{"class", "facts"}}) +
           small_print(settings_sentence(bore.planned, bore.units));
}

/// Columns to write in: temperatures before each layer, sizes as measured.
Markup forms(const SheetBore& bore) {
    const int pieces = std::min(bore.planned.count, most_forms);
    Markup all = element("h3", "To write in") + temperatures(bore, pieces);
    for (int piece = 1; piece <= pieces; ++piece)
        all += sizes(bore, piece);
    if (bore.planned.count > most_forms)
        all += element("p", "For the other pieces print these pages again.");
    if (bore.planned.layers.size() > most_layers_listed)
        all += element("p", "For the other layers write on: time and temperature before each.");
    return all + element("p", "Date " + element("span", {}, {{"class", "blank"}}));
}

} // namespace

Markup skim_figure(const Part& in, const BorePlan& bore, std::string_view none) {
    return bore.build.skimmed ? in.figure("build.skim_diameter_mm", 2.0 * bore.build.skim_radius) : none;
}

Markup weld_figure(const Part& in, const BorePlan& bore) {
    return in.in("layers", bore.layers.size() - 1).across("radius_after_mm", bore.layers.back().radius_after);
}

Markup layers_figure(const Part& in, const BorePlan& bore) {
    return in.figure("layers", std::to_string(bore.layers.size()), Shown::count) + " × " +
           in.figure("layers[0].rings", bore.layers.front().rings);
}

Markup filler_figure(const Part& in, const BorePlan& bore) {
    return bore.deposition.piece ? in.figure("metal.pieces", bore.metal.pieces) + " pieces"
                                 : in.figure("metal.wire_kg", bore.metal.wire);
}

Markup sheet_bore(const SheetBore& bore) {
    Markup title = "Bore: " + bore.text("name", bore.planned.name);
    if (bore.planned.count > 1)
        title += ", each of " + bore.figure("count", bore.planned.count);
    return element("section",
                   heading(bore.id, title) + facts(bore) + drawings(bore) + sheet_layers(bore) +
                       sheet_heat(bore) + sheet_boring(bore) + forms(bore) + bore_cautions(bore),
                   {{"class", "bore"}, {"aria-labelledby", bore.id}});
}

} // namespace ringfill
