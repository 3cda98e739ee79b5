#pragma once

#include <vector>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

/// Everything that has a say on the preheat of one case, each marked whether it may rule.
struct GatheredMethods {
    std::vector<PreheatMethod> methods;
    std::vector<AnsweredFigure> values;
    std::optional<FillerRange> filler_range;
};

/// Looks into the tables that list the grade and asks the family's plugin, see preheat().
GatheredMethods gather_methods(const HeatCase& what);

} // namespace ringfill
