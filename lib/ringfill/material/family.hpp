#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/material/plugin_file.hpp>
#include <ringfill/material/preheat_table.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

using Composition = std::vector<std::pair<std::string, Sourced<double>>>; ///< percent by mass, by element

/// A base metal of a family.
struct Base {
    std::string name;
    std::string standard;
    Sourced<Density> density;
    Composition composition;     ///< the end of the standard's range that asks for more care
    Composition composition_min; ///< the least of elements without which it is another metal
    std::string structure;       ///< ferritic, martensitic, austenitic, cast_iron, nickel or copper
    std::optional<Sourced<double>> yield_MPa; ///< the least its standard asks for, as is the next
    std::optional<Sourced<double>> tensile_MPa;
    std::optional<Sourced<SpecificHeat>> specific_heat; ///< where it is not that of carbon steel
    std::optional<Sourced<Conductivity>> conductivity;  ///< likewise, at 150 °C
    std::optional<Sourced<double>> expansion_per_K;     ///< where it is not that of common steel
    std::optional<Sourced<Temperature>> tempering;
    std::optional<Sourced<Temperature>> interpass_max;
    std::optional<Sourced<double>> interpass_range_K; ///< its maximum is no more than this over the minimum
    std::optional<PreheatGroup> practice;             ///< tabulated for this very grade
    std::vector<std::string> preheat_groups;          ///< tables of the family that list it
};

/// The name of the row that is taken for metal nobody can name.
inline constexpr std::string_view unknown_metal = "unknown";

/// How fast a wire melts: feed = a I + b l I², with the stick-out l.
struct MeltingCurve {
    Sourced<double> a; ///< [mm/(A s)]
    Sourced<double> b; ///< [1/(A² s)]
};

/// Settings at which a wire of one diameter welds well.
struct Window {
    std::optional<Sourced<std::pair<Speed, Speed>>> wire_feed;
    std::optional<Sourced<std::pair<Current, Current>>> current;
    std::optional<Sourced<std::pair<Speed, Speed>>> travel;
};

/// One point of a table of wire feed and current.
struct FeedPoint {
    Speed feed;
    Current current;
    std::string source;
};

/// What is known of a wire of one diameter.
struct WireSize {
    std::string name; ///< the diameter as the table writes it, in mm
    Length diameter;
    std::optional<Sourced<LinearMass>> linear_mass; ///< of cored wire
    std::optional<MeltingCurve> melting;
    std::vector<FeedPoint> feed_table; ///< rising; instead of a melting curve
    Window window;
};

/// A wire of a family.
struct Filler {
    std::string name;
    std::string standard;
    bool cored = false;
    std::optional<Sourced<Density>> wire_density; ///< of solid wire
    Sourced<Density> deposit_density;
    Sourced<double> efficiency; ///< deposited share of the wire
    std::vector<std::pair<std::string, Sourced<double>>> efficiency_by_gas;
    Sourced<double> bead_ratio; ///< bead width over crown
    Sourced<Length> stick_out;
    std::vector<std::string> gases; ///< it is used with, by EN ISO 14175 designation; empty: it needs none
    Composition composition;
    std::optional<Sourced<double>>
        hydrogen_ml_100g;        ///< diffusible, the limit of its class; nothing: no class
    std::vector<WireSize> sizes; ///< rising in diameter
};

/// A family of metals: what bores are made of, and what fills them.
struct Family {
    std::string name;
    std::string description;
    std::vector<Base> bases;
    std::vector<Filler> fillers;
    std::vector<PreheatGroup> preheat_groups;
    bool has_rules = false;         ///< its table is not whole without the rules of its plugin
    std::optional<Plugin> plugin;   ///< nothing: the family is a table only
    Bibliography sources;           ///< the family's own and the common ones
    std::vector<std::string> files; ///< its tables were read from
};

/// Reads a family's table, file after file; a later file corrects or adds entry by entry.
/// Throws Faulty (Origin::table) with every fault, also for a table that names another family.
Family read_family(const std::string& name, const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
