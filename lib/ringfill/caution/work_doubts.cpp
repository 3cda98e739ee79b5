#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/caution/doubt_rules.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double most_heater_share = 0.95;
constexpr double coldest_degC = -40;
constexpr double hottest_degC = 50;

std::string share_text(double share, UnitSystem) {
    return fmt::format("{:.3g}", share);
}
std::string depth_text(double metres, UnitSystem units) {
    return show_pitch(in_si<Length>(metres), units);
}
std::string cutting_text(double speed, UnitSystem units) {
    return show_cutting_speed(in_si<Speed>(speed), units);
}
std::string time_text(double seconds, UnitSystem) {
    return show(in_si<Time>(seconds));
}
std::string air_text(double kelvin, UnitSystem units) {
    return show(in_si<Temperature>(kelvin), units);
}

/// With a third of room round the range of its kind, and never all of what it gives off.
std::optional<Usual> usual_share(const Heater& heater, const Fuels& fuels) {
    const auto kind = ranges::find(fuels.heaters, heater.kind, &HeaterKind::name);
    auto usual = kind == fuels.heaters.end() ? std::nullopt : with_room(kind->range);
    if (usual)
        usual->high = std::min(usual->high, most_heater_share);
    return usual;
}

} // namespace

void work_doubts(DoubtList& doubts, const PlannedWork& work, const Shop& shop) {
    const Job& job = work.job;
    doubts.judge("site.ambient", si_number(job.site.ambient),
                 Usual{celsius(coldest_degC).value(), celsius(hottest_degC).value()}, air_text);
    if (job.heater)
        doubts.judge("heater.efficiency", job.heater->efficiency, usual_share(*job.heater, shop.fuels),
                     share_text);
    const BoringBar& bar = job.boring;
    doubts.judge("boring.rough_cut", si_number(bar.rough_cut), Usual{0, 0.004}, depth_text);
    doubts.judge("boring.feed", si_number(bar.feed), Usual{0.03e-3, 0.8e-3}, depth_text);
    doubts.judge("boring.cutting_speed", si_number(bar.cutting_speed),
                 Usual{12 / factor::minute, 250 / factor::minute}, cutting_text);
    doubts.judge("boring.edge_life", si_number(bar.edge_life), Usual{0, 4 * factor::hour}, time_text);
}

} // namespace ringfill
