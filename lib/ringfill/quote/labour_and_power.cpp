#include <algorithm>
#include <iterator>

#include <fmt/format.h>

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

const char* const watch_line = "fire watch, a second person";

QuoteLine hours_not_known(std::string item, const std::string& why) {
    return line_without(std::move(item), "h", fmt::format("hours: no day is laid out, because {}", why));
}

bool every_phase_has_a_price(const Prices& prices) {
    return std::all_of(std::begin(phases), std::end(phases), [&](const PhaseRow& row) {
        return hour_price(prices, row.field).path != "prices.labour_hour";
    });
}

} // namespace

PriceAt hour_price(const Prices& prices, const std::string& field) {
    for (const auto& [name, price] : prices.labour)
        if (name == field)
            return {"prices.labour." + field, price};
    return {"prices.labour_hour", prices.labour_hour};
}

std::vector<QuoteLine> quote_labour(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const PriceAt watch{"prices.watch_hour", facts.prices.watch_hour};
    std::vector<QuoteLine> lines;
    const auto add = [&](QuoteLine line, const PriceAt& at) {
        put_price(line, at, facts.currency, faults);
        lines.push_back(std::move(line));
    };
    if (!facts.hours) {
        QuoteLine work = hours_not_known("work", facts.no_hours);
        if (facts.prices.labour_hour || !every_phase_has_a_price(facts.prices))
            put_price(work, {"prices.labour_hour", facts.prices.labour_hour}, facts.currency, faults);
        lines.push_back(std::move(work));
        add(hours_not_known(watch_line, facts.no_hours), watch);
        return lines;
    }
    for (const auto& [phase, hours] : facts.hours->work)
        for (const PhaseRow& row : phases)
            if (row.phase == phase)
                add(line_of(row.words, hours, "h"), hour_price(facts.prices, row.field));
    if (facts.hours->test)
        add(line_of("crack test, second visit", *facts.hours->test, "h"),
            hour_price(facts.prices, "testing"));
    add(line_of(watch_line, facts.hours->watch, "h"), watch);
    return lines;
}

std::vector<QuoteLine> quote_power(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const bool generator = facts.prices.fuel_litre.has_value();
    const auto fuel = std::find_if(facts.take.begin(), facts.take.end(),
                                   [](const Need& need) { return need.kind == NeedKind::generator_fuel; });
    QuoteLine line = !facts.energy_kwh || (generator && fuel == facts.take.end())
                         ? line_without("power", generator ? "L" : "kWh",
                                        "energy: the job does not give current and voltage of every bore")
                     : generator ? line_of("generator fuel", fuel->need, "L")
                                 : line_of("electricity", *facts.energy_kwh, "kWh");
    put_price(line,
              generator ? PriceAt{"prices.fuel_litre", facts.prices.fuel_litre}
                        : PriceAt{"prices.power_kwh", facts.prices.power_kwh},
              facts.currency, faults);
    return {line};
}

} // namespace ringfill
