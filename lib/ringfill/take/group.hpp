#pragma once

#include <algorithm>
#include <functional>
#include <numeric>
#include <utility>
#include <vector>

namespace ringfill {

/// The group that is the same, or a new one behind the others.
template <class Group, class IsSame>
Group& group_for(std::vector<Group>& groups, IsSame is_same, Group fresh) {
    const auto known = std::find_if(groups.begin(), groups.end(), is_same);
    return known != groups.end() ? *known : groups.emplace_back(std::move(fresh));
}

/// The group with that key, or a new one.
template <class Group, class Key, class Wanted>
Group& group_by(std::vector<Group>& groups, Key Group::*key, const Wanted& wanted) {
    Group fresh;
    fresh.*key = wanted;
    return group_for(
        groups, [&](const Group& known) { return known.*key == wanted; }, std::move(fresh));
}

/// One number of each, in a list.
template <class Item, class Number>
std::vector<double> each(const std::vector<Item>& items, Number number) {
    std::vector<double> numbers;
    for (const Item& item : items)
        numbers.push_back(static_cast<double>(std::invoke(number, item)));
    return numbers;
}

/// Of so many of each, one as large as its number.
inline double sum_of_products(const std::vector<double>& counts, const std::vector<double>& numbers) {
    return std::inner_product(counts.begin(), counts.end(), numbers.begin(), 0.0);
}

inline double sum(const std::vector<double>& numbers, double start = 0) {
    return std::accumulate(numbers.begin(), numbers.end(), start);
}

} // namespace ringfill
