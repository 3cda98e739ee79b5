#include <ringfill/quote/quote_travel.hpp>

#include <fmt/format.h>

#include <ringfill/quote/quote_labour.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

QuoteLine missing_line(std::string item, std::string missing) {
    QuoteLine line;
    line.item = std::move(item);
    line.missing = std::move(missing);
    return line;
}

std::string so_many_trips(int trips) {
    return trips == 1 ? "1 trip" : fmt::format("{} trips", trips);
}

} // namespace

std::optional<int> trips_of(const QuoteFacts& facts) {
    if (facts.prices.travel && facts.prices.travel->trips)
        return facts.prices.travel->trips;
    if (!facts.hours)
        return std::nullopt;
    return facts.hours->days + (facts.hours->test ? 1 : 0);
}

std::vector<QuoteLine> quote_travel(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const Prices& prices = facts.prices;
    if (!prices.travel || (!prices.travel->distance && !prices.travel->time))
        return {missing_line("travel", "distance: write prices.travel.distance, 0 if there is none")};
    const auto trips = trips_of(facts);
    if (!trips)
        return {missing_line("travel", "number of trips: write prices.travel.trips")};
    std::vector<QuoteLine> lines;
    const auto add = [&](const std::string& what, double one, const char* unit, const PriceAt& at) {
        QuoteLine line = line_of(fmt::format("{}, {}", what, so_many_trips(*trips)), *trips * one, unit);
        put_price(line, at, facts.currency, faults);
        lines.push_back(std::move(line));
    };
    const Travel& travel = *prices.travel;
    if (travel.distance)
        add("driving", as_double(*travel.distance), travel.in_miles ? "mi" : "km",
            {"prices.drive", prices.drive});
    if (travel.time)
        add("time on the road", travel.time->value() / factor::hour, "h", hour_price(prices, "travel"));
    return lines;
}

} // namespace ringfill
