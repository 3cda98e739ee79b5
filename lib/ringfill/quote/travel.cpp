#include <fmt/format.h>

#include <ringfill/quote/quote_sections.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr const char* no_distance = "distance: write prices.travel.distance, 0 if there is none";

bool has_way(const Travel& travel) {
    return travel.distance && travel.distance->digits > 0;
}

bool has_time(const Travel& travel) {
    return travel.time && *travel.time > Time();
}

/// Whether there is a way and nothing is said of how long it takes.
bool lacks_time(const Travel& travel) {
    return has_way(travel) && !travel.time;
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
        return {line_of("travel", {}, "", no_distance)};
    const Travel& travel = *prices.travel;
    const PriceAt hour = hour_price(prices, "travel");
    const auto trips = trips_of(facts);
    // No way and no time cost nothing: they need neither a price nor a number of trips.
    const bool by_way = travel.distance && (has_way(travel) || (prices.drive && trips));
    const bool by_time = travel.time && (has_time(travel) || (hour.price && trips));
    if (!trips && (has_way(travel) || has_time(travel)))
        return {line_of("travel", {}, "", "number of trips: write prices.travel.trips")};
    std::vector<QuoteLine> lines;
    const auto add = [&](const char* what, double one, const char* unit, const PriceAt& at) {
        const std::string item = fmt::format("{}, {} trip{}", what, *trips, *trips == 1 ? "" : "s");
        lines.push_back(priced(line_of(item, *trips * one, unit), at, facts.currency, faults));
    };
    if (by_way)
        add("driving", as_double(*travel.distance), travel.in_miles ? "mi" : "km",
            {"prices.drive", prices.drive});
    if (!travel.distance && prices.drive)
        lines.push_back(line_of("driving", {}, "", no_distance));
    if (by_time)
        add("time on the road", travel.time->value() / factor::hour, "h", hour);
    if (lacks_time(travel) && hour.path == "prices.labour.travel")
        lines.push_back(line_of("time on the road", {}, "",
                                "time: write prices.travel.time, \"0 min\" if there is none"));
    return lines;
}

std::vector<std::string> travel_notes(const Prices& prices) {
    std::vector<std::string> notes;
    if (!prices.travel)
        return notes;
    const Travel& travel = *prices.travel;
    if (!travel.distance && travel.time && !prices.drive)
        notes.emplace_back(
            "Driving is in no line: the job gives neither prices.travel.distance nor prices.drive.");
    if (lacks_time(travel) && hour_price(prices, "travel").path != "prices.labour.travel")
        notes.emplace_back("Time on the road is in no line: the job gives no prices.travel.time.");
    if (has_way(travel) || has_time(travel))
        notes.emplace_back("The second person's time on the road is in no line.");
    return notes;
}

} // namespace ringfill
