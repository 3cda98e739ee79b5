#include <ringfill/quote/quote.hpp>

#include <tuple>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/quote/pack_notes.hpp>
#include <ringfill/quote/quote_labour.hpp>
#include <ringfill/quote/quote_materials.hpp>
#include <ringfill/quote/quote_power.hpp>
#include <ringfill/quote/quote_travel.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

std::vector<QuoteLine> extras(const QuoteFacts& facts, std::vector<Fault>& faults) {
    std::vector<QuoteLine> lines;
    for (const auto& [name, price] : facts.prices.extras) {
        lines.push_back(line_of(name, 1, ""));
        put_price(lines.back(), {member_path("prices.extras", name), price}, facts.currency, faults);
    }
    return lines;
}

void add_section(Quote& quote, QuotePart part, std::vector<QuoteLine> lines, bool counts,
                 std::vector<Fault>& faults) {
    if (lines.empty())
        return;
    std::vector<Minor> amounts;
    for (const QuoteLine& line : lines)
        if (line.amount)
            amounts.push_back(*line.amount);
        else if (counts)
            quote.missing.push_back(fmt::format("{}: {}", line.item, line.missing));
    QuoteSection section{part, std::move(lines), counts, std::nullopt};
    if (!amounts.empty()) {
        section.sum = sum_of(amounts);
        if (!section.sum)
            add_fault(faults, too_large("prices", fmt::format("the sum of {}", in_words(part))));
    }
    quote.sections.push_back(std::move(section));
}

/// Sum of the sections that count, then one share after the other on all that stands before it.
void add_up(Quote& quote, const Prices& prices, std::vector<Fault>& faults) {
    std::vector<Minor> sums;
    for (const QuoteSection& section : quote.sections)
        if (section.counts && section.sum)
            sums.push_back(*section.sum);
    if (sums.empty())
        return;
    quote.subtotal = sum_of(sums);
    quote.total = quote.subtotal;
    if (!quote.total)
        add_fault(faults, too_large("prices", "the sum"));
    const std::tuple<const char*, const char*, const std::optional<ExactShare>*> shares[] = {
        {"contingency", "prices.contingency", &prices.contingency},
        {"mark-up", "prices.markup", &prices.markup},
        {"tax", "prices.tax", &prices.tax}};
    for (const auto& [name, path, share] : shares) {
        if (!quote.total || !*share)
            continue;
        const auto [parts, whole] = lowest_terms(**share, whole_share);
        const auto amount = half_even(*quote.total, parts, whole);
        quote.on_top.push_back({name, **share, *quote.total, amount.value_or(0)});
        quote.total = amount ? sum_of({*quote.total, *amount}) : std::nullopt;
        if (!quote.total)
            add_fault(faults, too_large(path));
    }
    quote.taxed = prices.tax.has_value();
}

std::string hours_text(double hours) {
    return show(in_si<Time>(hours * factor::hour));
}

void add_notes(Quote& quote, const QuoteFacts& facts) {
    const Prices& prices = facts.prices;
    quote.notes.push_back(fmt::format("{} of the materials count ({}); the other sum is for comparison.",
                                      prices.by_use ? "The shares used" : "The whole packs",
                                      prices.by_use ? "prices.materials is \"use\""
                                                    : "\"use\" in prices.materials counts what is used"));
    quote.notes.emplace_back("Each line is its quantity as shown times its price, rounded once to the "
                             "smallest unit of the currency, halves to the even one; the total is the sum "
                             "of the amounts shown.");
    quote.notes.emplace_back("Waiting by day is paid, nights are not, and nobody's lodging is in it but as "
                             "an extra.");
    if (facts.hours && facts.hours->heater_after > 0)
        quote.notes.push_back(fmt::format("Staying with a heater that slows the cooling after the last ring, "
                                          "{} in all, is in no line: a blanket may do instead, else add it "
                                          "to the extras.",
                                          hours_text(facts.hours->heater_after)));
    if (facts.hours && facts.hours->looks_after > 0)
        quote.notes.push_back(fmt::format("The looks after the fire watch, from time to time over {} in all, "
                                          "are in no line.",
                                          hours_text(facts.hours->looks_after)));
    if (const auto trips = trips_of(facts); trips && prices.travel && !prices.travel->trips)
        quote.notes.push_back(fmt::format("Trips: {}, one for each day worked{}; prices.travel.trips says "
                                          "otherwise.",
                                          *trips, facts.hours->test ? " and one for the crack test" : ""));
    const std::pair<const char*, bool> left_out[] = {
        {"contingency", !prices.contingency}, {"mark-up", !prices.markup}, {"tax", !prices.tax}};
    for (const auto& [name, is_left_out] : left_out)
        if (is_left_out)
            quote.notes.push_back(fmt::format("No {} is in it: the job gives none.", name));
    if (prices.fuel_litre && prices.power_kwh)
        quote.notes.emplace_back("The power is a generator's: prices.fuel_litre is given, and power_kwh is "
                                 "not used.");
    ranges::push_back(quote.notes, travel_notes(prices));
    ranges::push_back(quote.notes, pack_notes(facts));
}

} // namespace

std::string_view in_words(QuotePart part) {
    switch (part) {
    case QuotePart::packs:
        return "materials by pack";
    case QuotePart::use:
        return "materials by use";
    case QuotePart::labour:
        return "labour";
    case QuotePart::power:
        return "power";
    case QuotePart::travel:
        return "travel";
    case QuotePart::extras:
        break;
    }
    return "extras";
}

Quote quote(const QuoteFacts& facts, std::vector<Fault>& faults) {
    Quote result;
    result.currency = facts.currency;
    QuotedMaterials materials = quote_materials(facts, faults);
    const bool by_use = facts.prices.by_use;
    add_section(result, QuotePart::packs, std::move(materials.packs), !by_use, faults);
    add_section(result, QuotePart::use, std::move(materials.use), by_use, faults);
    add_section(result, QuotePart::labour, quote_labour(facts, faults), true, faults);
    add_section(result, QuotePart::power, quote_power(facts, faults), true, faults);
    add_section(result, QuotePart::travel, quote_travel(facts, faults), true, faults);
    add_section(result, QuotePart::extras, extras(facts, faults), true, faults);
    add_up(result, facts.prices, faults);
    add_notes(result, facts);
    return result;
}

} // namespace ringfill
