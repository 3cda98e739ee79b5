#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include <ringfill/quote/quote.hpp>

namespace ringfill::testing {

inline Need need_of(NeedKind kind, const std::string& substance, double need, double supplied,
                    std::vector<PackCount> cover = {}) {
    Need line;
    line.kind = kind;
    line.substance = substance;
    if (is_filler(kind) || kind == kinds::contact_tip)
        line.size = millimetres(1);
    line.need = need;
    line.supplied = supplied;
    line.cover = std::move(cover);
    return line;
}

/// A small job: wire, gas, tips, a tool, a person; a day of two phases.
struct SmallJob {
    Prices prices;
    Currency currency{"EUR", {2, "ISO4217"}};
    std::vector<Need> take{need_of(kinds::wire, "steel/A", 3.5, 5, {{"5 kg spool", 1}}),
                           need_of(kinds::gas, "M21", 1'200, 4'000, {{"10 L mixture cylinder", 2}}),
                           need_of(kinds::contact_tip, "steel/A", 1, 2), need_of(kinds::blanket, "", 1, 1),
                           need_of(kinds::generator_fuel, "", 2.5, 3, {{"3 L in cans", 1}})};
    std::optional<QuoteHours> hours = QuoteHours{{{Phase::set_up, 2}, {Phase::welding, 1.5}}, 4, 1, 2};
    std::optional<double> energy = 8;
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
        return quote_from({prices, currency, take, UnitSystem::metric, hours, "no reason", energy}, faults);
    }
};

inline const QuoteSection& section(const Quote& quote, QuotePart part) {
    for (const QuoteSection& one : quote.sections)
        if (one.part == part)
            return one;
    throw std::logic_error("no such section");
}

} // namespace ringfill::testing
