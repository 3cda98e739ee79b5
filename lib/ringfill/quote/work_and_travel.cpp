#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/quote/quote_sections.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

struct PhaseRow {
    Phase phase;
    const char* field; ///< of prices.labour
    const char* words;
};

constexpr PhaseRow phases[] = {{Phase::set_up, "set_up", "set-up and checks"},
                               {Phase::heating, "heating", "preheat, reheats, hold"},
                               {Phase::welding, "welding", "welding"},
                               {Phase::waiting, "waiting", "waiting by day"},
                               {Phase::boring, "boring", "boring and measuring"},
                               {Phase::clean_up, "clean_up", "packing and handing over"}};

/// The price of an hour of something: its own, or the one of any hour.
PriceAt hour_price(const Prices& prices, const std::string& field) {
    const Decimal* own = value_named(prices.labour, field);
    return own ? PriceAt{"prices.labour." + field, *own} : PriceAt{"prices.labour_hour", prices.labour_hour};
}

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

std::vector<QuoteLine> quote_labour(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const Prices& prices = facts.prices;
    const PriceAt any_hour{"prices.labour_hour", prices.labour_hour};
    const std::string no_hours = fmt::format("hours: no day is laid out, because {}", facts.no_hours);
    std::vector<QuoteLine> lines;
    const auto add = [&](const char* item, std::optional<double> hours, const PriceAt& at) {
        lines.push_back(priced(line_of(item, hours, "h", hours ? "" : no_hours), at, facts.currency, faults));
    };
    const bool each_phase_has_its_own = ranges::all_of(
        phases, [&](const PhaseRow& row) { return hour_price(prices, row.field).path != any_hour.path; });
    if (facts.hours) {
        for (const auto& [phase, hours] : facts.hours->work) {
            const PhaseRow& row = *ranges::find(phases, phase, &PhaseRow::phase);
            add(row.words, hours, hour_price(prices, row.field));
        }
        if (facts.hours->idle > 0 && value_named(prices.labour, "idle"))
            add("idle until a morning", facts.hours->idle, hour_price(prices, "idle"));
        if (facts.hours->test)
            add("crack test, second visit", facts.hours->test, hour_price(prices, "testing"));
    } else if (each_phase_has_its_own && !prices.labour_hour)
        lines.push_back(line_of("work", {}, "h", no_hours));
    else
        add("work", {}, any_hour);
    add("fire watch, a second person", facts.hours ? std::optional(facts.hours->watch) : std::nullopt,
        {"prices.watch_hour", prices.watch_hour});
    return lines;
}

std::vector<QuoteLine> quote_power(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const Prices& prices = facts.prices;
    const bool generator = prices.fuel_litre.has_value();
    const auto fuel = ranges::find(facts.take, kinds::generator_fuel, &Need::kind);
    QuoteLine line = !facts.energy_kwh || (generator && fuel == facts.take.end())
                         ? line_of("power", {}, generator ? "L" : "kWh",
                                   "energy: the job does not give current and voltage of every bore")
                     : generator ? line_of("generator fuel", fuel->need, "L")
                                 : line_of("electricity", *facts.energy_kwh, "kWh");
    const PriceAt at = generator ? PriceAt{"prices.fuel_litre", prices.fuel_litre}
                                 : PriceAt{"prices.power_kwh", prices.power_kwh};
    return {priced(line, at, facts.currency, faults)};
}

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
