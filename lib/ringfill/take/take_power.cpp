#include <ringfill/take/take_power.hpp>

#include <algorithm>
#include <cmath>
#include <string_view>

#include <fmt/ranges.h>

#include <range/v3/algorithm/max.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

constexpr double kilo = 1e3;
constexpr double mega = 1e6;
constexpr double kWh = 3.6; // MJ

/// One procedure's demand in words; with the duty it asks for.
std::string demand(const PowerUse& use) {
    return fmt::format("{} for {}, with up to {} of arc in 10 min: {:.0f} % duty", show(use.current),
                       use.procedure, show(std::min(use.busiest_arc, in_si<Time>(duty_period))),
                       duty_pct(use.busiest_arc));
}

/// One set that serves every procedure: the highest current at the highest duty.
Need welding_set(const std::vector<PowerUse>& uses) {
    using ranges::views::transform;
    const double amperes = std::ceil(
        ranges::max(uses | transform([](const PowerUse& use) { return use.current.value() - 1e-9; })));
    const double duty =
        ranges::max(uses | transform([](const PowerUse& use) { return duty_pct(use.busiest_arc); }));
    const std::string demands = fmt::format("{}", fmt::join(uses | transform(demand), "; "));
    Need line;
    line.item = fmt::format("welding set {:.0f} A at {:.0f} % duty", amperes, duty);
    line.need = 1;
    line.unit = "pieces";
    line.supplied = 1;
    line.why = fmt::format("rated at least so in periods of 10 min: {}", demands);
    line.source = "IEC60974-1";
    line.charge = Charge::tool;
    const std::vector<double> each(uses.size(), 1);
    line.working = {{"need", "min(sum(n), 1)", {{"n", each}}, 1, "pieces", "own"},
                    {"reserve", "0*need", {{"need", 1, "pieces"}}, 0, "pieces", "practice"}};
    work_supply(line, {1}, {1});
    return line;
}

/// What stands there must give the line whole, in whole steps of a size; it is told as one pack.
void supply_whole(Need& line, double step, std::string_view step_name, std::string_view what) {
    const double steps = std::ceil((line.need + line.reserve) / step - 1e-9);
    line.supplied = step * steps;
    line.spare = line.supplied - line.need - line.reserve;
    line.cover = {{fmt::format("{:.0f} {} {}", steps, step_name, what), 1}};
    line.working.push_back(
        {"supplied",
         "g*ceil((need + reserve)/g - 1e-9)",
         {{"need", line.need, line.unit}, {"reserve", line.reserve, line.unit}, {"g", step, line.unit}},
         line.supplied,
         line.unit,
         "own"});
    line.working.push_back({"spare",
                            "supplied - need - reserve",
                            {{"supplied", line.supplied, line.unit},
                             {"need", line.need, line.unit},
                             {"reserve", line.reserve, line.unit}},
                            line.spare,
                            line.unit,
                            "own"});
}

Need peak_power(const std::vector<PowerUse>& uses, const MainsUse& mains) {
    const PowerUse* most = &uses.front();
    std::vector<double> volts;
    std::vector<double> amperes;
    for (const PowerUse& use : uses) {
        volts.push_back(use.voltage.value());
        amperes.push_back(use.current.value());
        if (use.voltage * use.current > most->voltage * most->current)
            most = &use;
    }
    const double arc = most->voltage.value() * most->current.value() / kilo;
    const double heater = mains.electric_heater.value_or(Power()).value() / kilo;
    Need line;
    line.item = "power supply";
    const double bar = mains.bar_drive.value() / kilo;
    line.need = std::max(arc / set_efficiency + heater, bar);
    line.unit = "kW";
    line.why =
        fmt::format("{:.3g} V and {} in the arc of {} are {:.3g} kW, of a set that passes on {:.3g} %",
                    most->voltage.value(), show(most->current), most->procedure, arc, 100 * set_efficiency);
    if (mains.electric_heater)
        line.why += fmt::format("; and {:.3g} kW of heater, as if together", heater);
    line.charge = Charge::by_hours;
    if (bar > 0)
        line.why += fmt::format("; the boring bar at another time {:.3g} kW", bar);
    line.source = "practice";
    line.working = {{"need",
                     "max(highest(U*I)/(1000*e) + P, B)",
                     {{"U", volts, "V"},
                      {"I", amperes, "A"},
                      {"e", set_efficiency},
                      {"P", heater, "kW"},
                      {"B", bar, "kW"}},
                     line.need,
                     "kW",
                     "practice"},
                    {"reserve", "0*need", {{"need", line.need, "kW"}}, 0, "kW", "practice"}};
    supply_whole(line, 1, "kW", "supply");
    return line;
}

Need generator_fuel(const MainsUse& mains, double reserve, UnitSystem units) {
    const bool inch = units == UnitSystem::inch;
    const double litres_of_step = inch ? factor::gallon_us / factor::litre : 1;
    const double arc = mains.arc.value() / mega;
    const double heating = mains.heating.value() / mega;
    const double per_litre = generator_J_L / mega;
    const double boring = mains.boring.value() / mega;
    const double drawn = arc / set_efficiency + heating + boring;
    Need line;
    line.item = "generator fuel";
    line.charge = Charge::by_hours;
    line.need = drawn / per_litre;
    line.reserve = reserve * line.need;
    line.unit = "L";
    line.why =
        fmt::format("only where there are no mains: {:.3g} kWh for arc, heater and boring bar at {:.3g} kWh "
                    "to a {}, idling not counted; on top {:.3g} %",
                    drawn / kWh, litres_of_step * per_litre / kWh, inch ? "gallon" : "litre", 100 * reserve);
    line.source = "practice";
    line.working = {{"need",
                     "(W_arc/e + W_heating + W_boring)/g",
                     {{"W_arc", arc, "MJ"},
                      {"e", set_efficiency},
                      {"W_heating", heating, "MJ"},
                      {"W_boring", boring, "MJ"},
                      {"g", per_litre, "MJ/L"}},
                     line.need,
                     "L",
                     "practice"},
                    {"reserve",
                     "share*need",
                     {{"share", reserve}, {"need", line.need, "L"}},
                     line.reserve,
                     "L",
                     "practice"}};
    supply_whole(line, litres_of_step, inch ? "gal" : "L", "in cans");
    return line;
}

} // namespace

Energy drawn(const MainsUse& mains) {
    return mains.arc / set_efficiency + mains.heating + mains.boring;
}

double duty_pct(Time busiest_arc) {
    const double twentieths = std::ceil(20 * busiest_arc.value() / duty_period - 1e-9);
    return 5 * std::clamp(twentieths, 1.0, 20.0);
}

std::vector<Need> take_power(const std::vector<PowerUse>& uses, const MainsUse& mains, double reserve,
                             UnitSystem units) {
    if (uses.empty())
        return {};
    std::vector<Need> lines{welding_set(uses), peak_power(uses, mains)};
    if (mains.arc + mains.heating + mains.boring > Energy())
        lines.push_back(generator_fuel(mains, reserve, units));
    return lines;
}

} // namespace ringfill
