#include <ringfill/weld/feed_table.hpp>

#include <fmt/format.h>

#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

/// y at x between the points of a rising table, or nothing outside it.
template <class X, class Y>
std::optional<Y> between_points(X x, const std::vector<FeedPoint>& points, X FeedPoint::*xs,
                                Y FeedPoint::*ys) {
    for (std::size_t i = 1; i < points.size(); ++i)
        if (points[i - 1].*xs <= x && x <= points[i].*xs) {
            const double share = (x - points[i - 1].*xs) / (points[i].*xs - points[i - 1].*xs);
            return points[i - 1].*ys + share * (points[i].*ys - points[i - 1].*ys);
        }
    return std::nullopt;
}

} // namespace

std::optional<Speed> feed_in_table(Current current, const WireSize& size, const std::string& path,
                                   std::vector<Fault>& faults) {
    auto feed = between_points(current, size.feed_table, &FeedPoint::current, &FeedPoint::feed);
    if (!feed)
        faults.push_back(fault_at_path(path + ".current", show(current),
                                       fmt::format("is outside the filler's table, {} to {}",
                                                   show(size.feed_table.front().current),
                                                   show(size.feed_table.back().current)),
                                       "choose a current in the table or write \"wire_feed\" too"));
    return feed;
}

std::optional<Current> current_in_table(Speed feed, const WireSize& size, const std::string& path,
                                        std::vector<Fault>& faults) {
    auto current = between_points(feed, size.feed_table, &FeedPoint::feed, &FeedPoint::current);
    if (!current)
        faults.push_back(
            fault_at_path(path + ".wire_feed", show_feed(feed, UnitSystem::metric),
                          fmt::format("is outside the filler's table, {} to {}",
                                      show_feed(size.feed_table.front().feed, UnitSystem::metric),
                                      show_feed(size.feed_table.back().feed, UnitSystem::metric)),
                          "choose a feed in the table or write \"current\" too"));
    return current;
}

} // namespace ringfill
