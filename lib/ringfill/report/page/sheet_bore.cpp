#include <ringfill/report/page/sheet_parts.hpp>

#include <fmt/format.h>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/say/boring_sentences.hpp>
#include <ringfill/say/heat_limits.hpp>
#include <ringfill/say/weld_sentences.hpp>

namespace ringfill {
namespace {

/// Facts, each a term with what stands for it.
using Facts = std::vector<std::pair<std::string_view, Markup>>;

void add_wear(Facts& facts, const SheetBore& bore) {
    const Survey& survey = bore.planned.survey;
    if (is_same_all_round(survey)) {
        facts.emplace_back("worn to", "radius " +
                                          bore.figure("survey.largest_radius_mm", survey.largest.radius) +
                                          ", one diameter measured");
        return;
    }
    const auto add = [&](std::string_view term, const std::string& radius, const ClockRadius& at) {
        facts.emplace_back(term, "radius " + bore.figure(radius + "_mm", at.radius) + " at " +
                                     bore.figure(radius + "_clock_deg", at.clock) + " from 12");
    };
    add("deepest wear", "survey.largest_radius", survey.largest);
    add("least wear", "survey.smallest_radius", survey.smallest);
}

void add_limits(Facts& facts, const SheetBore& bore) {
    const auto& limits = bore.planned.boring.limits;
    if (!limits) {
        facts.emplace_back("limits", no_size_limits);
        return;
    }
    const Part boring = bore.in("boring");
    Markup shown = boring.figure("limits_mm[0]", show_fine_low(limits->low, bore.units), Shown::up) + " to " +
                   boring.figure("limits_mm[1]", show_fine_high(limits->high, bore.units), Shown::down);
    if (!limits->size_class.empty())
        shown += ", class " + boring.text("size_class", limits->size_class);
    facts.emplace_back("limits at 20 °C", shown);
}

Facts facts_of(const SheetBore& bore) {
    const WornBore& worn = bore.worn;
    const BorePlan& planned = bore.planned;
    const Build& build = planned.build;
    const std::string& approved = planned.heat.preheat.approved;
    Facts facts{
        {"base metal", worn.base},
        {"length, axis", bore.given("length", worn.length) + ", " + worn.axis},
        {"boss", worn.boss_diameter ? bore.given("boss_diameter", *worn.boss_diameter) : "not given"}};
    add_wear(facts, bore);
    facts.insert(facts.end(),
                 {{"skim to", skim_figure(bore, planned, "no skim: welded as it is")},
                  {"build a side", bore.figure("build.build_mm", build.build)},
                  {"weld to", weld_figure(bore, planned) + ", asked for " +
                                  bore.figure("build.weld_to_diameter_mm", 2.0 * build.weld_to_radius)},
                  {"finish", bore.given("finish_diameter", 2.0 * build.finish_radius) + ", bored to " +
                                 bore.figure("boring.final_diameter_mm",
                                             show_fine(planned.boring.final_diameter, bore.units))}});
    add_limits(facts, bore);
    facts.emplace_back("weld left a side", bore.figure("build.finished_weld_mm", build.finished_weld));
    if (build.wall)
        facts.emplace_back("wall", bore.figure("build.wall_mm", *build.wall));
    facts.insert(
        facts.end(),
        {{"filler", planned.filler},
         {"procedure", bore.text("procedure", planned.procedure) +
                           (approved.empty() ? ", no approved procedure in the job"
                                             : ", approved: " + bore.text("heat.approved", approved))},
         {"layers", layers_figure(bore, planned) + " rings"},
         {"filler, arc",
          filler_figure(bore, planned) + ", " + bore.figure("metal.arc_s", planned.metal.arc)}});
    return facts;
}

Markup drawings(const SheetBore& bore) {
    return element("div",
                   framed("Across, seen from the near face",
                          cross_section(bore.worn, bore.planned, bore.units, bore.id + "-cross")) +
                       framed("Along the axis",
                              longitudinal_section(bore.worn, bore.planned, bore.units, bore.id + "-long")),
                   {{"class", "drawings"}});
}

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
        table.rows.back().front() = stage;
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
        table.add(stage, size, "", "", "", "");
    };
    row(planned.build.skimmed ? "after skim" : "before weld", skim_figure(bore, planned, "no skim"));
    row("after weld", weld_figure(bore, planned));
    row("after roughing", planned_after_roughing(bore));
    row("finish",
        bore.figure("boring.final_diameter_mm", show_fine(planned.boring.final_diameter, bore.units)));
    return written(table);
}

} // namespace

Markup skim_figure(const Part& in, const BorePlan& bore, std::string_view none) {
    return bore.build.skimmed ? in.figure("build.skim_diameter_mm", 2.0 * bore.build.skim_radius) : none;
}

Markup weld_figure(const Part& in, const BorePlan& bore) {
    return in.in("layers", bore.layers.size() - 1)
        .figure("radius_after_mm", show(2.0 * bore.layers.back().radius_after, in.units), Shown::twice);
}

Markup layers_figure(const Part& in, const BorePlan& bore) {
    return in.figure("layers", std::to_string(bore.layers.size()), Shown::count) + " × " +
           in.figure("layers[0].rings", bore.layers.front().rings);
}

Markup filler_figure(const Part& in, const BorePlan& bore) {
    return bore.deposition.piece ? in.figure("metal.pieces", bore.metal.pieces) + " pieces"
                                 : in.figure("metal.wire_kg", bore.metal.wire);
}

Markup sheet_facts(const SheetBore& bore) {
    Markup list;
    for (const auto& [term, shown] : facts_of(bore))
        list += element("div", element("dt", term) + element("dd", shown));
    Sentence limits = heat_limits(bore.planned.heat, bore.units);
    limits.text = fmt::format("Preheat {}.", limits.text);
    return element("div", paragraphs({limits}, bore.path), {{"class", "limits"}}) +
           element("dl", list, {{"class", "facts"}}) +
           element("p", settings_sentence(bore.planned, bore.units), {{"class", "told"}});
}

Markup sheet_forms(const SheetBore& bore) {
    const int pieces = std::min(bore.planned.count, most_forms);
    Markup all = element("h3", "To write in") + temperatures(bore, pieces);
    for (int piece = 1; piece <= pieces; ++piece)
        all += sizes(bore, piece);
    if (bore.planned.count > most_forms)
        all += element("p", "For the other pieces print these pages again.");
    if (bore.planned.layers.size() > most_layers_listed)
        all += element("p", "For the other layers write on: time and temperature before each.");
    return all + element("p", "Date " + element("span", Markup(), {{"class", "blank"}}));
}

Markup sheet_bore(const SheetBore& bore) {
    Markup title = "Bore: " + bore.text("name", bore.planned.name);
    if (bore.planned.count > 1)
        title += ", each of " + bore.figure("count", bore.planned.count);
    return element("section",
                   element("h2", title, {{"id", bore.id}}) + sheet_facts(bore) + drawings(bore) +
                       sheet_layers(bore) + sheet_heat(bore) + sheet_boring(bore) + sheet_forms(bore) +
                       bore_cautions(bore),
                   {{"class", "bore"}, {"aria-labelledby", bore.id}});
}

} // namespace ringfill
