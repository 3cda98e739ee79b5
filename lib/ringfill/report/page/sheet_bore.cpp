#include <ringfill/report/page/sheet_parts.hpp>

#include <fmt/format.h>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/report/text/heat_head.hpp>
#include <ringfill/report/text/passes_text.hpp>

namespace ringfill {
namespace {

/// Facts, each a term with what stands for it.
using Facts = std::vector<std::pair<std::string_view, Markup>>;

void add_wear(Facts& facts, const SheetBore& bore) {
    const Survey& survey = bore.planned.survey;
    if (is_same_all_round(survey)) {
        facts.emplace_back("worn to", words("radius ") +
                                          bore.figure("survey.largest_radius_mm", survey.largest.radius) +
                                          words(", one diameter measured"));
        return;
    }
    const auto add = [&](std::string_view term, const std::string& radius, const ClockRadius& at) {
        facts.emplace_back(term, words("radius ") + bore.figure(radius + "_mm", at.radius) + words(" at ") +
                                     bore.figure(radius + "_clock_deg", at.clock) + words(" from 12"));
    };
    add("deepest wear", "survey.largest_radius", survey.largest);
    add("least wear", "survey.smallest_radius", survey.smallest);
}

void add_limits(Facts& facts, const SheetBore& bore) {
    const auto& limits = bore.planned.boring.limits;
    if (!limits) {
        facts.emplace_back("limits", words("the job gives neither size_class nor size_limits"));
        return;
    }
    const Part boring = bore.in("boring");
    Markup shown = boring.figure("limits_mm[0]", show_fine_low(limits->low, bore.units), Shown::up) +
                   words(" to ") +
                   boring.figure("limits_mm[1]", show_fine_high(limits->high, bore.units), Shown::down);
    if (!limits->size_class.empty())
        shown += words(", class ") + boring.text("size_class", limits->size_class);
    facts.emplace_back("limits at 20 °C", shown);
}

Facts facts_of(const SheetBore& bore) {
    const WornBore& worn = bore.worn;
    const BorePlan& planned = bore.planned;
    const Build& build = planned.build;
    const std::string& approved = planned.heat.preheat.approved;
    Facts facts{
        {"base metal", words(worn.base)},
        {"length, axis", bore.given("length", worn.length) + words(", " + worn.axis)},
        {"boss", worn.boss_diameter ? bore.given("boss_diameter", *worn.boss_diameter) : words("not given")}};
    add_wear(facts, bore);
    facts.insert(facts.end(),
                 {{"skim to", skim_figure(bore, planned, "no skim: welded as it is")},
                  {"build a side", bore.figure("build.build_mm", build.build)},
                  {"weld to", weld_figure(bore, planned) + words(", asked for ") +
                                  bore.figure("build.weld_to_diameter_mm", 2.0 * build.weld_to_radius)},
                  {"finish", bore.given("finish_diameter", 2.0 * build.finish_radius) + words(", bored to ") +
                                 bore.figure("boring.final_diameter_mm",
                                             show_fine(planned.boring.final_diameter, bore.units))}});
    add_limits(facts, bore);
    facts.emplace_back("weld left a side", bore.figure("build.finished_weld_mm", build.finished_weld));
    if (build.wall)
        facts.emplace_back("wall", bore.figure("build.wall_mm", *build.wall));
    facts.insert(
        facts.end(),
        {{"filler", words(planned.filler)},
         {"procedure", bore.text("procedure", planned.procedure) +
                           (approved.empty() ? words(", no approved procedure in the job")
                                             : words(", approved: ") + bore.text("heat.approved", approved))},
         {"layers", layers_figure(bore, planned) + words(" rings")},
         {"filler, arc",
          filler_figure(bore, planned) + words(", ") + bore.figure("metal.arc_s", planned.metal.arc)}});
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

} // namespace

Markup skim_figure(const Part& in, const BorePlan& bore, std::string_view none) {
    return bore.build.skimmed ? in.figure("build.skim_diameter_mm", 2.0 * bore.build.skim_radius)
                              : words(none);
}

Markup weld_figure(const Part& in, const BorePlan& bore) {
    return in.in("layers", bore.layers.size() - 1)
        .figure("radius_after_mm", show(2.0 * bore.layers.back().radius_after, in.units), Shown::twice);
}

Markup layers_figure(const Part& in, const BorePlan& bore) {
    return in.figure("layers", std::to_string(bore.layers.size()), Shown::count) + words(" × ") +
           in.figure("layers[0].rings", bore.layers.front().rings);
}

Markup filler_figure(const Part& in, const BorePlan& bore) {
    return bore.deposition.piece ? in.figure("metal.pieces", bore.metal.pieces) + words(" pieces")
                                 : in.figure("metal.wire_kg", bore.metal.wire);
}

Markup sheet_facts(const SheetBore& bore) {
    Markup list;
    for (const auto& [term, shown] : facts_of(bore))
        list += element("div", element("dt", term) + element("dd", shown));
    const Sentence limits{fmt::format("Preheat {}.", heat_limits(bore.planned.heat, bore.units)), "  ",
                          limit_figures(bore.planned.heat)};
    return element("div", paragraphs({limits}, bore.path), {{"class", "limits"}}) +
           element("dl", list, {{"class", "facts"}}) +
           element("p", settings_sentence(bore.planned, bore.units), {{"class", "told"}});
}

Markup sheet_bore(const SheetBore& bore) {
    Markup title = words("Bore: ") + bore.text("name", bore.planned.name);
    if (bore.planned.count > 1)
        title += words(", each of ") + bore.figure("count", bore.planned.count);
    return element("section",
                   element("h2", title, {{"id", bore.id}}) + sheet_facts(bore) + drawings(bore) +
                       sheet_layers(bore) + sheet_heat(bore) + sheet_boring(bore) + sheet_forms(bore) +
                       bore_cautions(bore),
                   {{"class", "bore"}, {"aria-labelledby", bore.id}});
}

} // namespace ringfill
