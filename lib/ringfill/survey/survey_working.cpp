#include <ringfill/survey/survey_working.hpp>

#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

std::vector<double> all_mm(const std::vector<Length>& lengths) {
    return lengths | ranges::views::transform(mm) | ranges::to<std::vector>();
}

/// An extreme radius of a station, the trigonometric polynomial through its readings at a clock position of
/// the search: one of 720 equal angles, or of a reading.
std::vector<Working> extreme_working(const std::string& figure, const WornStation& station,
                                     const ClockRadius& extreme) {
    const Interpolant outline(station.radii);
    std::vector<double> waves;
    for (std::size_t j = 1; j <= outline.cosines.size(); ++j)
        waves.push_back(static_cast<double>(j));
    const double share = extreme.clock.value() / (2 * std::numbers::pi);
    const double on_grid = share * search_angles;
    const bool is_on_grid = std::fabs(on_grid - std::round(on_grid)) < 1e-6;
    const double count = is_on_grid ? search_angles : static_cast<double>(station.radii.size());
    return {worked(figure + "_mm", "a_0 + sum(a*cos(j*theta*pi/180)) + sum(b*sin(j*theta*pi/180))",
                   inputs_of(in_mm("a_0", outline.mean), Input("a", all_mm(outline.cosines), "mm"),
                             Input("b", all_mm(outline.sines), "mm"), Input("j", waves),
                             in_degrees("theta", extreme.clock)),
                   in_mm(extreme.radius)),
            worked(figure + "_clock_deg", "360*i/n", {{"i", std::round(share * count)}, {"n", count}},
                   in_degrees(extreme.clock))};
}

Working volume_of_stations(const std::vector<WornStation>& stations, const WornBore& bore, Volume volume) {
    Working work = worked("worn_volume_mm3", "pi*(mean(r_1^2)*z_1", {}, in_mm3(volume));
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const std::size_t k = i + 1;
        work.inputs.emplace_back(fmt::format("r_{}", k), all_mm(stations[i].radii), "mm");
        work.inputs.emplace_back(fmt::format("z_{}", k), in_mm(stations[i].depth));
        if (i > 0)
            work.formula += fmt::format(" + (z_{0}-z_{1})/3*mean(r_{1}^2 + r_{1}*r_{0} + r_{0}^2)", k, i);
    }
    work.formula += fmt::format(" + mean(r_{0}^2)*(L-z_{0}))", stations.size());
    work.inputs.emplace_back("L", in_mm(bore.length));
    return work;
}

} // namespace

std::vector<Working> survey_working(const WornBore& bore, const Survey& survey) {
    if (const Worn& worn = bore.worn; worn.diameter)
        return under(
            "survey",
            worked(inputs_of(in_mm("D", *worn.diameter), in_mm("e", worn.offset.value_or(Length())),
                             in_degrees("phi_0", worn.offset_clock.value_or(Angle())),
                             in_mm("L", bore.length)),
                   {{"largest_radius_mm", "D/2 + e", in_mm(survey.largest.radius)},
                    {"largest_radius_clock_deg", "mod(phi_0, 360)", in_degrees(survey.largest.clock)},
                    {"smallest_radius_mm", "D/2 - e", in_mm(survey.smallest.radius)},
                    {"smallest_radius_clock_deg", "mod(phi_0 + 180, 360)", in_degrees(survey.smallest.clock)},
                    {"worn_volume_mm3", "pi*(D/2)^2*L", in_mm3(survey.worn_volume)}}));
    const std::vector<WornStation> stations = stations_of(bore.worn);
    std::vector<Working> work =
        extreme_working("largest_radius", stations[survey.largest_station], survey.largest);
    append(work, extreme_working("smallest_radius", stations[survey.smallest_station], survey.smallest));
    work.push_back(volume_of_stations(stations, bore, survey.worn_volume));
    return under("survey", std::move(work));
}

std::vector<Working> build_working(const WornBore& bore, const Survey& survey, const Build& build) {
    const bool skims = bore.skim.has_value();
    return under(
        "build",
        worked(inputs_of(in_mm("r_max", survey.largest.radius), in_mm("r_min", survey.smallest.radius),
                         in_mm3("V_worn", survey.worn_volume), in_mm("L", bore.length),
                         in_mm("o", bore.overhang), in_mm("a", bore.skim.value_or(Length())),
                         in_mm("s", bore.stock), in_mm("D_boss", bore.boss_diameter.value_or(Length())),
                         in_mm("r_s", build.skim_radius), in_mm("r_f", build.finish_radius),
                         in_mm("r_t", build.weld_to_radius), in_mm("r_m", build.mean_radius),
                         in_degrees("theta", build.finished_weld_clock)),
               {{"skim_diameter_mm", skims ? "2*(r_max + a)" : "2*r_max", in_mm(2.0 * build.skim_radius)},
                {"skim_volume_mm3", skims ? "pi*r_s^2*L - V_worn" : "0*V_worn", in_mm3(build.skim_volume)},
                {"mean_radius_mm", skims ? "" : "sqrt(V_worn/(pi*L))", in_mm(build.mean_radius)},
                {"wall_mm", build.wall ? "D_boss/2 - r_s" : "", in_mm(build.wall.value_or(Length()))},
                {"weld_to_diameter_mm", "2*(r_f - s)", in_mm(2.0 * build.weld_to_radius)},
                {"build_mm", "r_s - r_t", in_mm(build.thickness)},
                {"ring_volume_mm3", "pi*(r_m^2 - r_t^2)*(L + 2*o)", in_mm3(build.ring_volume)},
                {"finished_weld_mm", skims ? "r_s - r_f" : "r_min - r_f", in_mm(build.finished_weld)},
                {"finished_weld_clock_deg", skims ? "" : "mod(theta, 360)",
                 in_degrees(build.finished_weld_clock)}}));
}

} // namespace ringfill
