#include <ringfill/heat/thermal_history.hpp>

#include <array>
#include <cmath>

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/roots.hpp>
#include <boost/numeric/odeint.hpp>

#include <ringfill/heat/boss.hpp>

namespace ringfill {
namespace {

namespace odeint = boost::numeric::odeint;

/// Temperature [K] and heat lost [J].
using State = std::array<double, 2>;
using Stepper = odeint::runge_kutta_dopri5<State>;

constexpr double absolute_tolerance = 1e-6; // K, J
constexpr double relative_tolerance = 1e-9;
constexpr double first_step_s = 1;
constexpr double longest_s = 10 * 86'400;

/// The heat balance as odeint asks for it.
struct Balance {
    const ThermalLump& lump;
    double power;
    std::int64_t& evaluations;

    void operator()(const State& x, State& dxdt, double /*t*/) const {
        ++evaluations;
        const Temperature at = in_si<Temperature>(x[0]);
        const double loss = heat_loss(lump, at).value();
        dxdt[0] = (power - loss) / (lump.mass.value() * lump.metal.specific_heat(at).value());
        dxdt[1] = loss;
    }
};

auto stepper_from(const ThermalState& state) {
    auto stepper = odeint::make_dense_output(absolute_tolerance, relative_tolerance, Stepper());
    stepper.initialize(State{state.temperature.value(), state.lost.value()}, 0.0, first_step_s);
    return stepper;
}

ThermalState state_of(const State& x, const ThermalState& from, double seconds, std::int64_t evaluations) {
    return {in_si<Temperature>(x[0]), in_si<Energy>(x[1]), from.time + in_si<Time>(seconds), evaluations};
}

/// Where the natural rate falls to the allowed one, between two temperatures of which it lies above it and
/// below it.
Temperature where_free(const ThermalLump& lump, Temperature from, Temperature to, double rate_K_s) {
    const auto too_fast = [&](double kelvin) {
        const Temperature at = in_si<Temperature>(kelvin);
        return heat_loss(lump, at).value() / (lump.mass.value() * lump.metal.specific_heat(at).value()) -
               rate_K_s;
    };
    if (too_fast(from.value()) <= 0)
        return from;
    if (too_fast(to.value()) >= 0)
        return to;
    std::uintmax_t rounds = 100;
    const auto [low, high] = boost::math::tools::toms748_solve(
        too_fast, to.value(), from.value(), boost::math::tools::eps_tolerance<double>(45), rounds);
    return in_si<Temperature>((low + high) / 2);
}

/// Losses over the temperature, ∫ loss dT [W K], in closed form.
double loss_integral(const ThermalLump& lump, Temperature from, Temperature to) {
    const double a = lump.ambient.value();
    const auto primitive = [&](double t) {
        return lump.conductance.value() * (t * t / 2 - a * t) +
               lump.emitting.value() * stefan_boltzmann * (std::pow(t, 5) / 5 - std::pow(a, 4) * t);
    };
    return primitive(to.value()) - primitive(from.value());
}

} // namespace

Power heat_loss(const ThermalLump& lump, Temperature at) {
    const double t = at.value();
    const double a = lump.ambient.value();
    return in_si<Power>(lump.conductance.value() * (t - a) +
                        lump.emitting.value() * stefan_boltzmann * (t * t * t * t - a * a * a * a));
}

Energy heat_content(const ThermalLump& lump, Temperature from, Temperature to) {
    const auto c = [&](double t) { return lump.metal.specific_heat(in_si<Temperature>(t)).value(); };
    const double integral =
        boost::math::quadrature::gauss_kronrod<double, 31>::integrate(c, from.value(), to.value());
    return in_si<Energy>(lump.mass.value() * integral);
}

ThermalState after(const ThermalLump& lump, ThermalState state, Power power, Time time) {
    const double end = time.value();
    if (!(end > 0))
        return state;
    auto stepper = stepper_from(state);
    std::int64_t evaluations = state.evaluations;
    const Balance balance{lump, power.value(), evaluations};
    while (stepper.current_time() < end)
        stepper.do_step(balance);
    State x{};
    stepper.calc_state(end, x);
    return state_of(x, state, end, evaluations);
}

std::vector<ThermalState> on_the_way(const ThermalLump& lump, const ThermalState& state, Power power,
                                     Time time, int parts) {
    std::vector<ThermalState> states;
    if (!(time > Time()))
        return states;
    auto stepper = stepper_from(state);
    std::int64_t evaluations = state.evaluations;
    const Balance balance{lump, power.value(), evaluations};
    for (int i = 1; i < parts; ++i) {
        const double end = (time * (static_cast<double>(i) / parts)).value();
        while (stepper.current_time() < end)
            stepper.do_step(balance);
        State x{};
        stepper.calc_state(end, x);
        states.push_back(state_of(x, state, end, evaluations));
    }
    return states;
}

std::optional<ThermalState> when_at(const ThermalLump& lump, ThermalState state, Power power,
                                    Temperature target) {
    const double goal = target.value();
    const double way = goal - state.temperature.value();
    if (way == 0)
        return state;
    // The balance has one sign on the whole way or stops at a temperature before the goal: it is seen at the
    // goal.
    const double at_goal = power.value() - heat_loss(lump, target).value();
    if (!(way > 0 ? at_goal > 0 : at_goal < 0))
        return std::nullopt;
    auto stepper = stepper_from(state);
    std::int64_t evaluations = state.evaluations;
    const Balance balance{lump, power.value(), evaluations};
    const auto past = [&](double temperature) { return way > 0 ? temperature >= goal : temperature <= goal; };
    while (!past(stepper.current_state()[0])) {
        if (stepper.current_time() > longest_s)
            return std::nullopt;
        stepper.do_step(balance);
    }
    State x{};
    const auto beyond = [&](double seconds) {
        stepper.calc_state(seconds, x);
        return x[0] - goal;
    };
    double high = stepper.current_time();
    // The curve through a step meets its end but for a rounding: by that much a goal may lie beyond it.
    if (beyond(high) * way > 0) {
        std::uintmax_t rounds = 100;
        high = boost::math::tools::toms748_solve(beyond, stepper.previous_time(), high,
                                                 boost::math::tools::eps_tolerance<double>(45), rounds)
                   .second;
    }
    stepper.calc_state(high, x);
    return state_of(x, state, high, evaluations);
}

std::optional<SlowCooling> cool_slowly(const ThermalLump& lump, Temperature from, Temperature to,
                                       double rate_K_s) {
    if (from <= to)
        return SlowCooling{Time(), from, Time(), Energy()};
    const Temperature free = where_free(lump, from, to, rate_K_s);
    const auto there = when_at(lump, {free, Energy(), Time()}, Power(), to);
    if (!there)
        return std::nullopt;
    SlowCooling cooling;
    cooling.free_from = free;
    cooling.held = in_si<Time>((from.value() - free.value()) / rate_K_s);
    cooling.time = cooling.held + there->time;
    cooling.heat = in_si<Energy>(loss_integral(lump, free, from) / rate_K_s) - heat_content(lump, free, from);
    return cooling;
}

} // namespace ringfill
