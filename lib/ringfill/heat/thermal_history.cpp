#include <ringfill/heat/thermal_history.hpp>

#include <array>
#include <cmath>
#include <functional>

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

/// The way of a lump under constant power, integrated step by step as far as it is asked for.
class Way {
  public:
    Way(const ThermalLump& lump, const ThermalState& from, Power power)
        : lump_(lump), power_(power.value()), from_(from), evaluations_(from.evaluations),
          stepper_(odeint::make_dense_output(absolute_tolerance, relative_tolerance, Stepper())) {
        stepper_.initialize(State{from.temperature.value(), from.lost.value()}, 0.0, first_step_s);
    }

    /// The heat balance as odeint asks for it.
    void operator()(const State& x, State& dxdt, double /*t*/) {
        ++evaluations_;
        const Temperature at = in_si<Temperature>(x[0]);
        const double loss = heat_loss(lump_, at).value();
        dxdt[0] = (power_ - loss) / (lump_.mass.value() * lump_.metal.specific_heat(at).value());
        dxdt[1] = loss;
    }

    void step() { stepper_.do_step(std::ref(*this)); }
    double time() const { return stepper_.current_time(); }
    double time_before_step() const { return stepper_.previous_time(); }
    double temperature() const { return stepper_.current_state()[0]; }

    /// The state after so many seconds, within the steps that were taken.
    ThermalState within(double seconds) {
        State x{};
        stepper_.calc_state(seconds, x);
        return {in_si<Temperature>(x[0]), in_si<Energy>(x[1]), from_.time + in_si<Time>(seconds),
                evaluations_};
    }

    ThermalState at(double seconds) {
        while (time() < seconds)
            step();
        return within(seconds);
    }

  private:
    const ThermalLump& lump_;
    double power_;
    ThermalState from_;
    std::int64_t evaluations_;
    decltype(odeint::make_dense_output(0.0, 0.0, Stepper())) stepper_;
};

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
    return time > Time() ? Way(lump, state, power).at(time.value()) : state;
}

std::vector<ThermalState> on_the_way(const ThermalLump& lump, const ThermalState& state, Power power,
                                     Time time, int parts) {
    std::vector<ThermalState> states;
    Way way(lump, state, power);
    for (int i = 1; time > Time() && i < parts; ++i)
        states.push_back(way.at((time * (static_cast<double>(i) / parts)).value()));
    return states;
}

std::optional<ThermalState> when_at(const ThermalLump& lump, ThermalState state, Power power,
                                    Temperature target) {
    const double goal = target.value();
    const double rise = goal - state.temperature.value();
    if (rise == 0)
        return state;
    // The balance has one sign on the whole way or stops at a temperature before the goal: it is seen at the
    // goal.
    const double at_goal = power.value() - heat_loss(lump, target).value();
    if (!(rise > 0 ? at_goal > 0 : at_goal < 0))
        return std::nullopt;
    Way way(lump, state, power);
    while (!(rise > 0 ? way.temperature() >= goal : way.temperature() <= goal)) {
        if (way.time() > longest_s)
            return std::nullopt;
        way.step();
    }
    const auto beyond = [&](double seconds) { return way.within(seconds).temperature.value() - goal; };
    double seconds = way.time();
    // The curve through a step meets its end but for a rounding: by that much a goal may lie beyond it.
    if (beyond(seconds) * rise > 0) {
        std::uintmax_t rounds = 100;
        seconds = boost::math::tools::toms748_solve(beyond, way.time_before_step(), seconds,
                                                    boost::math::tools::eps_tolerance<double>(45), rounds)
                      .second;
    }
    return way.within(seconds);
}

std::optional<SlowCooling> cool_slowly(const ThermalLump& lump, Temperature from, Temperature to,
                                       double rate_K_s) {
    if (from <= to)
        return SlowCooling{Time(), from, Time(), Energy()};
    const Temperature free = where_free(lump, from, to, rate_K_s);
    const auto there = when_at(lump, {free, Energy(), Time()}, Power(), to);
    if (!there)
        return std::nullopt;
    const Time held = in_si<Time>((from.value() - free.value()) / rate_K_s);
    return SlowCooling{held + there->time, free, held,
                       in_si<Energy>(loss_integral(lump, free, from) / rate_K_s) -
                           heat_content(lump, free, from)};
}

} // namespace ringfill
