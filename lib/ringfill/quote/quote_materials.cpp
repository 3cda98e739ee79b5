#include <ringfill/quote/quote_materials.hpp>

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

#include <ringfill/quote/price_by_name.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

std::string with_pack(const Need& need, const PackCount& pack) {
    return fmt::format("{}, {}", need.item, pack.pack);
}

/// Everything that is bought for a need, by what it is called.
std::vector<std::string> bought(const Need& need) {
    std::vector<std::string> names{need.item};
    for (const PackCount& pack : need.cover)
        names.push_back(with_pack(need, pack));
    return names;
}

bool has_price(const Need& need, const NamedPrices& prices) {
    const auto all = bought(need);
    return std::any_of(all.begin(), all.end(),
                       [&](const std::string& name) { return price_by_name(prices, name) != nullptr; });
}

constexpr std::string_view filler_forms[] = {"wire", "electrodes", "rods"};

bool is_filler(const Need& need) {
    return std::any_of(std::begin(filler_forms), std::end(filler_forms), [&](std::string_view form) {
        return need.item.starts_with(fmt::format("{} ", form));
    });
}

/// The price of a kilogram of the filler that a need is of, or null.
const NamedPrices::value_type* filler_price(const Need& need, const NamedPrices& by_filler) {
    for (const auto& one : by_filler)
        for (const std::string_view form : filler_forms)
            if (need.item.starts_with(fmt::format("{} {} ", form, one.first)))
                return &one;
    return nullptr;
}

/// The mass in the packs of a filler; nothing when the table of packs does not tell it.
std::optional<double> filler_kg(const Need& need, const Packs& packs) {
    if (need.unit == "kg")
        return need.supplied;
    double kg = 0;
    for (const PackCount& one : need.cover) {
        const auto known = std::find_if(packs.pieces.begin(), packs.pieces.end(),
                                        [&](const PiecePack& pack) { return pack.name == one.pack; });
        if (known == packs.pieces.end())
            return std::nullopt;
        kg += static_cast<double>(one.count) * known->content.value.value();
    }
    return kg;
}

std::string all_packs(const Need& need) {
    std::string text = need.item;
    for (const PackCount& pack : need.cover)
        text += fmt::format("{}{} × {}", &pack == &need.cover.front() ? ", " : " + ", pack.count, pack.pack);
    return text;
}

/// One line for all packs of a need whose filler is priced by the kilogram, or one a pack.
std::vector<QuoteLine> pack_lines(const Need& need, const QuoteFacts& facts, std::vector<Fault>& faults) {
    const Prices& prices = facts.prices;
    if (!need.pack_known) {
        QuoteLine line;
        line.item = need.item;
        line.missing = "pack: none of the table of packs holds it";
        return {line};
    }
    const auto* by_kg = filler_price(need, prices.wire_kg);
    if (by_kg && !has_price(need, prices.packs))
        if (const auto kg = filler_kg(need, facts.packs)) {
            QuoteLine line = line_of(all_packs(need), *kg, "kg");
            put_price(line, {member_path("prices.wire_kg", by_kg->first), by_kg->second}, facts.currency,
                      faults);
            return {line};
        }
    std::vector<std::pair<QuoteLine, std::string>> lines;
    for (const PackCount& pack : need.cover)
        lines.emplace_back(line_of(with_pack(need, pack), static_cast<double>(pack.count), "packs"),
                           pack.pack);
    if (need.cover.empty())
        lines.emplace_back(line_of(need.item, need.supplied, "pieces"), need.item);
    const char* const or_else = is_filler(need) ? ", or its filler in prices.wire_kg" : "";
    std::vector<QuoteLine> priced;
    for (auto& [line, name] : lines) {
        const auto* found = price_by_name(prices.packs, line.item);
        PriceAt at{
            member_path("prices.packs", name), {}, fmt::format("\"{}\" in prices.packs{}", name, or_else)};
        if (found)
            at = {member_path("prices.packs", found->first), found->second};
        put_price(line, at, facts.currency, faults);
        priced.push_back(std::move(line));
    }
    return priced;
}

/// A unit of a need as the user reads it, and how many of the need's own it is.
std::pair<std::string, double> unit_for(const Need& need, UnitSystem units) {
    if (units == UnitSystem::inch && need.unit == "kg")
        return {"lb", factor::pound};
    if (units == UnitSystem::inch && need.unit == "L")
        return {"ft3", factor::cubic_foot / factor::litre};
    return {need.unit, 1};
}

/// What is used of the packs, at its share of their cost.
QuoteLine use_line(const Need& need, const std::vector<QuoteLine>& packs, std::size_t first, UnitSystem units,
                   std::vector<Fault>& faults) {
    const auto [unit, of_own] = unit_for(need, units);
    QuoteLine line = line_of(need.item, need.need / of_own, unit);
    PartOf part{first, packs.size() - first, Minor{0}, 1};
    if (need.pack_known)
        part.supplied = std::max<Thousandths>(1, thousandths(need.supplied / of_own));
    for (std::size_t i = first; i < packs.size(); ++i)
        part.cost = part.cost && packs[i].amount ? sum_of({*part.cost, *packs[i].amount}) : std::nullopt;
    if (part.cost) {
        line.amount = half_even(*line.quantity, *part.cost, part.supplied);
        if (!line.amount)
            faults.push_back(too_large("prices.packs"));
    }
    if (!line.amount)
        line.missing = "price of the packs";
    line.part = part;
    return line;
}

} // namespace

QuotedMaterials quote_materials(const QuoteFacts& facts, std::vector<Fault>& faults) {
    QuotedMaterials materials;
    for (const Need& need : facts.take) {
        if (need.charge == Charge::by_hours ||
            (need.charge == Charge::tool && !has_price(need, facts.prices.packs)))
            continue;
        const std::size_t first = materials.packs.size();
        for (QuoteLine& line : pack_lines(need, facts, faults))
            materials.packs.push_back(std::move(line));
        materials.use.push_back(use_line(need, materials.packs, first, facts.units, faults));
    }
    return materials;
}

std::vector<std::string> unused_names(const QuoteFacts& facts) {
    std::vector<std::string> unused;
    for (const auto& [name, price] : facts.prices.packs) {
        const auto is_named = [&, key = std::string_view(name)](const Need& need) {
            const auto all = bought(need);
            return std::any_of(all.begin(), all.end(),
                               [&](const std::string& one) { return names(key, one); });
        };
        if (std::none_of(facts.take.begin(), facts.take.end(), is_named))
            unused.push_back(name);
    }
    return unused;
}

} // namespace ringfill
