#include <ringfill/caution/survey_rules.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

constexpr std::size_t enough_readings = 8;

// Shares of the finish radius; common practice, no source.
constexpr double doubtful_wear = 0.25;
constexpr double doubtful_spread = 0.1;

Caution before(const WornBore& bore, std::string text, std::string because) {
    return {bore.name, "before", "yes", std::move(text), std::move(because), "practice"};
}

void about_readings(std::vector<Caution>& cautions, const WornBore& bore, const Survey& survey) {
    if (survey.readings == 0)
        cautions.push_back(before(bore,
                                  "Measure at 8 clock positions or more: one diameter does not show an oval.",
                                  "one diameter stands for the whole bore"));
    else if (survey.readings < enough_readings)
        cautions.push_back(
            before(bore, "Measure at 8 clock positions or more: an oval between the readings is not seen.",
                   fmt::format("{} readings round the bore", survey.readings)));
    if (survey.two_point)
        cautions.push_back(
            before(bore,
                   "Check for three-lobed wear with a three-point gauge or radii from the axis: "
                   "two-point readings never show it.",
                   "the survey is of two-point diameters"));
}

/// A figure mistyped or in the wrong unit makes the worn surface far from round or far from the finish size.
void about_sense(std::vector<Caution>& cautions, const WornBore& bore, const Survey& survey,
                 const Build& build, UnitSystem units) {
    const Length spread = survey.largest.radius - survey.smallest.radius;
    const Length over = survey.largest.radius - build.finish_radius;
    if (over > doubtful_wear * build.finish_radius || spread > doubtful_spread * build.finish_radius)
        cautions.push_back(
            before(bore, "Check the readings and their units: a figure may be mistyped.",
                   fmt::format("the worn surface reaches from {} to {} radius, the finish is {}",
                               show(survey.smallest.radius, units), show(survey.largest.radius, units),
                               show(build.finish_radius, units))));
}

void about_weld(std::vector<Caution>& cautions, const WornBore& bore, const Build& build, UnitSystem units) {
    const std::string where = build.skimmed ? "" : fmt::format(" at {}", show(build.finished_weld_clock));
    if (build.finished_weld < Length())
        cautions.push_back(before(bore, "Skim the bore first: after boring the tool will meet parent metal.",
                                  fmt::format("the worn surface stands {} inside the finish diameter{}",
                                              show(-build.finished_weld, units), where)));
    else if (build.finished_weld < least_finished_weld)
        cautions.push_back(
            before(bore, "Skim deeper: the tool would work in the fused line.",
                   fmt::format("only {} of weld per side is left after boring{}, under {}",
                               show(build.finished_weld, units), where, show(least_finished_weld, units))));
    if (!build.skimmed)
        cautions.push_back(before(bore,
                                  "Grind or skim to sound, bright metal before welding: grease, rust and "
                                  "hammered skin make a porous weld.",
                                  "the job welds on the surface as it is"));
}

} // namespace

std::vector<Caution> survey_cautions(const WornBore& bore, const Survey& survey, const Build& build,
                                     UnitSystem units) {
    std::vector<Caution> cautions;
    about_sense(cautions, bore, survey, build, units);
    about_readings(cautions, bore, survey);
    about_weld(cautions, bore, build, units);
    if (const Length least = least_wall(build.finish_radius); build.wall && *build.wall < least)
        cautions.push_back(before(bore,
                                  "Have the thin wall judged before welding: it may burn through or warp. "
                                  "Back it up, and lay less heat at a time.",
                                  fmt::format("{} of wall is left after the skim, under {}",
                                              show(*build.wall, units), show(least, units))));
    for (const Groove& groove : bore.grooves)
        if (build.finished_weld > Length() &&
            groove.diameter / 2.0 - build.finish_radius > build.finished_weld)
            cautions.push_back(
                before(bore, "Expect the re-cut groove to run in the fused line or in parent metal.",
                       fmt::format("its floor at {} lies deeper than the {} of finished weld per side",
                                   show(groove.diameter, units), show(build.finished_weld, units))));
    return cautions;
}

} // namespace ringfill
