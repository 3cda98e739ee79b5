#include <ringfill/quote/pack_notes.hpp>

#include <algorithm>
#include <string_view>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/quote/bought.hpp>
#include <ringfill/quote/price_by_name.hpp>

namespace ringfill {
namespace {

/// What is charged by hours or energy, and the field that prices it.
constexpr std::pair<std::string_view, const char*> priced_elsewhere[] = {
    {"generator fuel", "prices.fuel_litre"},
    {"power supply", "prices.power_kwh"},
    {"fire watch, a second person", "prices.watch_hour"}};

/// The fillers, gases and fuels that a name is the price of, each once.
std::vector<std::string> substances_priced(const QuoteFacts& facts, const std::string& name) {
    std::vector<std::string> found;
    for (const Need& need : facts.take) {
        const std::string substance = substance_of(need);
        if (substance.empty() || std::find(found.begin(), found.end(), substance) != found.end())
            continue;
        for (const PackCount& pack : need.cover)
            if (const auto* price = price_by_name(facts.prices.packs, with_pack(need, pack));
                price && price->first == name) {
                found.push_back(substance);
                break;
            }
    }
    return found;
}

std::string note_on(const QuoteFacts& facts, const std::string& name) {
    const bool is_used = std::any_of(facts.take.begin(), facts.take.end(), [&](const Need& need) {
        return need.charge != Charge::by_hours && is_bought_by_name(need, name);
    });
    if (!is_used) {
        for (const auto& [item, field] : priced_elsewhere)
            if (names(name, item))
                return fmt::format("prices.packs \"{}\" is not used: that is priced by {}.", name, field);
        return fmt::format("prices.packs \"{}\" names nothing that is taken.", name);
    }
    const auto substances = substances_priced(facts, name);
    if (substances.size() > 1)
        return fmt::format("prices.packs \"{}\" is the price for each of {}: where they differ in price, "
                           "write the fuller names that the lines have.",
                           name, fmt::join(substances, ", "));
    return {};
}

} // namespace

std::vector<std::string> pack_notes(const QuoteFacts& facts) {
    std::vector<std::string> tools;
    for (const Need& need : facts.take)
        if (need.charge == Charge::tool && !is_material(need, facts.prices.packs))
            tools.push_back(need.item);
    std::vector<std::string> notes;
    if (!tools.empty())
        notes.push_back(fmt::format("Tools without a price are not in it: {}.", fmt::join(tools, ", ")));
    for (const auto& [name, price] : facts.prices.packs)
        if (std::string note = note_on(facts, name); !note.empty())
            notes.push_back(std::move(note));
    return notes;
}

} // namespace ringfill
