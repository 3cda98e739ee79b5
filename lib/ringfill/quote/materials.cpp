#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/none_of.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/quote/price_names.hpp>
#include <ringfill/quote/quote_sections.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// The mass in some packs of a filler; nothing where that is not known.
std::optional<double> packs_kg(const std::vector<PackCount>& packs) {
    double kg = 0;
    for (const PackCount& pack : packs)
        if (!pack.filler_kg)
            return std::nullopt;
        else
            kg += static_cast<double>(pack.count) * *pack.filler_kg;
    return kg;
}

/// What a user writes as the name of a thing: its pack's own, or the full one where there is no pack or the
/// pack's own would be the price of something else too.
std::string key_for(const Bought& thing, const QuoteFacts& facts) {
    const auto is_named_too = [&](const Need& other) {
        return &other != &thing.need && names_any_of(thing.pack->pack, other, facts.units);
    };
    return thing.pack && ranges::none_of(facts.take, is_named_too) ? thing.pack->pack
                                                                   : full_name(thing, facts.units);
}

/// The price of a kilogram of a need's filler; null when there is none.
const Decimal* kilogram_price(const Need& need, const Prices& prices) {
    return is_filler(need.kind) ? value_named(prices.wire_kg, need.substance) : nullptr;
}

/// The line of so many kilograms of a filler in some packs, at its price of a kilogram.
QuoteLine kilogram_line(const Need& need, const std::vector<PackCount>& packs, double kg,
                        const QuoteFacts& facts, std::vector<Fault>& faults) {
    const std::string text = fmt::format("{}, {}", item_text(need, facts.units), in_words(packs));
    return priced(line_of(text, kg, "kg"),
                  {member_path("prices.wire_kg", need.substance), *kilogram_price(need, facts.prices)},
                  facts.currency, faults);
}

/// The line of a need's packs of one kind, or of what comes singly: by its own name's price, else by the
/// kilogram, where it has one.
QuoteLine line_by_name(const Bought& thing, const QuoteFacts& facts, std::vector<Fault>& faults) {
    const auto& [need, pack] = thing;
    const auto* by_name = price_by_name(facts.prices.packs, thing, facts.units);
    if (pack && kilogram_price(need, facts.prices) && !by_name)
        if (const auto kg = packs_kg({*pack}))
            return kilogram_line(need, {*pack}, *kg, facts, faults);
    const double count = pack ? static_cast<double>(pack->count) : need.supplied;
    const std::string key = by_name ? by_name->first : key_for(thing, facts);
    PriceAt at{member_path("prices.packs", key),
               {},
               fmt::format("\"{}\" in prices.packs{}", key,
                           pack && is_filler(need.kind) ? ", or its filler in prices.wire_kg" : "")};
    if (by_name)
        at.price = by_name->second;
    return priced(line_of(full_name(thing, facts.units), count, pack ? "packs" : "pieces"), at,
                  facts.currency, faults);
}

/// One line for all packs of a need whose filler is priced by the kilogram, or one a pack.
std::vector<QuoteLine> pack_lines(const Need& need, const QuoteFacts& facts, std::vector<Fault>& faults) {
    const Prices& prices = facts.prices;
    if (is_unknown(need))
        return {line_of(item_text(need, facts.units), {}, "", "amount: not known of " + need.unknown)};
    if (!need.pack_known)
        return {line_of(item_text(need, facts.units), {}, "", "pack: none of the table of packs holds it")};
    const auto things = bought(need);
    const bool any_by_name = ranges::any_of(
        things, [&](const Bought& thing) { return price_by_name(prices.packs, thing, facts.units); });
    if (kilogram_price(need, prices) && !any_by_name)
        if (const auto kg = need.kind == kinds::wire ? need.supplied : packs_kg(need.cover))
            return {kilogram_line(need, need.cover, *kg, facts, faults)};
    std::vector<QuoteLine> lines;
    for (const Bought& thing : things)
        lines.push_back(line_by_name(thing, facts, faults));
    return lines;
}

/// A unit of a need as the user reads it, and how many of the need's own it is.
std::pair<std::string, double> unit_for(const Need& need, UnitSystem units) {
    const std::string_view unit = need.kind.unit;
    const bool inch = units == UnitSystem::inch;
    if (inch && unit == "kg")
        return {"lb", factor::pound};
    if (inch && unit == "L")
        return {"ft3", factor::cubic_foot / factor::litre};
    return {std::string(unit), 1};
}

/// What is used of the packs, at its share of their cost.
QuoteLine use_line(const Need& need, const std::vector<QuoteLine>& packs, std::size_t first, UnitSystem units,
                   std::vector<Fault>& faults) {
    const auto [unit, own_per_shown] = unit_for(need, units);
    QuoteLine line = line_of(item_text(need, units), need.need / own_per_shown, unit);
    ShareOfPacks part{first, packs.size() - first, Minor{0}, std::nullopt};
    if (need.pack_known)
        part.supplied = std::max<Thousandths>(1, thousandths(need.supplied / own_per_shown));
    std::vector<std::string> missing;
    for (std::size_t i = first; i < packs.size(); ++i) {
        part.cost = part.cost && packs[i].amount ? sum_of({*part.cost, *packs[i].amount}) : std::nullopt;
        if (!packs[i].missing.empty() && !ranges::contains(missing, packs[i].missing))
            missing.push_back(packs[i].missing);
    }
    line.part = part;
    const bool is_known = part.cost && part.supplied;
    if (is_known)
        line.amount = half_even(*line.quantity, *part.cost, *part.supplied);
    if (is_known && !line.amount)
        add_fault(faults, too_large(packs[first].price_path));
    if (!line.amount)
        line.missing = is_known || missing.empty() ? "amount" : listed(missing, "; ");
    return line;
}

} // namespace

std::pair<std::vector<QuoteLine>, std::vector<QuoteLine>> quote_materials(const QuoteFacts& facts,
                                                                          std::vector<Fault>& faults) {
    std::vector<QuoteLine> packs, use;
    for (const Need& need : facts.take) {
        if (!is_material(need, facts.prices.packs, facts.units))
            continue;
        const std::size_t first = packs.size();
        ranges::push_back(packs, pack_lines(need, facts, faults));
        use.push_back(use_line(need, packs, first, facts.units, faults));
    }
    return {std::move(packs), std::move(use)};
}

} // namespace ringfill
