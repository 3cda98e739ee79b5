#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/field.hpp>

namespace ringfill {

/// A unit as people write it, of one kind of quantity: value in SI = number × factor + zero.
struct Unit {
    std::string_view symbol;
    Kind kind;
    double factor;
    double zero = 0;
};

/// The unit of that symbol and kind, or nothing. Symbols count capitals; where one symbol has several kinds
/// (m for metre only; " for inch only) the kind decides.
std::optional<Unit> find_unit(std::string_view symbol, Kind kind);

/// The unit of that symbol whatever its kind, for messages about the wrong kind of unit.
std::optional<Unit> find_unit(std::string_view symbol);

/// The symbols of a kind, first the one that messages show.
std::vector<std::string> symbols_of(Kind kind);

} // namespace ringfill
