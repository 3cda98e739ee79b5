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

/// An extreme radius of a station: the trigonometric polynomial through its readings at that clock position.
Working extreme_radius(std::string figure, const Station& station, const ClockRadius& extreme) {
    const Interpolant outline(station.radii);
    std::vector<double> waves;
    for (std::size_t j = 1; j <= outline.cosines().size(); ++j)
        waves.push_back(static_cast<double>(j));
    return worked(std::move(figure), "a_0 + sum(a*cos(j*theta*pi/180)) + sum(b*sin(j*theta*pi/180))",
                  {{"a_0", in_mm(outline.mean())},
                   {"a", all_mm(outline.cosines()), "mm"},
                   {"b", all_mm(outline.sines()), "mm"},
                   {"j", waves},
                   {"theta", in_degrees(extreme.clock)}},
                  in_mm(extreme.radius));
}

/// A clock position of the search: one of 720 equal angles, or of a reading.
Working extreme_clock(std::string figure, const ClockRadius& extreme, std::size_t readings) {
    const double share = extreme.clock.value() / (2 * std::numbers::pi);
    const double on_grid = share * search_angles;
    const bool grid = std::fabs(on_grid - std::round(on_grid)) < 1e-6;
    const double count = grid ? search_angles : static_cast<double>(readings);
    return worked(std::move(figure), "360*i/n", {{"i", std::round(share * count)}, {"n", count}},
                  in_degrees(extreme.clock));
}

Working volume_of_stations(const std::vector<Station>& stations, const WornBore& bore, Volume volume) {
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

std::vector<Working> form_working(const WornDiameter& worn, const WornBore& bore, const Survey& survey) {
    const Input d{"D", in_mm(worn.diameter)};
    const Input e{"e", in_mm(worn.offset)};
    const Input clock{"phi_0", in_degrees(worn.offset_clock)};
    return {worked("largest_radius_mm", "D/2 + e", {d, e}, in_mm(survey.largest.radius)),
            worked("largest_radius_clock_deg", "mod(phi_0, 360)", {clock}, in_degrees(survey.largest.clock)),
            worked("smallest_radius_mm", "D/2 - e", {d, e}, in_mm(survey.smallest.radius)),
            worked("smallest_radius_clock_deg", "mod(phi_0 + 180, 360)", {clock},
                   in_degrees(survey.smallest.clock)),
            worked("worn_volume_mm3", "pi*(D/2)^2*L", {d, {"L", in_mm(bore.length)}},
                   in_mm3(survey.worn_volume))};
}

/// Of stations, whichever way they were read.
template <class Stations>
std::vector<Working> form_working(const Stations& worn, const WornBore& bore, const Survey& survey) {
    const std::vector<Station> stations = stations_of(worn);
    const std::size_t readings = stations.front().radii.size();
    return {extreme_radius("largest_radius_mm", stations[survey.largest_station], survey.largest),
            extreme_clock("largest_radius_clock_deg", survey.largest, readings),
            extreme_radius("smallest_radius_mm", stations[survey.smallest_station], survey.smallest),
            extreme_clock("smallest_radius_clock_deg", survey.smallest, readings),
            volume_of_stations(stations, bore, survey.worn_volume)};
}

/// The bore before welding: the skim, or the surface as it is.
std::vector<Working> skim_working(const WornBore& bore, const Survey& survey, const Build& build) {
    const Input r_max{"r_max", in_mm(survey.largest.radius)};
    const Input worn{"V_worn", in_mm3(survey.worn_volume)};
    const Input length{"L", in_mm(bore.length)};
    const Length skim_diameter = 2.0 * build.skim_radius;
    if (bore.skim)
        return {worked("skim_diameter_mm", "2*(r_max + a)", {r_max, {"a", in_mm(*bore.skim)}},
                       in_mm(skim_diameter)),
                worked("skim_volume_mm3", "pi*r_s^2*L - V_worn",
                       {{"r_s", in_mm(build.skim_radius)}, length, worn}, in_mm3(build.skim_volume))};
    return {worked("skim_diameter_mm", "2*r_max", {r_max}, in_mm(skim_diameter)),
            worked("skim_volume_mm3", "0*V_worn", {worn}, in_mm3(Volume())),
            worked("mean_radius_mm", "sqrt(V_worn/(pi*L))", {worn, length}, in_mm(build.mean_radius))};
}

} // namespace

std::vector<Working> survey_working(const WornBore& bore, const Survey& survey) {
    return under("survey",
                 std::visit([&](const auto& form) { return form_working(form, bore, survey); }, bore.worn));
}

std::vector<Working> build_working(const WornBore& bore, const Survey& survey, const Build& build) {
    const Input r_s{"r_s", in_mm(build.skim_radius)};
    const Input r_f{"r_f", in_mm(build.finish_radius)};
    const Input r_t{"r_t", in_mm(build.weld_to_radius)};
    std::vector<Working> work = skim_working(bore, survey, build);
    if (build.wall)
        work.push_back(worked("wall_mm", "D_boss/2 - r_s", {{"D_boss", in_mm(*bore.boss_diameter)}, r_s},
                              in_mm(*build.wall)));
    work.push_back(worked("weld_to_diameter_mm", "2*(r_f - s)", {r_f, {"s", in_mm(bore.stock)}},
                          in_mm(2.0 * build.weld_to_radius)));
    work.push_back(worked("build_mm", "r_s - r_t", {r_s, r_t}, in_mm(build.build)));
    work.push_back(worked(
        "ring_volume_mm3", "pi*(r_m^2 - r_t^2)*(L + 2*o)",
        {{"r_m", in_mm(build.mean_radius)}, r_t, {"L", in_mm(bore.length)}, {"o", in_mm(bore.overhang)}},
        in_mm3(build.ring_volume)));
    if (build.skimmed) {
        work.push_back(worked("finished_weld_mm", "r_s - r_f", {r_s, r_f}, in_mm(build.finished_weld)));
    } else {
        work.push_back(worked("finished_weld_mm", "r_min - r_f",
                              {{"r_min", in_mm(survey.smallest.radius)}, r_f}, in_mm(build.finished_weld)));
        work.push_back(worked("finished_weld_clock_deg", "mod(theta, 360)",
                              {{"theta", in_degrees(build.finished_weld_clock)}},
                              in_degrees(build.finished_weld_clock)));
    }
    return under("build", std::move(work));
}

} // namespace ringfill
