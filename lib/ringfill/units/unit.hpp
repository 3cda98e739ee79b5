#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/field.hpp>

namespace ringfill {

/// A unit of one kind of quantity: value in SI = number × factor + zero.
struct Unit {
    std::array<std::string_view, 7> spellings; ///< first the one that messages show; the rest may be empty
    Kind kind;
    double factor;
    double zero = 0;

    std::string_view symbol() const { return spellings.front(); }
};

/// The units of a kind, first the one that messages show.
std::span<const Unit> units_of(Kind kind);

/// The unit of that symbol and kind, or null. Symbols count capitals; where one symbol has several kinds
/// (m for metre only; " for inch only) the kind decides. Without a kind the unit is one of any, for messages
/// about the wrong kind of unit.
const Unit* find_unit(std::string_view symbol, std::optional<Kind> kind = {});

/// All spellings of the units of a kind, first the one that messages show.
std::vector<std::string> symbols_of(Kind kind);

} // namespace ringfill
