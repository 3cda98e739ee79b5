#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/table/suits.hpp>
#include <ringfill/weld/dilution.hpp>

namespace ringfill {

/// One caution where a filler is not advised on the metal of a bore, wants a buffer, or where no table says
/// anything of the two; none where it is recommended. One that is itself a filler of the buffer is told how
/// its first layer becomes one.
/// @param rule null: no table has one. @param buffer the fillers of the buffer, family/name.
std::vector<Caution> suit_cautions(const WornBore& bore, const Procedure& procedure, const Suit* rule,
                                   const std::vector<std::string>& buffer);

/// One caution where a filler of another family than the bore does not come to its own metal before the
/// finished surface.
std::vector<Caution> dilution_cautions(const WornBore& bore, const Procedure& procedure,
                                       const Dilution& dilution);

} // namespace ringfill
