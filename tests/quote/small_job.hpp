#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include <ringfill/quote/quote.hpp>

namespace ringfill::testing {

inline Need need_of(const std::string& item, double need, double supplied, const std::string& unit,
                    std::vector<PackCount> cover = {}, Charge charge = Charge::used_up) {
    Need line;
    line.item = item;
    line.need = need;
    line.supplied = supplied;
    line.unit = unit;
    line.cover = std::move(cover);
    line.charge = charge;
    return line;
}

/// A small job: wire, gas, tips, a tool, a person; a day of two phases.
struct SmallJob {
    Prices prices;
    Currency currency{"EUR", {2, "ISO4217"}};
    std::vector<Need> take{need_of("wire steel/A 1.0 mm", 3.5, 5, "kg", {{"5 kg spool", 1}}),
                           need_of("gas M21", 1'200, 4'000, "L", {{"10 L mixture cylinder", 2}}),
                           need_of("contact tips 1.0 mm A", 1, 2, "pieces"),
                           need_of("insulating blanket", 1, 1, "pieces", {}, Charge::tool),
                           need_of("generator fuel", 2.5, 3, "L", {{"3 L in cans", 1}}, Charge::by_hours)};
    std::optional<QuoteHours> hours = QuoteHours{{{Phase::set_up, 2}, {Phase::welding, 1.5}}, 4, 1, 2};
    std::optional<double> energy = 8;
    Packs packs;
    std::vector<Fault> faults;

    SmallJob() {
        prices.currency = "EUR";
        prices.labour_hour = Decimal{80, 0};
        prices.labour = {{"welding", {95, 0}}};
        prices.watch_hour = Decimal{40, 0};
        prices.wire_kg = {{"steel/A", {42, 1}}};
        prices.packs = {{"mixture cylinder", {465, 1}}, {"contact tips", {14, 1}}};
        prices.power_kwh = Decimal{3125, 4};
        prices.travel = Travel{Decimal{90, 0}, false, in_si<Time>(5'400), std::nullopt};
        prices.drive = Decimal{65, 2};
    }

    Quote quoted() {
        return quote({prices, currency, take, packs, UnitSystem::metric, hours, "no reason", energy}, faults);
    }
};

inline const QuoteSection& section(const Quote& quote, QuotePart part) {
    for (const QuoteSection& one : quote.sections)
        if (one.part == part)
            return one;
    throw std::logic_error("no such section");
}

} // namespace ringfill::testing
