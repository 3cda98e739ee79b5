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

/// How a kind comes into a quote.
enum class Charge {
    used_up,  ///< among the materials
    tool,     ///< comes home again: only where it has a price of its own
    by_hours, ///< with the hours or the energy, not by the piece
};

/// What kind of thing is needed.
struct NeedKind {
    std::string_view id;
    std::string_view unit; ///< that an amount is counted in: kg, L, kW or pieces
    Charge charge;
    std::string_view called; ///< words, and {name}, {substance}, {served} without its family, {size}

    constexpr bool operator==(const NeedKind& other) const { return id == other.id; }
};

/// Every kind there is.
namespace kinds {
inline constexpr NeedKind wire{"wire", "kg", Charge::used_up, "wire {substance} {size}"};
inline constexpr NeedKind electrode{"electrode", "pieces", Charge::used_up, "electrodes {substance} {size}"};
inline constexpr NeedKind rod{"rod", "pieces", Charge::used_up, "rods {substance} {size}"};
inline constexpr NeedKind gas{"gas", "L", Charge::used_up, "gas {substance}"};
inline constexpr NeedKind contact_tip{"contact_tip", "pieces", Charge::used_up,
                                      "contact tips {size} {served}"};
inline constexpr NeedKind gas_nozzle{"gas_nozzle", "pieces", Charge::used_up, "gas nozzles {size} {served}"};
inline constexpr NeedKind liner{"liner", "pieces", Charge::used_up, "liner {size} {served}"};
inline constexpr NeedKind temperature_stick{"temperature_stick", "pieces", Charge::used_up, "{name}"};
inline constexpr NeedKind thermometer{"thermometer", "pieces", Charge::tool, "contact thermometer"};
inline constexpr NeedKind fuel{"fuel", "kg", Charge::used_up, "fuel {substance}"};
inline constexpr NeedKind oxygen{"oxygen", "L", Charge::used_up, "oxygen for {served}"};
inline constexpr NeedKind blanket{"blanket", "pieces", Charge::tool, "insulating blanket"};
inline constexpr NeedKind welding_set{"welding_set", "pieces", Charge::tool, "welding set {size}"};
inline constexpr NeedKind power_supply{"power_supply", "kW", Charge::by_hours, "power supply"};
inline constexpr NeedKind generator_fuel{"generator_fuel", "L", Charge::by_hours, "generator fuel"};
inline constexpr NeedKind plug_rod{"plug_rod", "pieces", Charge::used_up, "plug rods {size}"};
inline constexpr NeedKind drill{"drill", "pieces", Charge::tool, "drill {size}"};
inline constexpr NeedKind fitting{"fitting", "pieces", Charge::used_up, "fittings, hole {size}"};
inline constexpr NeedKind rough_edge{"rough_edge", "pieces", Charge::used_up, "boring edges, rough"};
inline constexpr NeedKind finish_edge{"finish_edge", "pieces", Charge::used_up, "boring edges, finish"};
inline constexpr NeedKind fire_watch{"fire_watch", "pieces", Charge::by_hours, "fire watch, a second person"};
inline constexpr NeedKind extinguisher{"extinguisher", "pieces", Charge::tool, "extinguisher 2-A:20-B:C"};
} // namespace kinds

/// Wire, electrodes and rods: what a bore is filled with.
constexpr bool is_filler(const NeedKind& kind) {
    return kind == kinds::wire || kind == kinds::electrode || kind == kinds::rod;
}

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

/// "3 × 11 kg propane cylinder + 1 × 5 kg propane cylinder"
std::string in_words(const std::vector<PackCount>& packs);

/// One line of what to take: how much, why, and by which rule.
struct Need {
    NeedKind kind = kinds::wire;
    std::string substance = {}; ///< filler "steel/ER70S-6", gas "M21" or fuel "propane" that it is of or for
    NeedSize size = {};
    std::string name = {}; ///< that the table of sticks gives a temperature stick
    double need = 0;       ///< in the unit of the kind, without the reserve
    double reserve = 0;    ///< taken on top
    std::vector<PackCount> cover = {};
    bool pack_known = true;   ///< false: no pack of the table holds it, and the next two mean nothing
    double supplied = 0;      ///< what the packs hold that can be used
    double spare = 0;         ///< supplied over need and reserve
    std::string unknown = {}; ///< why it may not be all that is needed, or no figure at all; empty: it is
    std::string why = {};     ///< with the numbers that made it, in the user's units
    std::string source = {};  ///< key of the rule's source
    std::vector<Working> working = {}; ///< of need, reserve, supplied and spare
};

/// Whether nothing at all is known of how much it is.
inline bool is_unknown(const Need& need) {
    return !need.unknown.empty() && !(need.need > 0);
}

/// Whether it is taken piece by piece, in no pack.
bool comes_singly(const Need& need);

/// "wire:steel/ER70S-6:1.0 mm", "temperature_stick::260 degC": what a need is of, whatever units the job is
/// told in. It is kind:substance:size and stays as it is from version to version: the kind by its own id, the
/// size stands in millimetres, degrees Celsius (degC) or amperes and per cent of duty
/// ("221 A 100 %"), and a part that does not apply is empty. No two needs of a plan share one.
std::string need_id(const Need& need);

/// A part of what a need is called.
struct NamePart {
    enum class Role { kind, substance, serves, size, pack }; ///< serves: the substance that it is used with
    Role role;
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
