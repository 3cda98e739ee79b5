#include <ringfill/quote/quote_materials.hpp>

#include <algorithm>
#include <iterator>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/quote/bought.hpp>
#include <ringfill/quote/price_by_name.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

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

/// The mass in the packs of one kind; nothing when the table of packs does not tell it.
std::optional<double> packs_kg(const Need& need, const PackCount& packs, const Packs& known) {
    const auto mass_in = [&](const auto& table) {
        const auto found =
            std::find_if(table.begin(), table.end(), [&](const auto& one) { return one.name == packs.pack; });
        return found == table.end()
                   ? std::nullopt
                   : std::optional(static_cast<double>(packs.count) * found->content.value.value());
    };
    return need.item.starts_with("wire ") ? mass_in(known.wire) : mass_in(known.pieces);
}

/// The mass in all packs of a filler; nothing when the table of packs does not tell it.
std::optional<double> filler_kg(const Need& need, const Packs& packs) {
    if (need.unit == "kg")
        return need.supplied;
    double kg = 0;
    for (const PackCount& one : need.cover) {
        const auto these = packs_kg(need, one, packs);
        if (!these)
            return std::nullopt;
        kg += *these;
    }
    return kg;
}

std::string all_packs(const Need& need) {
    std::string text = need.item;
    for (const PackCount& pack : need.cover)
        text += fmt::format("{}{} × {}", &pack == &need.cover.front() ? ", " : " + ", pack.count, pack.pack);
    return text;
}

/// What a user is told to write as the name of a pack: its own, or the full one where its own would be the
/// price of something else too.
std::string key_for(const Need& need, const PackCount& pack, const QuoteFacts& facts) {
    const auto others = std::count_if(facts.take.begin(), facts.take.end(), [&](const Need& other) {
        return &other != &need && is_bought_by_name(other, pack.pack);
    });
    return others > 0 ? with_pack(need, pack) : pack.pack;
}

/// The line of the packs of one kind: by its own name's price, else by the kilogram, where it has one.
QuoteLine pack_line(const Need& need, const PackCount& pack, const NamedPrices::value_type* by_kg,
                    const QuoteFacts& facts, std::vector<Fault>& faults) {
    const std::string full = with_pack(need, pack);
    const auto* by_name = price_by_name(facts.prices.packs, full);
    const auto kg = by_kg && !by_name ? packs_kg(need, pack, facts.packs) : std::nullopt;
    if (kg) {
        QuoteLine line = line_of(fmt::format("{}, {} × {}", need.item, pack.count, pack.pack), *kg, "kg");
        put_price(line, {member_path("prices.wire_kg", by_kg->first), by_kg->second}, facts.currency, faults);
        return line;
    }
    QuoteLine line = line_of(full, static_cast<double>(pack.count), "packs");
    const std::string key = key_for(need, pack, facts);
    PriceAt at{member_path("prices.packs", key),
               {},
               fmt::format("\"{}\" in prices.packs{}", key,
                           is_filler(need) ? ", or its filler in prices.wire_kg" : "")};
    if (by_name)
        at = {member_path("prices.packs", by_name->first), by_name->second};
    put_price(line, at, facts.currency, faults);
    return line;
}

/// What comes singly, without a pack.
QuoteLine single_line(const Need& need, const QuoteFacts& facts, std::vector<Fault>& faults) {
    QuoteLine line = line_of(need.item, need.supplied, "pieces");
    PriceAt at{member_path("prices.packs", need.item), {}, fmt::format("\"{}\" in prices.packs", need.item)};
    if (const auto* by_name = price_by_name(facts.prices.packs, need.item))
        at = {member_path("prices.packs", by_name->first), by_name->second};
    put_price(line, at, facts.currency, faults);
    return line;
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
    std::vector<QuoteLine> lines;
    for (const PackCount& pack : need.cover)
        lines.push_back(pack_line(need, pack, by_kg, facts, faults));
    if (need.cover.empty())
        lines.push_back(single_line(need, facts, faults));
    return lines;
}

/// A unit of a need as the user reads it, and how many of the need's own it is.
std::pair<std::string, double> unit_for(const Need& need, UnitSystem units) {
    if (units == UnitSystem::inch && need.unit == "kg")
        return {"lb", factor::pound};
    if (units == UnitSystem::inch && need.unit == "L")
        return {"ft3", factor::cubic_foot / factor::litre};
    return {need.unit, 1};
}

/// What the lines of some packs lack, each lack told once.
std::string missing_of(const std::vector<QuoteLine>& packs, std::size_t first) {
    std::vector<std::string> all;
    for (std::size_t i = first; i < packs.size(); ++i)
        if (const std::string& one = packs[i].missing;
            !one.empty() && std::find(all.begin(), all.end(), one) == all.end())
            all.push_back(one);
    return all.empty() ? "amount" : fmt::format("{}", fmt::join(all, "; "));
}

/// What is used of the packs, at its share of their cost.
QuoteLine use_line(const Need& need, const std::vector<QuoteLine>& packs, std::size_t first, UnitSystem units,
                   std::vector<Fault>& faults) {
    const auto [unit, of_own] = unit_for(need, units);
    QuoteLine line = line_of(need.item, need.need / of_own, unit);
    PartOf part{first, packs.size() - first, Minor{0}, std::nullopt};
    if (need.pack_known)
        part.supplied = std::max<Thousandths>(1, thousandths(need.supplied / of_own));
    for (std::size_t i = first; i < packs.size(); ++i)
        part.cost = part.cost && packs[i].amount ? sum_of({*part.cost, *packs[i].amount}) : std::nullopt;
    if (part.cost && part.supplied) {
        line.amount = half_even(*line.quantity, *part.cost, *part.supplied);
        if (!line.amount) {
            line.missing = "amount";
            add_fault(faults, too_large(packs[first].price_path));
        }
    } else {
        line.missing = missing_of(packs, first);
    }
    line.part = part;
    return line;
}

} // namespace

QuotedMaterials quote_materials(const QuoteFacts& facts, std::vector<Fault>& faults) {
    QuotedMaterials materials;
    for (const Need& need : facts.take) {
        if (!is_material(need, facts.prices.packs))
            continue;
        const std::size_t first = materials.packs.size();
        for (QuoteLine& line : pack_lines(need, facts, faults))
            materials.packs.push_back(std::move(line));
        materials.use.push_back(use_line(need, materials.packs, first, facts.units, faults));
    }
    return materials;
}

} // namespace ringfill
