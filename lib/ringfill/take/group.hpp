#pragma once

#include <algorithm>
#include <vector>

namespace ringfill {

/// The group that is the same, or a new one behind the others.
template <class Group, class IsSame, class Make>
Group& group_for(std::vector<Group>& groups, IsSame is_same, Make make) {
    const auto known = std::find_if(groups.begin(), groups.end(), is_same);
    return known != groups.end() ? *known : groups.emplace_back(make());
}

} // namespace ringfill
