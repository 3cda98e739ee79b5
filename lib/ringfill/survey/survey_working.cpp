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
Working radius_working(std::string figure, const Station& station, const ClockRadius& extreme) {
    const Interpolant outline(station.radii);
    std::vector<double> waves;
    for (std::size_t j = 1; j <= outline.cosines().size(); ++j)
        waves.push_back(static_cast<double>(j));
    return {std::move(figure),
            "a_0 + sum(a*cos(j*theta*pi/180)) + sum(b*sin(j*theta*pi/180))",
            {{"a_0", mm(outline.mean()), "mm"},
             {"a", all_mm(outline.cosines()), "mm"},
             {"b", all_mm(outline.sines()), "mm"},
             {"j", waves},
             {"theta", degrees(extreme.clock), "deg"}},
            mm(extreme.radius),
            "mm",
            "own"};
}

/// A clock position of the search: one of 720 equal angles, or of a reading.
Working clock_working(std::string figure, const ClockRadius& extreme, std::size_t readings) {
    const double share = extreme.clock.value() / (2 * std::numbers::pi);
    const double on_grid = share * search_angles;
    const bool grid = std::fabs(on_grid - std::round(on_grid)) < 1e-6;
    const double count = grid ? search_angles : static_cast<double>(readings);
    return {std::move(figure),      "360*i/n", {{"i", std::round(share * count)}, {"n", count}},
            degrees(extreme.clock), "deg",     "own"};
}

Working volume_working(const std::vector<Station>& stations, const WornBore& bore, Volume volume) {
    Working work{"worn_volume_mm3", "pi*(mean(r_1^2)*z_1", {}, mm3(volume), "mm3", "own"};
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const std::size_t k = i + 1;
        work.inputs.emplace_back(fmt::format("r_{}", k), all_mm(stations[i].radii), "mm");
        work.inputs.emplace_back(fmt::format("z_{}", k), mm(stations[i].depth), "mm");
        if (i > 0)
            work.formula += fmt::format(" + (z_{0}-z_{1})/3*mean(r_{1}^2 + r_{1}*r_{0} + r_{0}^2)", k, i);
    }
    work.formula += fmt::format(" + mean(r_{0}^2)*(L-z_{0}))", stations.size());
    work.inputs.emplace_back("L", mm(bore.length), "mm");
    return work;
}

std::vector<Working> form_working(const WornDiameter& worn, const WornBore& bore, const Survey& survey) {
    const Input d{"D", mm(worn.diameter), "mm"};
    const Input e{"e", mm(worn.offset), "mm"};
    const Input clock{"phi_0", degrees(worn.offset_clock), "deg"};
    return {
        {"largest_radius_mm", "D/2 + e", {d, e}, mm(survey.largest.radius), "mm", "own"},
        {"largest_radius_clock_deg", "mod(phi_0, 360)", {clock}, degrees(survey.largest.clock), "deg", "own"},
        {"smallest_radius_mm", "D/2 - e", {d, e}, mm(survey.smallest.radius), "mm", "own"},
        {"smallest_radius_clock_deg",
         "mod(phi_0 + 180, 360)",
         {clock},
         degrees(survey.smallest.clock),
         "deg",
         "own"},
        {"worn_volume_mm3",
         "pi*(D/2)^2*L",
         {d, {"L", mm(bore.length), "mm"}},
         mm3(survey.worn_volume),
         "mm3",
         "own"}};
}

std::vector<Working> stations_working(const std::vector<Station>& stations, const WornBore& bore,
                                      const Survey& survey) {
    const std::size_t readings = stations.front().radii.size();
    return {radius_working("largest_radius_mm", stations[survey.largest_station], survey.largest),
            clock_working("largest_radius_clock_deg", survey.largest, readings),
            radius_working("smallest_radius_mm", stations[survey.smallest_station], survey.smallest),
            clock_working("smallest_radius_clock_deg", survey.smallest, readings),
            volume_working(stations, bore, survey.worn_volume)};
}

std::vector<Working> form_working(const WornRadii& worn, const WornBore& bore, const Survey& survey) {
    return stations_working(stations_of(worn), bore, survey);
}

std::vector<Working> form_working(const WornDiameters& worn, const WornBore& bore, const Survey& survey) {
    return stations_working(stations_of(worn), bore, survey);
}

} // namespace

std::vector<Working> survey_working(const WornBore& bore, const Survey& survey) {
    return under("survey",
                 std::visit([&](const auto& form) { return form_working(form, bore, survey); }, bore.worn));
}

} // namespace ringfill
