#pragma once

#include <optional>
#include <vector>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

// Who rules (section 10 of the computation).
// * The grade's own practice row, its upper end, beside the documents whose own list names the grade; over
// its
//   hydrogen it rises. EN 1011-2 method B is then told.
// * Method B where there is no such row, and for quenched and wear plate whose certificate gives all
// elements;
//   without one such plate goes by its maker's row, or outside that by the higher of row and method B with
//   the CET that it usually has. Where Cr, Mo or Ni lies outside method B, documents alone suffice.
// * A table for structural steel that lists the grade rules alone, with 65 °C at least at a heat input under
//   0.5 kJ/mm and a wall over 19.05 mm [practice].
// * The document that the job works by (welding_rules) rules alone where its list names the grade; elsewhere
//   the field is a caution.
// * A certificate that denies the grade: the higher of the grade's own and method B on the certificate, at
// its
//   edge. Unknown metal with a whole certificate goes by it.
// * Past its last wall a row is the least, beside method B, which joins by 25 K a mm at most.
// * The AWS D1.1 hydrogen-control annex, Séférian and EN 1011-2 Table C.1 are second opinions and never rule.
// * Thickness, CET and heat input outside a range count at its edge; hydrogen never at a lower one. What is
// not
//   known is taken for the worst.
// * What the magnet says, and a certificate of no ferritic steel, stop the work (heat/identity.cpp).
// * The approved procedure rules over all of it; what would be more careful is a caution naming both figures.
// * What the filler's own metal asks for (practice of its row) counts beside what the metal under it does,
// never
//   alone and never on metal that goes by its own practice alone: cast iron, copper, nickel, austenitic. Of a
//   range over 300 °C no more than 300 °C or its lower end counts, and the whole is told.

/// Looks into the tables that list the grade and asks the family's plugin, see preheat(): everything that has
/// a say on the preheat of one case, each method marked whether it may rule.
void gather_methods(Preheat& found, const HeatCase& heat_case);

} // namespace ringfill
