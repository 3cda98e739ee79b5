#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/planned_work.hpp>
#include <ringfill/material/shop.hpp>

namespace ringfill {

// A value can be possible and still be a slip of the pen. Each rule names the field, what stands there, what
// is usual and what it may have been meant to be; the plan is made all the same (section 13 of the
// computation). A rule is one that a sound job never meets: over the samples not one. To add one, write it
// where its field is judged and its pair of jobs in tests/slips: one with the slip, one without.

/// A value that looks mistyped.
struct Doubt {
    std::string field; ///< its path in the job
    std::string value; ///< what stands there
    std::string usual; ///< "13 V to 40 V for a wire", the rest of "usual is …"
    std::string like;  ///< what it may have been meant to be; may be empty
};

/// "bores[0].length: 9.5 mm looks mistyped: usual is …; meant 95 mm?"
std::string to_string(const Doubt& doubt);

/// Every value of a job that looks mistyped: odd spellings, then in the order of the job.
std::vector<Doubt> doubts(const PlannedWork& work, const Shop& shop);

} // namespace ringfill
