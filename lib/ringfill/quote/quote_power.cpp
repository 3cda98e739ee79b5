#include <ringfill/quote/quote_power.hpp>

#include <algorithm>

namespace ringfill {

std::vector<QuoteLine> quote_power(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const bool generator = facts.prices.fuel_litre.has_value();
    const auto fuel = std::find_if(facts.take.begin(), facts.take.end(),
                                   [](const Need& need) { return need.item == "generator fuel"; });
    QuoteLine line;
    if (!facts.energy_kwh || (generator && fuel == facts.take.end())) {
        line.item = "power";
        line.unit = generator ? "L" : "kWh";
        line.missing = "energy: the job does not give current and voltage of every bore";
    } else {
        line = generator ? line_of("generator fuel", fuel->need, "L")
                         : line_of("electricity", *facts.energy_kwh, "kWh");
    }
    put_price(line,
              generator ? PriceAt{"prices.fuel_litre", facts.prices.fuel_litre}
                        : PriceAt{"prices.power_kwh", facts.prices.power_kwh},
              facts.currency, faults);
    return {line};
}

} // namespace ringfill
