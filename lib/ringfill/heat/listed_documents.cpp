#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/contains.hpp>

#include <ringfill/heat/gathering.hpp>
#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A table of a document as a method, with what decides whether it rules.
struct ListedBy {
    const PreheatGroup* group;
    PreheatMethod method;
    bool is_listed = false;
    bool is_named = false;
    bool holds = false; ///< for this wall and hydrogen
};

bool is_listed(const Base& base, const std::string& table) {
    return !base.listed_in ||
           ranges::any_of(*base.listed_in, [&](const auto& one) { return one.first == table; });
}

ListedBy listed(const PreheatGroup& group, const HeatCase& heat_case) {
    const auto row = look_up(group, heat_case);
    ListedBy made{&group, row_method(group, row ? *row : hottest_row(group), heat_case)};
    made.is_listed = is_listed(*heat_case.base, group.name);
    made.is_named = !heat_case.rules.document.empty() && group.document == heat_case.rules.document;
    PreheatMethod& method = made.method;
    const bool holds = holds_for_hydrogen(group, heat_case);
    made.holds = row && holds;
    method.in_range = made.holds && !heat_case.not_the_grade;
    method.applies = made.is_listed && (made.is_named || !group.only_if_named);
    if (!made.is_listed)
        method.note = "its own list does not name this grade";
    else if (!method.applies)
        method.note = "it rules only where the job names it";
    else if (!holds)
        method.note = fmt::format("made for hydrogen up to {:.3g} ml/100 g", group.hydrogen_up_to->value);
    else if (heat_case.not_the_grade)
        method.note = fmt::format("the mill certificate is of another steel: {}", *heat_case.not_the_grade);
    return made;
}

/// Of two categories of one document that both hold the one for less hydrogen says it closer.
void keep_the_closer_category(std::vector<ListedBy>& all) {
    for (ListedBy& one : all)
        for (const ListedBy& other : all)
            if (one.method.applies && other.method.applies && one.method.in_range && other.method.in_range &&
                one.group->document == other.group->document && one.group->hydrogen_up_to &&
                other.group->hydrogen_up_to &&
                other.group->hydrogen_up_to->value < one.group->hydrogen_up_to->value) {
                one.method.applies = false;
                one.method.note = "for more hydrogen than there is";
            }
}

} // namespace

bool is_listed_by_named(const HeatCase& heat_case) {
    const Base& base = *heat_case.base;
    return !heat_case.rules.document.empty() &&
           ranges::any_of(heat_case.family->preheat_groups, [&](const PreheatGroup& group) {
               return group.document == heat_case.rules.document &&
                      ranges::contains(base.preheat_groups, group.name) && is_listed(base, group.name);
           });
}

void add_documents(Gathering& gathering, const HeatCase& heat_case) {
    std::vector<ListedBy> all;
    for (const std::string& name : heat_case.base->preheat_groups)
        for (const PreheatGroup& group : heat_case.family->preheat_groups) {
            const bool is_for_filler =
                group.fillers.empty() || ranges::contains(group.fillers, heat_case.filler_name);
            const bool says_nothing = group.hydrogen_over && !holds_for_hydrogen(group, heat_case);
            if (group.name == name && is_for_filler && !says_nothing && !group.in_place_of_practice)
                all.push_back(listed(group, heat_case));
        }
    keep_the_closer_category(all);
    const auto rules = [](const ListedBy& one) { return one.method.applies && one.method.in_range; };
    gathering.named_rules =
        ranges::any_of(all, [&](const ListedBy& one) { return rules(one) && one.is_named; });
    gathering.structural_lists = ranges::any_of(
        all, [](const ListedBy& one) { return one.method.applies && one.holds && one.group->structural; });
    gathering.structural_rules = gathering.structural_lists && !heat_case.not_the_grade;
    gathering.says_of_grade = gathering.structural_lists;
    gathering.found.unlisted_rules = !heat_case.rules.document.empty() && !gathering.named_rules;
    for (ListedBy& one : all) {
        if (gathering.named_rules && !one.is_named && one.method.applies) {
            one.method.applies = false;
            one.method.note = "the job works by " + heat_case.rules.document;
        }
        gathering.found.methods.push_back(std::move(one.method));
    }
}

} // namespace ringfill
