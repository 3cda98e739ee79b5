#include <ringfill/caution/rules.hpp>

namespace ringfill {
namespace {

constexpr std::size_t enough_readings = 8;

// Shares of the finish radius; common practice, no source.
constexpr double doubtful_wear = 0.25;
constexpr double doubtful_spread = 0.1;

void judge_readings(CautionList& cautions, const Survey& survey, Length finish) {
    const Length least = survey.smallest.radius;
    const Length most = survey.largest.radius;
    // a figure mistyped or in the wrong unit makes the surface far from round or far from the finish size
    if (most - finish > doubtful_wear * finish || most - least > doubtful_spread * finish)
        cautions.before("Check the readings and their units: a figure may be mistyped.",
                        "the worn surface reaches from {} to {} radius, the finish is {}", least, most,
                        finish);
    if (survey.readings == 0)
        cautions.before("Measure at 8 clock positions or more: one diameter does not show an oval.",
                        "one diameter stands for the whole bore");
    else if (survey.readings < enough_readings)
        cautions.before("Measure at 8 clock positions or more: an oval between the readings is not seen.",
                        "{} readings round the bore", survey.readings);
    if (survey.two_point)
        cautions.before("Check for three-lobed wear with a three-point gauge or radii from the axis: "
                        "two-point readings never show it.",
                        "the survey is of two-point diameters");
}

void judge_finished_weld(CautionList& cautions, const Build& build) {
    const Length weld = build.finished_weld;
    const std::string where = build.skimmed ? "" : fmt::format(" at {}", show(build.finished_weld_clock));
    if (weld < Length())
        cautions.before("Skim the bore first: after boring the tool will meet parent metal.",
                        "the worn surface stands {} inside the finish diameter{}", -weld, where);
    else if (weld < least_finished_weld)
        cautions.before("Skim deeper: the tool would work in the fused line.",
                        "only {} of weld per side is left after boring{}, under {}", weld, where,
                        least_finished_weld);
    if (!build.skimmed)
        cautions.before("Grind or skim to sound, bright metal before welding: grease, rust and hammered skin "
                        "make a porous weld.",
                        "the job welds on the surface as it is");
}

} // namespace

void survey_rules(CautionList& cautions, const RuledBore& on) {
    const Build& build = on.plan.build;
    judge_readings(cautions, on.plan.survey, build.finish_radius);
    judge_finished_weld(cautions, build);
    if (const Length least = least_wall(build.finish_radius); build.wall && *build.wall < least)
        cautions.before("Have the thin wall judged before welding: it may burn through or warp. Back it up, "
                        "and lay less heat at a time.",
                        "{} of wall is left after the skim, under {}", *build.wall, least);
    for (const Groove& groove : on.bore.grooves)
        if (build.finished_weld > Length() &&
            groove.diameter / 2.0 - build.finish_radius > build.finished_weld)
            cautions.before("Expect the re-cut groove to run in the fused line or in parent metal.",
                            "its floor at {} lies deeper than the {} of finished weld per side",
                            groove.diameter, build.finished_weld);
}

} // namespace ringfill
