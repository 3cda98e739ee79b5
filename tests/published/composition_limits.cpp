#include <catch2/catch.hpp>

#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include "published/composition_limits.hpp"
#include "shop_for_tests.hpp"

namespace ringfill::testing {

namespace {

/// Every element within its limits; an element that the limits do not name is a slip.
void check_within(const Composition& composition, const GradeLimits& limits, double slack) {
    for (const auto& [element, percent] : composition) {
        const auto found = ranges::find(limits.elements, element, &ElementLimit::element);
        INFO(limits.standard << ", " << limits.name << ": " << element << ' ' << percent.value << " %");
        REQUIRE(found != limits.elements.end());
        CHECK(percent.value >= found->low - slack);
        CHECK(percent.value <= found->high + slack);
    }
}

} // namespace

std::vector<ElementLimit> parse_limits(std::string_view text) {
    std::vector<ElementLimit> limits;
    while (!text.empty()) {
        const std::string one(text.substr(0, text.find(',')));
        text.remove_prefix(std::min(text.size(), one.size() + 2));
        const auto first = one.find(' ');
        const auto second = one.find(' ', first + 1);
        limits.push_back({one.substr(0, first), std::stod(one.substr(first + 1, second)),
                          std::stod(one.substr(second + 1))});
    }
    return limits;
}

std::vector<Stated> all_stated() {
    std::vector<Stated> all;
    for (const Family& family : shop().registry.families()) {
        for (const Base& base : family.bases)
            all.push_back(
                {family.name + "/" + base.name, &base.composition, &base.composition_min, &base.typical});
        for (const Filler& filler : family.fillers)
            all.push_back({family.name + "/" + filler.name, &filler.composition, nullptr, &filler.typical});
    }
    return all;
}

const std::vector<GradeLimits>& all_limits() {
    static const std::vector<GradeLimits> all = [] {
        std::vector<GradeLimits> made = steel_limits();
        for (const auto& more : {other_base_limits(), filler_limits(), hardfacing_limits()})
            made.insert(made.end(), more.begin(), more.end());
        return made;
    }();
    return all;
}

std::size_t judge(const std::string& standard) {
    std::size_t judged = 0;
    for (const GradeLimits& limits : all_limits()) {
        if (limits.standard != standard)
            continue;
        const auto all = all_stated();
        const auto stated =
            std::find_if(all.begin(), all.end(), [&](const Stated& one) { return one.name == limits.name; });
        INFO(limits.name);
        REQUIRE(stated != all.end());
        CHECK(stated->limits->size() + stated->typical->size() > 0);
        check_within(*stated->limits, limits, 1e-9);
        check_within(*stated->typical, limits, 1e-9);
        if (stated->least)
            check_within(*stated->least, limits, 1e-9);
        ++judged;
    }
    return judged;
}

} // namespace ringfill::testing
