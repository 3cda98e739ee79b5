#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <ringfill/units/show.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// What kind of thing is needed.
enum class NeedKind {
    wire,
    electrode,
    rod,
    gas,
    contact_tip,
    gas_nozzle,
    liner,
    temperature_stick,
    thermometer,
    fuel,
    oxygen,
    blanket,
    welding_set,
    power_supply,
    generator_fuel,
    plug_rod,
    drill,
    fitting,
    rough_edge,
    finish_edge,
    fire_watch,
    extinguisher,
};

/// How a kind comes into a quote.
enum class Charge {
    used_up,  ///< among the materials
    tool,     ///< comes home again: only where it has a price of its own
    by_hours, ///< with the hours or the energy, not by the piece
};

/// What an amount of a kind is counted in: "kg", "L", "kW" or "pieces".
std::string unit_of(NeedKind kind);
Charge charge_of(NeedKind kind);
/// Wire, electrodes and rods: what a bore is filled with.
bool is_filler(NeedKind kind);
/// What the temperature is read with.
bool is_for_measuring(NeedKind kind);

/// What a welding set must bear at least.
struct SetRating {
    double amperes;
    double duty_pct;
};

/// A diameter, the temperature at which a stick melts, or a rating; nothing: the kind has no size.
using NeedSize = std::variant<std::monostate, Length, Temperature, SetRating>;

/// Packs of one kind to load.
struct PackCount {
    std::string pack;
    std::int64_t count = 0;
    std::optional<double> filler_kg = {}; ///< in one pack; nothing: not known, or it holds no filler
};

/// One line of what to take: how much, why, and by which rule.
struct Need {
    NeedKind kind = NeedKind::wire;
    std::string substance; ///< filler "steel/ER70S-6", gas "M21" or fuel "propane" that it is of or for
    NeedSize size;
    std::string name;   ///< that the table of sticks gives a temperature stick
    double need = 0;    ///< in the unit of the kind, without the reserve
    double reserve = 0; ///< taken on top
    std::vector<PackCount> cover = {};
    bool pack_known = true;  ///< false: no pack of the table holds it, and the next two mean nothing
    double supplied = 0;     ///< what the packs hold that can be used
    double spare = 0;        ///< supplied over need and reserve
    std::string why = {};    ///< with the numbers that made it, in the user's units
    std::string source = {}; ///< key of the rule's source
    std::vector<Working> working = {}; ///< of need, reserve, supplied and spare
};

/// Whether it is taken piece by piece, in no pack.
bool comes_singly(const Need& need);

/// "wire:steel/ER70S-6:1.0 mm", "temperature_stick::260 degC": what a need is of, whatever units the job is
/// told in. It is kind:substance:size and stays as it is from version to version: the kind is the name of its
/// enumerator, the size stands in millimetres, degrees Celsius (degC) or amperes and per cent of duty
/// ("221 A 100 %"), and a part that does not apply is empty. No two needs of a plan share one.
std::string need_id(const Need& need);

/// A part of what a need is called.
struct NamePart {
    enum class Of { kind, substance, serves, size, pack }; ///< serves: the substance that it is used with
    Of of;
    std::string text;
};

/// What a need is called, part by part, in the user's units.
std::vector<NamePart> name_parts(const Need& need, UnitSystem units);

/// "wire steel/ER70S-6 1.0 mm": the parts one after another.
std::string item_text(const Need& need, UnitSystem units);

/// A figure of a need and how it was reached.
struct NeedFigure {
    double value = 0;
    std::string formula;
    std::string source = "practice";
};

/// A reserve of so many pieces: none, or spares.
NeedFigure spares(int count);

/// A need with the workings of its two figures, which take the inputs that their formulas name; the reserve's
/// may also name "need".
Need need_of(NeedKind kind, std::string substance, NeedSize size, std::vector<Input> inputs, NeedFigure need,
             NeedFigure reserve, std::string why, std::string source = "practice");

/// A need that is supplied by single pieces, just as many as are needed and on top.
Need by_the_piece(Need line);

/// Adds how what the packs supply was reached, and what of it is spare.
void work_supply(Need& line, std::string formula, std::vector<Input> inputs);

} // namespace ringfill
