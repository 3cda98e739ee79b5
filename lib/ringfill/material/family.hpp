#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/document.hpp>
#include <ringfill/material/filler.hpp>
#include <ringfill/material/heat_rows.hpp>
#include <ringfill/material/plugin_file.hpp>
#include <ringfill/table/replaced.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/table/suits.hpp>

namespace ringfill {

/// A base metal of a family.
struct Base {
    std::string name;
    std::string standard;
    std::string group; ///< that rules of what suits know it by; empty: none
    Sourced<Density> density;
    Composition composition;     ///< the end of the standard's range that asks for more care
    Composition typical;         ///< what it usually holds, where that is known
    Composition composition_min; ///< the least of elements without which it is another metal
    std::string structure;       ///< ferritic, martensitic, austenitic, cast_iron, nickel or copper
    std::optional<Sourced<double>> yield_MPa; ///< the least its standard asks for, as is the next
    std::optional<Sourced<double>> tensile_MPa;
    std::optional<Sourced<SpecificHeat>> specific_heat; ///< where it is not that of carbon steel
    std::optional<Sourced<Conductivity>> conductivity;  ///< likewise, at 150 °C
    std::optional<Sourced<double>> expansion_per_K;     ///< where it is not that of common steel
    bool never_quenched = false; ///< its standard delivers it as rolled or normalised, nothing softens it
    std::optional<Sourced<Temperature>> tempering;
    std::optional<Sourced<Temperature>> softens_over; ///< quenched: more heat than this softens it
    std::optional<Sourced<Temperature>> interpass_max;
    std::optional<PreheatGroup> practice;    ///< tabulated for this very grade
    std::vector<std::string> preheat_groups; ///< tables of the family that are shown beside it
    std::optional<ListedIn> listed_in;  ///< those whose own list names it: they may rule; nothing: all may
    std::string heat_group;             ///< what it has in common with others as it is welded
    std::vector<LadleRow> by_thickness; ///< of composition, where the standard goes by it
    std::vector<ThicknessRow> cev_max;  ///< most CE(IIW) that the standard lets the ladle have [%]
    std::optional<Sourced<double>> cev_since; ///< the year that its standard has it from
    bool cev_by_name = false;                 ///< its name says that it is of that edition or a later one
    std::vector<ThicknessRow> typical_cet;    ///< CET that it usually has [%]
    std::optional<Sourced<std::pair<double, double>>> t85_s; ///< cooling time from 800 to 500 °C it asks for
    std::vector<HeatTreatment> heat_treatment;               ///< after welding
    std::optional<Sourced<std::pair<Temperature, Temperature>>> cool_to; ///< before that treatment
    bool hold_is_ruled = false; ///< what follows the last ring is its own rule, never a hold for hydrogen
    std::vector<Advice> advice; ///< on what to do with it before and while it is welded
};

/// The name of the row that is taken for metal nobody can name.
inline constexpr std::string_view unknown_metal = "unknown";

/// A family of metals: what bores are made of, and what fills them.
struct Family {
    std::string name;
    std::string description;
    std::vector<Base> bases;
    std::vector<Filler> fillers;
    std::vector<PreheatGroup> preheat_groups;
    std::vector<HeatGroup> heat_groups;
    std::vector<Suit> suits;           ///< which filler goes on which metal, beside the common rules
    bool has_rules = false;            ///< its table is not whole without the rules of its plugin
    std::optional<Plugin> plugin;      ///< nothing: the family is a table only
    Bibliography sources;              ///< the family's own and the common ones
    std::vector<std::string> files;    ///< its tables were read from
    std::vector<ReplacedRow> replaced; ///< of one of them by a later one
};

/// Reads a family's table, file after file; a later file corrects or adds entry by entry.
/// Throws Faulty (Origin::table) with every fault, also for a table that names another family.
Family read_family(const std::string& name, std::vector<Document> files, const Bibliography& sources);

/// A family's table with what its rows leave out filled in from its own `usual`: a base metal from
/// `usual.bases`, a filler from `usual.<form>`, objects in them member by member. Under `diameters_mm` the
/// members of `any` go into every diameter of the row, those of a diameter into that one; the row's own
/// figures stand. A document without `usual` comes back as it is.
Document with_usual(Document table);

/// Throws Faulty (Origin::table) for what is `usual` in a table and fills no row of that table: it would pass
/// for a change of the rows of another.
void refuse_idle_usual(const Document& table);

} // namespace ringfill
