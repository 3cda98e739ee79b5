#pragma once

#include <ringfill/material/abi.h>

namespace ringfill::cast_iron {

/// How cast iron is welded. Never by a carbon equivalent: those were made for steel.
enum class Practice {
    cold, ///< nickel or nickel-iron metal: hand-warm, short beads that are peened
    warm, ///< metal of an iron or steel core, which goes hard beside cold iron
    hot,  ///< metal that is cast iron itself: hot through and through, cooled in the furnace
    none, ///< metal that no practice is known for here
};

/// Chooses by the metal that the filler lays, since each goes with one heat only: with 40 % nickel or more it
/// is welded cold; with 2 % carbon or more, and neither nickel nor chromium to speak of, hot; other metal of
/// iron that is no stainless and no manganese steel warm; what is left has no practice here. The limits stand
/// between the groups of AWS A5.15 and steel [common practice, no source]. A filler whose carbon is not known
/// has no practice.
Practice practice_for(const rf_question& question);

/// Whether the iron is nodular, by its magnesium; grey iron holds none.
bool is_nodular(const rf_question& question);

} // namespace ringfill::cast_iron
