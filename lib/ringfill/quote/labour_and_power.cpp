#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/quote/quote_sections.hpp>

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

} // namespace

PriceAt hour_price(const Prices& prices, const std::string& field) {
    const Decimal* own = value_named(prices.labour, field);
    return own ? PriceAt{"prices.labour." + field, *own} : PriceAt{"prices.labour_hour", prices.labour_hour};
}

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

} // namespace ringfill
