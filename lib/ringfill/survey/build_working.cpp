#include <ringfill/survey/survey_working.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// The bore before welding: the skim, or the surface as it is.
std::vector<Working> skim_working(const WornBore& bore, const Survey& survey, const Build& build) {
    const Input r_max{"r_max", mm(survey.largest.radius), "mm"};
    const Input worn{"V_worn", mm3(survey.worn_volume), "mm3"};
    const Input length{"L", mm(bore.length), "mm"};
    if (!build.skimmed)
        return {
            {"skim_diameter_mm", "2*r_max", {r_max}, mm(2.0 * build.skim_radius), "mm", "own"},
            {"skim_volume_mm3", "0*V_worn", {worn}, 0, "mm3", "own"},
            {"mean_radius_mm", "sqrt(V_worn/(pi*L))", {worn, length}, mm(build.mean_radius), "mm", "own"}};
    return {{"skim_diameter_mm",
             "2*(r_max + a)",
             {r_max, {"a", mm(bore.skim.value_or(Length())), "mm"}},
             mm(2.0 * build.skim_radius),
             "mm",
             "own"},
            {"skim_volume_mm3",
             "pi*r_s^2*L - V_worn",
             {{"r_s", mm(build.skim_radius), "mm"}, length, worn},
             mm3(build.skim_volume),
             "mm3",
             "own"}};
}

} // namespace

std::vector<Working> build_working(const WornBore& bore, const Survey& survey, const Build& build) {
    const Input r_s{"r_s", mm(build.skim_radius), "mm"};
    const Input r_f{"r_f", mm(build.finish_radius), "mm"};
    const Input r_t{"r_t", mm(build.weld_to_radius), "mm"};
    std::vector<Working> work = skim_working(bore, survey, build);
    if (build.wall)
        work.push_back({"wall_mm",
                        "D_boss/2 - r_s",
                        {{"D_boss", mm(*bore.boss_diameter), "mm"}, r_s},
                        mm(*build.wall),
                        "mm",
                        "own"});
    work.push_back({"weld_to_diameter_mm",
                    "2*(r_f - s)",
                    {r_f, {"s", mm(bore.stock), "mm"}},
                    mm(2.0 * build.weld_to_radius),
                    "mm",
                    "own"});
    work.push_back({"build_mm", "r_s - r_t", {r_s, r_t}, mm(build.build), "mm", "own"});
    work.push_back({"ring_volume_mm3",
                    "pi*(r_m^2 - r_t^2)*(L + 2*o)",
                    {{"r_m", mm(build.mean_radius), "mm"},
                     r_t,
                     {"L", mm(bore.length), "mm"},
                     {"o", mm(bore.overhang), "mm"}},
                    mm3(build.ring_volume),
                    "mm3",
                    "own"});
    if (build.skimmed)
        work.push_back({"finished_weld_mm", "r_s - r_f", {r_s, r_f}, mm(build.finished_weld), "mm", "own"});
    else {
        work.push_back({"finished_weld_mm",
                        "r_min - r_f",
                        {{"r_min", mm(survey.smallest.radius), "mm"}, r_f},
                        mm(build.finished_weld),
                        "mm",
                        "own"});
        work.push_back({"finished_weld_clock_deg",
                        "mod(theta, 360)",
                        {{"theta", degrees(build.finished_weld_clock), "deg"}},
                        degrees(build.finished_weld_clock),
                        "deg",
                        "own"});
    }
    return under("build", std::move(work));
}

} // namespace ringfill
