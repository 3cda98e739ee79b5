#include <ringfill/weld/wire.hpp>

#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/min_element.hpp>

#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

/// a and b l of a melting curve in SI: the coefficients are tabulated for millimetres.
std::pair<double, double> terms_of(const MeltingCurve& curve, Length stick_out) {
    return {curve.a.value * 1e-3, curve.b.value * stick_out.value()};
}

/// y at x between two neighbours of a table.
template <class X, class Y>
Y between(X x, const FeedPoint* low, Sourced<X> FeedPoint::*xs, Sourced<Y> FeedPoint::*ys) {
    const auto& [low_x, high_x] = std::pair((low->*xs).value, (low[1].*xs).value);
    const auto& [low_y, high_y] = std::pair((low->*ys).value, (low[1].*ys).value);
    return low_y + (x - low_x) / (high_x - low_x) * (high_y - low_y);
}

} // namespace

Speed wire_feed_of(Current current, Length stick_out, const MeltingCurve& curve) {
    const auto [a, bl] = terms_of(curve, stick_out);
    const double amps = current.value();
    return in_si<Speed>(a * amps + bl * amps * amps);
}

Current current_of(Speed wire_feed, Length stick_out, const MeltingCurve& curve) {
    const auto [a, bl] = terms_of(curve, stick_out);
    const double f = wire_feed.value();
    // The root in the form that does not cancel when b l is small.
    return in_si<Current>(2 * f / (a + std::sqrt(a * a + 4 * bl * f)));
}

const WireSize& nearest_size(const Filler& filler, Length diameter) {
    return *ranges::min_element(filler.sizes, {}, [&](const WireSize& size) {
        return std::fabs((size.diameter - diameter).value());
    });
}

bool is_same_wire(Length a, Length b) {
    return std::fabs((a - b).value()) <= 0.02e-3;
}

WireSize scaled_to(WireSize size, Length diameter) {
    if (is_same_wire(size.diameter, diameter))
        return size;
    const double sections = (diameter * diameter / (size.diameter * size.diameter)).value();
    if (size.linear_mass)
        size.linear_mass->value *= sections;
    if (size.melting) {
        size.melting->a.value /= sections;
        size.melting->b.value /= sections * sections;
    }
    if (size.mass)
        size.mass->value *= sections;
    size.diameter = diameter;
    return size;
}

std::optional<Speed> feed_in_table(Current current, const WireSize& size, const std::string& path,
                                   std::vector<Fault>& faults) {
    const FeedPoint* low = point_before(current, size.feed_table, &FeedPoint::current, path + ".current",
                                        "choose a current in the table or write \"wire_feed\" too", faults);
    return low ? std::optional(between(current, low, &FeedPoint::current, &FeedPoint::feed)) : std::nullopt;
}

std::optional<Current> current_in_table(Speed feed, const WireSize& size, const std::string& path,
                                        std::vector<Fault>& faults) {
    const FeedPoint* low = point_before(feed, size.feed_table, &FeedPoint::feed, path + ".wire_feed",
                                        "choose a feed in the table or write \"current\" too", faults);
    return low ? std::optional(between(feed, low, &FeedPoint::feed, &FeedPoint::current)) : std::nullopt;
}

std::optional<SprayFrom> spray_from(const WireSize& size, const Gas* gas) {
    if (gas && !gas->sprays)
        return std::nullopt;
    const auto spray = ranges::find(size.windows, "spray", &std::pair<std::string, Window>::first);
    if (spray == size.windows.end() || !spray->second.spray_from)
        return std::nullopt;
    const auto& [current, source] = *spray->second.spray_from;
    if (!gas || !gas->spray_times)
        return SprayFrom{current, current, source};
    const auto& [low, high] = gas->spray_times->value;
    return SprayFrom{low * current, high * current, source + ", " + gas->spray_times->source};
}

bool transfer_holds(const Procedure& procedure, const WireSize& size, const Gas* gas,
                    const std::optional<Current>& current) {
    if (procedure.transfer != "spray")
        return true;
    if (gas && !gas->sprays)
        return false;
    const auto from = spray_from(size, gas);
    return !from || !current || *current >= from->does;
}

} // namespace ringfill
