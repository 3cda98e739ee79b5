#include <ringfill/quote/quote.hpp>

#include <tuple>

#include <fmt/format.h>

#include <ringfill/quote/quote_sections.hpp>

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

} // namespace

std::string_view in_words(QuotePart part) {
    constexpr std::string_view words[] = {
        "materials by pack", "materials by use", "labour", "power", "travel", "extras"};
    return words[static_cast<std::size_t>(part)];
}

QuoteLine line_without(std::string item, std::string unit, std::string missing) {
    QuoteLine line;
    line.item = std::move(item);
    line.unit = std::move(unit);
    line.missing = std::move(missing);
    return line;
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
    result.notes = quote_notes(facts);
    return result;
}

} // namespace ringfill
