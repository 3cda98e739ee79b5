#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/survey/skim.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Cautions that follow from the survey and the skim of a bore: too few readings to see the wear, a finished
/// weld so thin that the tool works in the fused line, an uncleaned surface, a thin wall, a groove deeper
/// than the weld.
std::vector<Caution> survey_cautions(const WornBore& bore, const Survey& survey, const Build& build,
                                     UnitSystem units);

} // namespace ringfill
