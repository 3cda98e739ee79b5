#include <ringfill/heat/unknown_metal.hpp>

#include <string_view>
#include <utility>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

constexpr double structural_carbon_pct = 0.25;
constexpr double boron_of_plate_pct = 0.0008;
constexpr double alloy_of_plate_pct = 0.5;

/// What a standard that leaves an element out lets a grade hold of it [EN 10020:2000, table 1; memory].
constexpr std::pair<std::string_view, double> weighed[] = {
    {"C", 0}, {"Cr", 0.30}, {"Mo", 0.08}, {"Ni", 0.30}};

double most_of(const Base& base, std::string_view element, double left_out) {
    const auto* named = value_named(base.composition, element);
    return named ? named->value : left_out;
}

bool may_hold(const Base& base, const Shares& shares) {
    return ranges::all_of(weighed, [&](const auto& limit) {
        return share_of(shares, limit.first) <= most_of(base, limit.first, limit.second) + 1e-9;
    });
}

double alloy_of(const Base& base) {
    return most_of(base, "Cr", 0.30) / 20 + most_of(base, "Mo", 0.08) / 10 + most_of(base, "Ni", 0.30) / 40;
}

} // namespace

const HeatGroup* group_of(const HeatCase& heat_case) {
    std::string name = heat_case.base->heat_group;
    if (heat_case.is_unknown_metal() && heat_case.certified)
        name = share_of(heat_case.composition, "C") <= structural_carbon_pct ? "low_carbon_steel"
                                                                             : "low_alloy_steel";
    const auto& groups = heat_case.family->heat_groups;
    const auto found = ranges::find(groups, name, &HeatGroup::name);
    return found == groups.end() ? nullptr : &*found;
}

bool shows_quenched_plate(const HeatCase& heat_case) {
    const Shares& shares = heat_case.composition;
    if (!heat_case.is_unknown_metal() || !heat_case.certified ||
        share_of(shares, "C") > structural_carbon_pct)
        return false;
    return share_of(shares, "B") >= boron_of_plate_pct ||
           share_of(shares, "Cr") + share_of(shares, "Mo") > alloy_of_plate_pct;
}

const Base* likest_grade(const HeatCase& heat_case) {
    const Base* best = nullptr;
    for (const Base& base : heat_case.family->bases) {
        if (base.name == unknown_metal || !base.practice || base.structure != heat_case.base->structure ||
            !may_hold(base, heat_case.composition))
            continue;
        const auto rank = [](const Base& one) { return std::pair(alloy_of(one), most_of(one, "C", 0)); };
        if (!best || rank(base) < rank(*best))
            best = &base;
    }
    return best;
}

} // namespace ringfill
