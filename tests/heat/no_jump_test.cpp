#include <catch2/catch.hpp>

#include <set>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// Where a printed table steps between two of its rows, or section 10 names the step in figures [mm].
std::set<double> printed_steps(const Base& base, const Family& family) {
    std::set<double> steps = {19.05};
    const auto add = [&](const PreheatGroup& group) {
        for (std::size_t i = 0; i + 1 < group.rows.size(); ++i)
            if (group.rows[i].up_to)
                steps.insert(mm(group.rows[i].up_to->value));
    };
    if (base.practice)
        add(*base.practice);
    for (const PreheatGroup& group : family.preheat_groups)
        for (const std::string& name : base.preheat_groups)
            if (group.name == name)
                add(group);
    for (const ThicknessRow& row : base.typical_cet)
        if (row.up_to_mm)
            steps.insert(*row.up_to_mm);
    return steps;
}

bool steps_between(const std::set<double>& steps, double low, double high) {
    const auto next = steps.lower_bound(low - 1e-6);
    return next != steps.end() && *next < high;
}

bool acts(const Preheat& preheat) {
    return preheat.state == PreheatState::figure || preheat.state == PreheatState::none;
}

void never_jumps(const AskedCase& before, const AskedCase& after) {
    const Preheat low = before.preheat();
    const Preheat high = after.preheat();
    if (!acts(low) || !acts(high))
        return;
    const double from = deg_c(low.minimum->value);
    const double to = deg_c(high.minimum->value);
    if (to - from > 30 + 1e-9 || to < from - 1e-9)
        FAIL(before.base << " of " << *before.wall_mm << " mm at " << before.hydrogen << " ml: " << from
                         << " to " << to << " °C at " << *after.wall_mm << " mm, " << after.hydrogen
                         << " ml");
}

} // namespace

// 1 mm of wall, ends of tables included.
TEST_CASE("no grade jumps by more than 30 K for a millimetre of wall, and none falls") {
    const Family& family = family_of(shop().registry, "steel/C45");
    for (const Base& base : family.bases) {
        const std::set<double> steps = printed_steps(base, family);
        for (const double hydrogen : {5.0, 12.0})
            for (double wall = 8; wall < 96; wall += 1)
                if (!steps_between(steps, wall, wall + 1))
                    never_jumps({.base = "steel/" + base.name, .wall_mm = wall, .hydrogen = hydrogen},
                                {.base = "steel/" + base.name, .wall_mm = wall + 1, .hydrogen = hydrogen});
    }
}

// Half a millilitre; the low-hydrogen categories of AWS D1.1 end at 8 and 16 ml/100 g and are another table
// over it, and the row for consumables of the plate's strength at 5.
TEST_CASE("no grade jumps by more than 30 K for half a millilitre of hydrogen, and none falls") {
    for (const Base& base : family_of(shop().registry, "steel/C45").bases)
        for (const double wall : {24.0, 59.0})
            for (double hydrogen = 2; hydrogen < 22; hydrogen += 0.5) {
                const bool by_category = base.name.starts_with("A36") || base.name.starts_with("A572") ||
                                         base.name.starts_with("A913");
                if (by_category && (hydrogen == 8 || hydrogen == 16))
                    continue;
                never_jumps({.base = "steel/" + base.name, .wall_mm = wall, .hydrogen = hydrogen},
                            {.base = "steel/" + base.name, .wall_mm = wall, .hydrogen = hydrogen + 0.5});
            }
}

TEST_CASE("no grade of structural steel jumps by more than 30 K for 0.01 % of carbon on its certificate") {
    for (const char* base : {"steel/S235JR", "steel/S355J2", "steel/1018", "steel/S690QL", "steel/A514-B"})
        for (double carbon = 0.06; carbon < 0.20; carbon += 0.01)
            for (const double wall : {12.0, 42.0})
                never_jumps({.base = base, .wall_mm = wall, .certificate = certificate(carbon, 1.0)},
                            {.base = base, .wall_mm = wall, .certificate = certificate(carbon + 0.01, 1.0)});
}
