#include <string_view>
#include <utility>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/contains.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/quote/price_names.hpp>
#include <ringfill/quote/quote_sections.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// What is charged by hours or energy, and the field that prices it.
constexpr std::pair<NeedKind, const char*> priced_elsewhere[] = {{kinds::generator_fuel, "prices.fuel_litre"},
                                                                 {kinds::power_supply, "prices.power_kwh"},
                                                                 {kinds::fire_watch, "prices.watch_hour"}};

/// The fillers, gases and fuels that a name is the price of, each once.
std::vector<std::string> substances_priced(const QuoteFacts& facts, const std::string& name) {
    std::vector<std::string> found;
    for (const Need& need : facts.take) {
        const auto is_priced = [&](const PackCount& pack) {
            const auto* price = price_by_name(facts.prices.packs, {need, &pack}, facts.units);
            return price && price->first == name;
        };
        const bool is_stuff = is_filler(need.kind) || need.kind == kinds::gas || need.kind == kinds::fuel;
        if (is_stuff && !ranges::contains(found, need.substance) && ranges::any_of(need.cover, is_priced))
            found.push_back(need.substance);
    }
    return found;
}

std::string note_on(const QuoteFacts& facts, const std::string& name) {
    const bool is_used = ranges::any_of(facts.take, [&](const Need& need) {
        return need.kind.charge != Charge::by_hours && names_any_of(name, need, facts.units);
    });
    if (is_used) {
        const auto substances = substances_priced(facts, name);
        return substances.size() < 2 ? ""
                                     : fmt::format("is the price for each of {}: where they differ in price, "
                                                   "write the fuller names that the lines have.",
                                                   listed(substances, ", "));
    }
    for (const auto& [kind, field] : priced_elsewhere)
        if (names_any_of(name, Need{kind}, facts.units))
            return fmt::format("is not used: that is priced by {}.", field);
    return "names nothing that is taken; a filler is named in full, family/filler.";
}

std::vector<std::string> pack_notes(const QuoteFacts& facts) {
    std::vector<std::string> tools;
    for (const Need& need : facts.take)
        if (need.kind.charge == Charge::tool && !is_material(need, facts.prices.packs, facts.units))
            tools.push_back(item_text(need, facts.units));
    std::vector<std::string> notes;
    if (!tools.empty())
        notes.push_back(fmt::format("Tools without a price are not in it: {}.", listed(tools, ", ")));
    for (const auto& [name, price] : facts.prices.packs)
        if (const std::string note = note_on(facts, name); !note.empty())
            notes.push_back(fmt::format("prices.packs \"{}\" {}", name, note));
    return notes;
}

} // namespace

std::vector<std::string> quote_notes(const QuoteFacts& facts) {
    const Prices& prices = facts.prices;
    std::vector<std::string> notes = {
        fmt::format("{} of the materials count ({}); the other sum is for comparison.",
                    prices.by_use ? "The shares used" : "The whole packs",
                    prices.by_use ? "prices.materials is \"use\""
                                  : "\"use\" in prices.materials counts what is used"),
        "Each line is its quantity as shown times its price, rounded once to the smallest unit of the "
        "currency, halves to the even one; the total is the sum of the amounts shown.",
        "Waiting by day is paid, nights and breaks are not, and nobody's lodging is in it but as an extra."};
    if (facts.hours && facts.hours->idle > 0 && !value_named(prices.labour, "idle"))
        notes.push_back(fmt::format("Idle hours until a morning, {} in all, are in no line: "
                                    "prices.labour.idle puts them in.",
                                    show(in_si<Time>(facts.hours->idle * factor::hour))));
    if (facts.hours && facts.hours->heater_after > Time())
        notes.push_back(
            fmt::format("Staying with a heater that slows the cooling after the last ring, {} in all, is in "
                        "no line: add it to the extras.",
                        show(facts.hours->heater_after)));
    if (facts.hours && facts.hours->looks_after > Time())
        notes.push_back(
            fmt::format("The looks after the fire watch, from time to time over {} in all, are in no line.",
                        show(facts.hours->looks_after)));
    if (const auto trips = trips_of(facts); trips && prices.travel && !prices.travel->trips)
        notes.push_back(
            fmt::format("Trips: {}, one for each day worked{}; prices.travel.trips says otherwise.", *trips,
                        facts.hours->test ? " and one for the crack test" : ""));
    for (const auto& [name, path, share] : shares_on_top)
        if (!(prices.*share))
            notes.push_back(fmt::format("No {} is in it: the job gives none.", name));
    if (prices.fuel_litre && prices.power_kwh)
        notes.emplace_back(
            "The power is a generator's: prices.fuel_litre is given, and power_kwh is not used.");
    ranges::push_back(notes, travel_notes(prices));
    ranges::push_back(notes, pack_notes(facts));
    return notes;
}

} // namespace ringfill
