#include <fmt/format.h>

#include <ringfill/caution/bore_rules.hpp>

namespace ringfill {
namespace {

constexpr std::size_t enough_readings = 8;

// Shares of the finish radius; common practice, no source.
constexpr double doubtful_wear = 0.25;
constexpr double doubtful_spread = 0.1;

/// A figure mistyped or in the wrong unit makes the worn surface far from round or far from the finish size.
void judge_sense(CautionList& cautions, const Survey& survey, const Build& build, UnitSystem units) {
    const Length spread = survey.largest.radius - survey.smallest.radius;
    const Length over = survey.largest.radius - build.finish_radius;
    if (over > doubtful_wear * build.finish_radius || spread > doubtful_spread * build.finish_radius)
        cautions.before("Check the readings and their units: a figure may be mistyped.",
                        fmt::format("the worn surface reaches from {} to {} radius, the finish is {}",
                                    show(survey.smallest.radius, units), show(survey.largest.radius, units),
                                    show(build.finish_radius, units)));
}

void judge_readings(CautionList& cautions, const Survey& survey) {
    if (survey.readings == 0)
        cautions.before("Measure at 8 clock positions or more: one diameter does not show an oval.",
                        "one diameter stands for the whole bore");
    else if (survey.readings < enough_readings)
        cautions.before("Measure at 8 clock positions or more: an oval between the readings is not seen.",
                        fmt::format("{} readings round the bore", survey.readings));
    if (survey.two_point)
        cautions.before("Check for three-lobed wear with a three-point gauge or radii from the axis: "
                        "two-point readings never show it.",
                        "the survey is of two-point diameters");
}

void judge_finished_weld(CautionList& cautions, const Build& build, UnitSystem units) {
    const std::string where = build.skimmed ? "" : fmt::format(" at {}", show(build.finished_weld_clock));
    if (build.finished_weld < Length())
        cautions.before("Skim the bore first: after boring the tool will meet parent metal.",
                        fmt::format("the worn surface stands {} inside the finish diameter{}",
                                    show(-build.finished_weld, units), where));
    else if (build.finished_weld < least_finished_weld)
        cautions.before("Skim deeper: the tool would work in the fused line.",
                        fmt::format("only {} of weld per side is left after boring{}, under {}",
                                    show(build.finished_weld, units), where,
                                    show(least_finished_weld, units)));
    if (!build.skimmed)
        cautions.before("Grind or skim to sound, bright metal before welding: grease, rust and hammered skin "
                        "make a porous weld.",
                        "the job welds on the surface as it is");
}

} // namespace

std::vector<Caution> survey_cautions(const WornBore& bore, const Survey& survey, const Build& build,
                                     UnitSystem units) {
    CautionList cautions(bore, Matter::quality);
    judge_sense(cautions, survey, build, units);
    judge_readings(cautions, survey);
    judge_finished_weld(cautions, build, units);
    if (const Length least = least_wall(build.finish_radius); build.wall && *build.wall < least)
        cautions.before("Have the thin wall judged before welding: it may burn through or warp. Back it up, "
                        "and lay less heat at a time.",
                        fmt::format("{} of wall is left after the skim, under {}", show(*build.wall, units),
                                    show(least, units)));
    for (const Groove& groove : bore.grooves)
        if (build.finished_weld > Length() &&
            groove.diameter / 2.0 - build.finish_radius > build.finished_weld)
            cautions.before("Expect the re-cut groove to run in the fused line or in parent metal.",
                            fmt::format("its floor at {} lies deeper than the {} of finished weld per side",
                                        show(groove.diameter, units), show(build.finished_weld, units)));
    return cautions.all();
}

} // namespace ringfill
