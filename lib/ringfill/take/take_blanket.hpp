#pragma once

#include <string>
#include <vector>

#include <ringfill/take/need.hpp>

namespace ringfill {

/// Whether one bore of the job is kept warm.
struct BlanketUse {
    std::string bore;
    bool preheated = false;
    bool cools_slowly = false;
};

/// One insulating blanket for each bore by name that is preheated or must cool slowly; bores of one name are
/// welded one after the other and share it [common practice, no source]. Nothing when no bore asks for one.
std::vector<Need> take_blanket(const std::vector<BlanketUse>& uses);

} // namespace ringfill
