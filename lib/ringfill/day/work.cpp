#include <ringfill/day/work.hpp>

namespace ringfill {

Time WorkBlock::length() const {
    Time sum = {};
    for (const WorkStep& step : steps)
        sum += step.length;
    return sum;
}

} // namespace ringfill
