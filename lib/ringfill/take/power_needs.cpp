#include <algorithm>
#include <cmath>
#include <string_view>

#include <range/v3/algorithm/max.hpp>
#include <range/v3/algorithm/max_element.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/take/group.hpp>
#include <ringfill/take/needs.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double kilo = 1e3;
constexpr double megajoule = 1e6;
constexpr double kWh = 3.6; // MJ

/// One procedure's demand in words; with the duty it asks for.
std::string demand(const PowerUse& use) {
    return fmt::format("{} for {}, with up to {} of arc in 10 min: {:.0f} % duty", show(use.current),
                       use.procedure, show(std::min(use.busiest_arc, in_si<Time>(duty_period))),
                       duty_pct(use.busiest_arc));
}

/// One set that serves every procedure: the highest current at the highest duty.
Need welding_set(const std::vector<PowerUse>& uses) {
    const double amperes =
        std::ceil(ranges::max(each(uses, [](const PowerUse& use) { return use.current.value() - 1e-9; })));
    const double duty =
        ranges::max(each(uses, [](const PowerUse& use) { return duty_pct(use.busiest_arc); }));
    return by_the_piece(need_of(
        kinds::welding_set, {}, SetRating{amperes, duty}, {{"n", std::vector<double>(uses.size(), 1)}},
        {1, "min(sum(n), 1)", "own"}, spares(0),
        fmt::format("rated at least so in periods of 10 min: {}", listed(uses, "; ", demand)), "IEC60974-1"));
}

/// What stands there must give the line whole, in whole steps of a size; they count as one pack.
void supply_whole(Need& line, double step, std::string_view step_name, std::string_view what) {
    const double steps = std::ceil((line.need + line.reserve) / step - 1e-9);
    line.supplied = step * steps;
    line.cover = {{fmt::format("{:.0f} {} {}", steps, step_name, what), 1}};
    const std::string unit(line.kind.unit);
    work_supply(line, "g*ceil((need + reserve)/g - 1e-9)",
                {{"need", line.need, unit}, {"reserve", line.reserve, unit}, {"g", step, unit}});
}

Need peak_power(const std::vector<PowerUse>& uses, const MainsUse& mains) {
    const PowerUse& most =
        *ranges::max_element(uses, {}, [](const PowerUse& use) { return use.voltage * use.current; });
    const double arc = most.voltage.value() * most.current.value() / kilo;
    const double heater = mains.electric_heater.value_or(Power()).value() / kilo;
    const double bar = mains.bar_drive.value() / kilo;
    Need line = need_of(
        kinds::power_supply, {}, {},
        {{"U", each(uses, [](const PowerUse& use) { return use.voltage.value(); }), "V"},
         {"I", each(uses, [](const PowerUse& use) { return use.current.value(); }), "A"},
         {"e", set_efficiency},
         {"P", heater, "kW"},
         {"B", bar, "kW"}},
        {std::max(arc / set_efficiency + heater, bar), "max(highest(U*I)/(1000*e) + P, B)"}, spares(0),
        fmt::format("{:.3g} V and {} in the arc of {} are {:.3g} kW, of a set that passes on {:.3g} %",
                    most.voltage.value(), show(most.current), most.procedure, arc, 100 * set_efficiency));
    if (mains.electric_heater)
        line.why += fmt::format("; and {:.3g} kW of heater, as if together", heater);
    if (bar > 0)
        line.why += fmt::format("; the boring bar at another time {:.3g} kW", bar);
    supply_whole(line, 1, "kW", "supply");
    return line;
}

Need generator_fuel(const MainsUse& mains, double reserve, UnitSystem units) {
    const bool inch = units == UnitSystem::inch;
    const double litres_of_step = inch ? factor::gallon_us / factor::litre : 1;
    const double arc = mains.arc.value() / megajoule;
    const double heating = mains.heating.value() / megajoule;
    const double per_litre = generator_J_L / megajoule;
    const double boring = mains.boring.value() / megajoule;
    const double drawn = arc / set_efficiency + heating + boring;
    const double need = drawn / per_litre;
    Need line = need_of(kinds::generator_fuel, {}, {},
                        {{"W_arc", arc, "MJ"},
                         {"e", set_efficiency},
                         {"W_heating", heating, "MJ"},
                         {"W_boring", boring, "MJ"},
                         {"g", per_litre, "MJ/L"},
                         {"share", reserve}},
                        {need, "(W_arc/e + W_heating + W_boring)/g"}, {reserve * need, "share*need"},
                        fmt::format("only where there are no mains: {:.3g} kWh for arc, heater and boring "
                                    "bar at {:.3g} kWh to a {}, idling not counted; on top {:.3g} %",
                                    drawn / kWh, litres_of_step * per_litre / kWh, inch ? "gallon" : "litre",
                                    100 * reserve));
    supply_whole(line, litres_of_step, inch ? "gal" : "L", "in cans");
    return line;
}

} // namespace

double duty_pct(Time busiest_arc) {
    const double twentieths = std::ceil(20 * busiest_arc.value() / duty_period - 1e-9);
    return 5 * std::clamp(twentieths, 1.0, 20.0);
}

std::vector<Need> power_needs(const std::vector<PowerUse>& uses, const MainsUse& mains, double reserve,
                              UnitSystem units) {
    if (uses.empty())
        return {};
    std::vector<Need> lines{welding_set(uses), peak_power(uses, mains)};
    if (mains.arc + mains.heating + mains.boring > Energy())
        lines.push_back(generator_fuel(mains, reserve, units));
    return lines;
}

} // namespace ringfill
