#pragma once

#include <optional>
#include <string>

#include <ringfill/heat/preheat.hpp>
#include <ringfill/heat/preheat_rows.hpp>

namespace ringfill {

/// The methods so far, and what they leave open.
struct Gathering {
    Preheat& found;
    bool row_rules = false;        ///< a row of practice holds for this metal, wall, hydrogen and heat
    bool named_rules = false;      ///< the document that the job works by holds, and it alone rules
    bool structural_lists = false; ///< a document's table for structural steel lists the grade
    bool structural_rules = false; ///< and it holds for this metal
    bool says_of_grade = false;    ///< a row, or such a table, says what the grade itself asks for
    /// The most that a formula may ask for close past the end of a row: from there on it joins gradually.
    std::optional<Temperature> joins_up_to = {};
};

/// A row as a method that may rule: exact, and as every view shows it.
PreheatMethod row_method(const PreheatGroup& group, const RowAnswer& row, const HeatCase& heat_case);

/// What a table asks for at most.
RowAnswer hottest_row(const PreheatGroup& group);

/// A computed minimum as it counts: rounded up, and hand-warm where it is no more than that.
Temperature counted(Temperature computed, UnitSystem units);

/// The row of the grade's own practice, or the one that stands in its place with this filler. Over its
/// hydrogen a row rises by 62 (H^0.35 - H0^0.35) K, the term of EN 1011-2 method B; that of quenched metal
/// does not, it counts within its own hydrogen and heat input alone. Past its last wall its hottest row is
/// the least.
void add_own_row(Gathering& gathering, const HeatCase& heat_case);

/// The tables of documents: those whose list names the grade may rule, of two categories the one for the
/// hydrogen there is, an older edition or an owner's procedure only where the job names it. The document that
/// the job works by rules alone where its list names the grade. The others are told.
void add_documents(Gathering& gathering, const HeatCase& heat_case);

/// Whether a table of the document that the job works by lists the grade.
bool is_listed_by_named(const HeatCase& heat_case);

/// What the family's rules say: a formula rules where no row of practice and no table for structural steel
/// does, at the edge of its range where it must; second opinions are told.
void add_formula(Gathering& gathering, const HeatCase& heat_case);

} // namespace ringfill
