#pragma once

#include <algorithm>
#include <iterator>
#include <string_view>

namespace ringfill {

/// What may make a caution apply: a thing that is so or not, or a figure that is compared with limits.
struct Circumstance {
    std::string_view name;  ///< as a table writes it; a figure's ends in its unit: room_volume_m3
    std::string_view field; ///< of the job, that settles it; empty: always known
    double low = 0;         ///< what the figure can be at all, in the unit of its name
    double high = 0;

    constexpr bool is_figure() const { return high > low; }
};

/// Every circumstance; a table can name no other. The limits of figures are those of the job's fields.
inline constexpr Circumstance circumstances[] = {
    {"always", ""},
    {"near_hydraulics", "site.near"},
    {"near_closed_cavity", "site.near"},
    {"near_tyre", "site.near"},
    {"near_battery", "site.near"},
    {"near_bearing", "site.near"},
    {"near_fuel", "site.near"},
    {"near_crane", "site.near"},
    {"plugged_passage", "bores.holes.other_end"}, // a hole of a bore whose far end is not known to be open
    {"coated", "site.coating"},
    {"zinc_coated", "site.coating"},
    {"grease", "site.residue"}, // or oil
    {"solvent", "site.residue"},
    {"dust", "site.residue"},
    {"wet", "site.wet"},
    {"indoors", "site.indoors"},
    {"outdoors", "site.indoors"},
    {"enclosed", "site.enclosed"},
    {"implant", "site.crew"},
    {"new_to_heat", "site.crew"},
    {"shielding_gas", ""},
    {"flux", ""}, // in the wire or on the electrode
    {"fuel_gas", "heater.kind"},
    {"propane", "heater.kind"},
    {"acetylene", "heater.kind"},
    {"oxygen", "heater.kind"},
    {"electric_heater", "heater.kind"},
    {"delayed_cracks", ""}, // the rules of the metal ask for a wait before the crack test
    {"room_volume_m3", "site.room_volume", 0, 1e7},
    {"ceiling_m", "site.ceiling", 0, 10},
    {"ambient_degC", "site.ambient", -60, 700},
    {"wire_current_A", "procedures.current", 0, 2'000}, // of procedures whose filler runs off a spool
    {"stick_current_A", "procedures.current", 0, 2'000},
    {"rod_current_A", "procedures.current", 0, 2'000},
    {"preheat_degC", "bores.base", 20, 700}, // the minimum
    {"peak_degC", "bores.boss_diameter, procedures.current and voltage", -60,
     1'500}, // the hottest that a boss gets
    {"manganese_pct", "bores.composition", 0, 100},
    {"chromium_pct", "bores.composition", 0, 100},
    {"nickel_pct", "bores.composition", 0, 100},
    {"copper_pct", "bores.composition", 0, 100},
};

/// The circumstance of that name, or null.
constexpr const Circumstance* find_circumstance(std::string_view name) {
    const auto* found = std::find_if(std::begin(circumstances), std::end(circumstances),
                                     [&](const Circumstance& one) { return one.name == name; });
    return found == std::end(circumstances) ? nullptr : found;
}

/// One that the program itself names; a name that is none does not compile.
consteval const Circumstance* circumstance(std::string_view name) {
    return &*find_circumstance(name);
}

} // namespace ringfill
