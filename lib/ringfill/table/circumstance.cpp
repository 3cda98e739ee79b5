#include <ringfill/table/circumstance.hpp>

#include <iterator>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

using enum Circumstance;

// The limits of figures are those of the job's fields; a test holds them alike.
constexpr CircumstanceWord words[] = {
    {always, "always", ""},
    {near_hydraulics, "near_hydraulics", "site.near"},
    {near_closed_cavity, "near_closed_cavity", "site.near"},
    {near_tyre, "near_tyre", "site.near"},
    {near_battery, "near_battery", "site.near"},
    {near_bearing, "near_bearing", "site.near"},
    {near_fuel, "near_fuel", "site.near"},
    {near_crane, "near_crane", "site.near"},
    {plugged_passage, "plugged_passage", "bores.holes.other_end"},
    {coated, "coated", "site.coating"},
    {zinc_coated, "zinc_coated", "site.coating"},
    {grease, "grease", "site.residue"},
    {solvent, "solvent", "site.residue"},
    {dust, "dust", "site.residue"},
    {wet, "wet", "site.wet"},
    {indoors, "indoors", "site.indoors"},
    {outdoors, "outdoors", "site.indoors"},
    {enclosed, "enclosed", "site.enclosed"},
    {implant, "implant", "site.crew"},
    {new_to_heat, "new_to_heat", "site.crew"},
    {shielding_gas, "shielding_gas", ""},
    {flux, "flux", ""},
    {fuel_gas, "fuel_gas", "heater.kind"},
    {propane, "propane", "heater.kind"},
    {acetylene, "acetylene", "heater.kind"},
    {oxygen, "oxygen", "heater.kind"},
    {electric_heater, "electric_heater", "heater.kind"},
    {delayed_cracks, "delayed_cracks", ""},
    {room_volume, "room_volume_m3", "site.room_volume", true, 0, 1e7},
    {ceiling, "ceiling_m", "site.ceiling", true, 0, 10},
    {ambient, "ambient_degC", "site.ambient", true, -60, 700},
    {wire_current, "wire_current_A", "procedures.current", true, 0, 2'000},
    {stick_current, "stick_current_A", "procedures.current", true, 0, 2'000},
    {rod_current, "rod_current_A", "procedures.current", true, 0, 2'000},
    {preheat, "preheat_degC", "bores.base", true, 20, 700},
    {peak, "peak_degC", "bores.boss_diameter, procedures.current and voltage", true, -60, 1'500},
    {manganese, "manganese_pct", "bores.composition", true, 0, 100},
    {chromium, "chromium_pct", "bores.composition", true, 0, 100},
    {nickel, "nickel_pct", "bores.composition", true, 0, 100},
    {copper, "copper_pct", "bores.composition", true, 0, 100},
};

} // namespace

std::span<const CircumstanceWord> circumstance_words() {
    return words;
}

const CircumstanceWord* find_circumstance(std::string_view name) {
    const auto* found = ranges::find(words, name, &CircumstanceWord::name);
    return found == std::end(words) ? nullptr : found;
}

const CircumstanceWord& word_of(Circumstance id) {
    return words[static_cast<std::size_t>(id)];
}

} // namespace ringfill
