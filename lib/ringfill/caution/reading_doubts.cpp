#include <algorithm>
#include <cmath>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/caution/doubt_rules.hpp>
#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

// All common practice, no source; found by trial over honest surveys.
constexpr double radius_inside_mm = 2;
constexpr double diameter_inside_mm = 1; // on the radius
constexpr std::size_t enough_in_bore = 8;
constexpr std::size_t enough_in_station = 3;
constexpr double least_bend_mm = 1;
constexpr double times_the_others = 4;
constexpr double stands_alone_mm = 0.8;
constexpr double covered_to = 0.60;
constexpr double covered_from = 0.45;
constexpr double diameters_for_one_station = 1.5;

/// Readings of one station as radii [mm].
struct Round {
    std::vector<double> mm;
    bool of_diameters = false;
    std::string field; ///< from the bore on, without the index

    std::size_t before(std::size_t i) const { return (i + mm.size() - 1) % mm.size(); }
    std::size_t after(std::size_t i) const { return (i + 1) % mm.size(); }
    /// How far a reading stands from the mean of its two neighbours.
    double bend(std::size_t i) const { return std::abs(mm[i] - (mm[before(i)] + mm[after(i)]) / 2); }
};

std::vector<Round> rounds_of(const Worn& worn) {
    std::vector<Round> all;
    for (std::size_t i = 0; i < worn.stations.size(); ++i) {
        const WornStation& station = worn.stations[i];
        Round& round = all.emplace_back();
        round.of_diameters = station.radii.empty();
        round.field = element_path("worn.stations", i) + (round.of_diameters ? ".diameters" : ".radii");
        for (const Length& reading : round.of_diameters ? station.diameters : station.radii)
            round.mm.push_back(round.of_diameters ? mm(reading) / 2 : mm(reading));
    }
    return all;
}

struct At {
    std::size_t station;
    std::size_t reading;
};

/// The 90th percentile of the bends of all readings but one and its neighbours [mm].
double usual_bend(const std::vector<Round>& all, At alone) {
    std::vector<double> bends;
    for (std::size_t s = 0; s < all.size(); ++s)
        for (std::size_t i = 0; i < all[s].mm.size(); ++i)
            if (s != alone.station ||
                (i != alone.reading && i != all[s].before(alone.reading) && i != all[s].after(alone.reading)))
                bends.push_back(all[s].bend(i));
    if (bends.empty())
        return 0;
    std::sort(bends.begin(), bends.end());
    return bends[static_cast<std::size_t>(std::ceil(0.9 * static_cast<double>(bends.size()))) - 1];
}

/// The readings that stand next to one: round its station, and at the same clock before and after.
std::vector<double> neighbours(const std::vector<Round>& all, At at) {
    const Round& own = all[at.station];
    std::vector<double> found{own.mm[own.before(at.reading)], own.mm[own.after(at.reading)]};
    for (const std::size_t beside : {at.station - 1, at.station + 1})
        if (beside < all.size() && all[beside].mm.size() == own.mm.size())
            found.push_back(all[beside].mm[at.reading]);
    return found;
}

std::string shown_reading(const Round& round, double radius_mm, UnitSystem units) {
    return show(millimetres(round.of_diameters ? 2 * radius_mm : radius_mm), units);
}

void judge_reading(DoubtList& doubts, const std::vector<Round>& all, At at) {
    const Round& round = all[at.station];
    const double reading = round.mm[at.reading];
    const std::vector<double> others = neighbours(all, at);
    const bool is_alone =
        !ranges::any_of(others, [&](double other) { return std::abs(reading - other) <= stands_alone_mm; });
    if (!is_alone ||
        round.bend(at.reading) <= std::max(least_bend_mm, times_the_others * usual_bend(all, at)))
        return;
    const auto [low, high] = std::minmax_element(others.begin(), others.end());
    doubts.add(element_path(round.field, at.reading), shown_reading(round, reading, doubts.units),
               fmt::format("{} to {} by the readings next to it", shown_reading(round, *low, doubts.units),
                           shown_reading(round, *high, doubts.units)));
}

void judge_inside(DoubtList& doubts, const Round& round, double finish_mm) {
    const double inside = round.of_diameters ? diameter_inside_mm : radius_inside_mm;
    for (std::size_t i = 0; i < round.mm.size(); ++i)
        if (round.mm[i] < finish_mm - inside)
            doubts.add(
                element_path(round.field, i), shown_reading(round, round.mm[i], doubts.units),
                fmt::format("{} or more, for the finish", shown_reading(round, finish_mm, doubts.units)));
}

void judge_cover(DoubtList& doubts, const WornBore& bore) {
    const auto& stations = bore.worn.stations;
    if (stations.empty())
        return;
    if (stations.size() == 1) {
        if (bore.length > diameters_for_one_station * bore.finish_diameter)
            doubts.add("worn.stations", "one station",
                       fmt::format("two or more in a bore {} long", show(bore.length, doubts.units)));
        return;
    }
    const Length first = stations.front().depth;
    const Length last = stations.back().depth;
    if (last < covered_to * bore.length)
        doubts.add(element_path("worn.stations", stations.size() - 1) + ".depth", show(last, doubts.units),
                   fmt::format("a last station past {}", show(covered_to * bore.length, doubts.units)),
                   10.0 * last <= bore.length ? show(10.0 * last, doubts.units) : "");
    if (first > covered_from * bore.length)
        doubts.add("worn.stations[0].depth", show(first, doubts.units),
                   fmt::format("a first station before {}", show(covered_from * bore.length, doubts.units)));
}

} // namespace

void reading_doubts(DoubtList& doubts, const WornBore& bore) {
    const std::vector<Round> all = rounds_of(bore.worn);
    std::size_t readings = 0;
    for (const Round& round : all) {
        readings += round.mm.size();
        judge_inside(doubts, round, mm(bore.finish_diameter) / 2);
    }
    if (readings >= enough_in_bore)
        for (std::size_t s = 0; s < all.size(); ++s)
            for (std::size_t i = 0; all[s].mm.size() >= enough_in_station && i < all[s].mm.size(); ++i)
                judge_reading(doubts, all, {s, i});
    judge_cover(doubts, bore);
}

} // namespace ringfill
