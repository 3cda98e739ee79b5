#pragma once

#include <span>
#include <string_view>

namespace ringfill {

/// What may make a caution apply: a thing that is so or not, or a figure that is compared with limits. A
/// table can name no other.
enum class Circumstance {
    always,
    near_hydraulics,
    near_closed_cavity,
    near_tyre,
    near_battery,
    near_bearing,
    near_fuel,
    near_crane,
    plugged_passage, ///< a hole of a bore whose far end is not known to be open
    coated,
    zinc_coated,
    grease, ///< or oil
    solvent,
    dust,
    wet,
    indoors,
    outdoors,
    enclosed,
    implant,
    new_to_heat,
    shielding_gas,
    flux, ///< in the wire or on the electrode
    fuel_gas,
    propane,
    acetylene,
    oxygen,
    electric_heater,
    delayed_cracks, ///< the rules of the metal ask for a wait before the crack test
    room_volume,
    ceiling,
    ambient,
    wire_current, ///< of procedures whose filler runs off a spool
    stick_current,
    rod_current,
    preheat, ///< the minimum
    peak,    ///< the hottest that a boss gets
    manganese,
    chromium,
    nickel,
    copper,
};

/// A circumstance as a table writes it.
struct CircumstanceWord {
    Circumstance id = Circumstance::always;
    std::string_view name;  ///< a figure's ends in its unit: room_volume_m3
    std::string_view field; ///< of the job, that settles it; empty: always known
    bool is_figure = false;
    double low = 0; ///< what the figure can be at all, in the unit of its name
    double high = 0;
};

/// Every circumstance, in the order of the enumeration.
std::span<const CircumstanceWord> circumstance_words();

/// The circumstance of that name, or null.
const CircumstanceWord* find_circumstance(std::string_view name);

const CircumstanceWord& word_of(Circumstance id);

} // namespace ringfill
