#pragma once

#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/material/filler.hpp>
#include <ringfill/table/gases.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Wire feed that a current melts, f = a I + b l I² [m/s].
Speed wire_feed_of(Current current, Length stick_out, const MeltingCurve& curve);

/// Current that melts a wire feed, the positive root of the same [A]; for b l = 0 it is f/a.
Current current_of(Speed wire_feed, Length stick_out, const MeltingCurve& curve);

/// The row of a filler's table for a wire diameter: its own, or else the nearest. A filler has at least one.
const WireSize& nearest_size(const Filler& filler, Length diameter);

/// Whether two diameters are the same wire to the tables: 0.02 mm apart at most, as 0.040 in and 1.0 mm are.
bool is_same_wire(Length a, Length b);

/// A row for another diameter; the same wire stays as it is. Otherwise: mass per metre with the section,
/// melting coefficients a with 1/section and b with 1/section² (the same energy per volume of wire). The
/// window stays as it is, and so does the rate of an electrode, whose mass goes with the section. Worked out
/// here, no source.
WireSize scaled_to(WireSize size, Length diameter);

/// The point of a rising table that a figure lies behind, or on, with the next one not under it; outside the
/// table null, after noting a fault of a field that prints the range.
template <class Point, class X>
const Point* point_before(X x, const std::vector<Point>& points, Sourced<X> Point::*figure, std::string field,
                          std::string remedy, std::vector<Fault>& faults) {
    for (std::size_t i = 1; i < points.size(); ++i)
        if ((points[i - 1].*figure).value <= x && x <= (points[i].*figure).value)
            return &points[i - 1];
    const auto shown = [](X one) {
        if constexpr (std::is_same_v<X, Speed>)
            return show_feed(one, UnitSystem::metric);
        else
            return show(one);
    };
    faults.push_back(fault_at_path(std::move(field), shown(x),
                                   fmt::format("is outside the filler's table, {} to {}",
                                               shown((points.front().*figure).value),
                                               shown((points.back().*figure).value)),
                                   std::move(remedy)));
    return nullptr;
}

/// Wire feed at a current by linear interpolation in the wire's table [m/s]; never extrapolated: outside it
/// nothing comes back and a fault that prints the range is noted.
std::optional<Speed> feed_in_table(Current current, const WireSize& size, const std::string& path,
                                   std::vector<Fault>& faults);

/// Current at a wire feed, likewise [A].
std::optional<Current> current_in_table(Speed feed, const WireSize& size, const std::string& path,
                                        std::vector<Fault>& faults);

/// The currents from which a wire sprays in a gas: it may from the first, it does from the second [A].
struct SprayFrom {
    Current may;
    Current does;
    std::string source;
};

/// The printed least current of a diameter, times what the gas asks for. Nothing: not known for that wire, or
/// no wire sprays in that gas. @param gas may be null: the printed current.
std::optional<SprayFrom> spray_from(const WireSize& size, const Gas* gas);

/// Whether the transfer that a job names is the one there is: not spray in a gas that does not let a wire
/// spray, nor at a current under the one that surely sprays. A current that is not known counts as the job's
/// word.
bool transfer_holds(const Procedure& procedure, const WireSize& size, const Gas* gas,
                    const std::optional<Current>& current);

} // namespace ringfill
