#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/document.hpp>

namespace ringfill {

/// A figure that safety hangs on and that a later file makes less careful.
struct LoweredFigure {
    std::string field;      ///< its path in the row: practice.rows
    std::string_view words; ///< what it is: "maximum between rings"
    std::string_view unit;  ///< degC for a temperature; empty: it has none
    Value ours;             ///< a number, a flag or a text; null: none
    Value theirs;
};

/// A row, or a single figure of a table that is corrected figure by figure, that a later file puts its own in
/// place of.
struct ReplacedRow {
    std::string file;                ///< that it now stands in
    std::string family;              ///< of a family's table; empty: of one for all
    std::string table;               ///< with the part of it: families/steel.bases, cutting.bars; sticks
    std::string row;                 ///< its name: C45, rough_below_degC
    std::vector<std::string> fields; ///< that differ
    std::vector<LoweredFigure> lowered = {}; ///< of them, those that are less careful now
};

/// What the later ones of a table's files replace, in their order; a row that says the same again is left
/// out. The files need not be sound.
/// @param family whose table it is; empty: one for all
std::vector<ReplacedRow> replaced_rows(const std::vector<Document>& files, const std::string& family = {});

/// What of a row is less careful than the one it takes the place of: lower where more is safer (preheat, gas,
/// hydrogen), higher where less is (temperatures between rings and for cutting, limits of the air), a
/// circumstance of a caution that is gone. Steps by thickness, carbon or strength are compared step by step.
std::vector<LoweredFigure> lowered_figures(std::string_view row, const Value& ours, const Value& theirs);

} // namespace ringfill
