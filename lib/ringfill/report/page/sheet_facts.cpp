#include <fmt/format.h>

#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/sheet_bore.hpp>
#include <ringfill/report/text/heat_head.hpp>
#include <ringfill/report/text/passes_text.hpp>

namespace ringfill {
namespace {

/// Facts, each a term with what is said of it.
class Facts {
  public:
    void add(std::string_view term, const Markup& said) {
        list_ += element("div", element("dt", term) + element("dd", said));
    }
    Markup written() const { return element("dl", list_, {{"class", "facts"}}); }

  private:
    Markup list_;
};

void add_what_it_is(Facts& facts, const SheetBore& bore) {
    const WornBore& worn = bore.worn;
    const Survey& survey = bore.planned.survey;
    const UnitSystem units = bore.units();
    facts.add("base metal", words(worn.base));
    facts.add("length, axis", given(bore.at("length"), show(worn.length, units)) + words(", " + worn.axis));
    facts.add("boss", worn.boss_diameter ? given(bore.at("boss_diameter"), show(*worn.boss_diameter, units))
                                         : words("not given"));
    if (is_same_all_round(survey)) {
        facts.add("worn to",
                  words("radius ") +
                      figure(bore.at("survey.largest_radius_mm"), show(survey.largest.radius, units)) +
                      words(", one diameter measured"));
        return;
    }
    facts.add(
        "deepest wear",
        words("radius ") + figure(bore.at("survey.largest_radius_mm"), show(survey.largest.radius, units)) +
            words(" at ") + figure(bore.at("survey.largest_radius_clock_deg"), show(survey.largest.clock)) +
            words(" from 12"));
    facts.add(
        "least wear",
        words("radius ") + figure(bore.at("survey.smallest_radius_mm"), show(survey.smallest.radius, units)) +
            words(" at ") + figure(bore.at("survey.smallest_radius_clock_deg"), show(survey.smallest.clock)) +
            words(" from 12"));
}

void add_sizes(Facts& facts, const SheetBore& bore) {
    const UnitSystem units = bore.units();
    const Build& build = bore.planned.build;
    const BoringPlan& boring = bore.planned.boring;
    facts.add("skim to", build.skimmed
                             ? figure(bore.at("build.skim_diameter_mm"), show(2.0 * build.skim_radius, units))
                             : words("no skim: welded as it is"));
    facts.add("build a side", figure(bore.at("build.build_mm"), show(build.build, units)));
    const std::string last =
        bore.at(fmt::format("layers[{}].radius_after_mm", bore.planned.layers.size() - 1));
    facts.add("weld to",
              figure(last, show(2.0 * bore.planned.layers.back().radius_after, units), Shown::twice) +
                  words(", asked for ") +
                  figure(bore.at("build.weld_to_diameter_mm"), show(2.0 * build.weld_to_radius, units)));
    facts.add("finish",
              given(bore.at("finish_diameter"), show(2.0 * build.finish_radius, units)) +
                  words(", bored to ") +
                  figure(bore.at("boring.final_diameter_mm"), show_fine(boring.final_diameter, units)));
    if (boring.limits) {
        Markup said =
            figure(bore.at("boring.limits_mm[0]"), show_fine_low(boring.limits->low, units), Shown::up) +
            words(" to ") +
            figure(bore.at("boring.limits_mm[1]"), show_fine_high(boring.limits->high, units), Shown::down);
        if (!boring.limits->size_class.empty())
            said += words(", class ") + as_told(bore.at("boring.size_class"), boring.limits->size_class);
        facts.add("limits at 20 °C", said);
    } else {
        facts.add("limits", words("the job gives neither size_class nor size_limits"));
    }
    facts.add("weld left a side",
              figure(bore.at("build.finished_weld_mm"), show(build.finished_weld, units)));
    if (build.wall)
        facts.add("wall", figure(bore.at("build.wall_mm"), show(*build.wall, units)));
}

void add_welding(Facts& facts, const SheetBore& bore) {
    const BorePlan& planned = bore.planned;
    facts.add("filler", words(planned.filler));
    Markup procedure = as_told(bore.at("procedure"), planned.procedure);
    procedure +=
        planned.heat.preheat.approved.empty()
            ? words(", no approved procedure in the job")
            : words(", approved: ") + as_told(bore.at("heat.approved"), planned.heat.preheat.approved);
    facts.add("procedure", procedure);
    facts.add("layers",
              figure(bore.at("layers"), fmt::format("{}", planned.layers.size()), Shown::count) +
                  words(" × ") +
                  figure(bore.at("layers[0].rings"), fmt::format("{}", planned.layers.front().rings)) +
                  words(" rings"));
    facts.add("filler, arc", filler_figure(bore.at("metal"), planned, bore.units()) + words(", ") +
                                 figure(bore.at("metal.arc_s"), show(planned.metal.arc)));
}

} // namespace

Markup sheet_facts(const SheetBore& bore) {
    Facts facts;
    add_what_it_is(facts, bore);
    add_sizes(facts, bore);
    add_welding(facts, bore);
    Sentence limits{fmt::format("Preheat {}.", heat_limits(bore.planned.heat, bore.units())), "  ",
                    limit_figures(bore.planned.heat)};
    return element("div", paragraphs({limits}, bore.path), {{"class", "limits"}}) + facts.written() +
           element("p", settings_sentence(bore.planned, bore.units()), {{"class", "told"}});
}

} // namespace ringfill
