#pragma once

#include <string>
#include <utility>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// One step of nominal size of the tolerance system ISO 286-1.
struct SizeStep {
    std::string name;
    Sourced<Length> over;                                           ///< the nominal size is over this
    Sourced<Length> to;                                             ///< and at most this
    std::vector<std::pair<std::string, Sourced<double>>> grades_um; ///< width of a grade, by its number
    /// Lower deviation of a hole, by its letters; H and JS need none.
    std::vector<std::pair<std::string, Sourced<double>>> deviations_um;
};

/// Reads size_limits.json, file after file; a later file corrects or adds step by step. The steps rise.
/// Throws Faulty (Origin::table), also for a step that ends before it begins.
std::vector<SizeStep> read_size_steps(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
