#pragma once

#include <ringfill/document/document.hpp>
#include <ringfill/document/field.hpp>

namespace ringfill {

/// What rows of one kind have in common, by the kind: "bases", and fillers by their form.
extern const Record usual_record;

/// A family's table with what its rows leave out filled in from its own `usual`: a base metal from
/// `usual.bases`, a filler from `usual.<form>`, objects in them member by member. Under `diameters_mm` the
/// members of `any` go into every diameter of the row, those of a diameter into that one; the row's own
/// figures stand. A document without `usual` comes back as it is.
Document with_usual(Document table);

} // namespace ringfill
