#include <catch2/catch.hpp>

#include <set>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

constexpr double most_jump_K = 30;

/// Every grade of every family, with a filler of its own family.
std::vector<AskedCase> every_grade() {
    std::vector<AskedCase> all;
    for (const Family& family : shop().registry.families())
        for (const Base& base : family.bases)
            all.push_back({.base = family.name + "/" + base.name,
                           .filler = family.name + "/" + family.fillers.front().name});
    return all;
}

std::vector<PreheatGroup> tables_of(const AskedCase& grade) {
    const HeatCase what = grade.what();
    std::vector<PreheatGroup> all;
    if (what.base->practice)
        all.push_back(*what.base->practice);
    for (const PreheatGroup& group : what.family->preheat_groups)
        if (std::count(what.base->preheat_groups.begin(), what.base->preheat_groups.end(), group.name))
            all.push_back(group);
    return all;
}

/// Where a printed table of the grade steps between two of its rows [mm].
std::set<double> steps_of_wall(const AskedCase& grade) {
    std::set<double> steps;
    for (const PreheatGroup& table : tables_of(grade))
        for (std::size_t i = 0; i + 1 < table.rows.size(); ++i)
            if (table.rows[i].up_to)
                steps.insert(mm(table.rows[i].up_to->value));
    for (const ThicknessRow& row : grade.what().base->typical_cet)
        if (row.up_to_mm)
            steps.insert(*row.up_to_mm);
    return steps;
}

/// Where a printed category for structural steel ends [ml/100 g]: the next one takes over, and over the last,
/// or over category C, which has no next, method B.
std::set<double> steps_of_hydrogen(const AskedCase& grade) {
    std::set<double> steps;
    for (const PreheatGroup& table : tables_of(grade))
        if (table.structural && table.hydrogen_up_to)
            steps.insert(table.hydrogen_up_to->value);
    return steps;
}

bool steps_between(const std::set<double>& steps, double low, double high) {
    const auto next = steps.lower_bound(low - 1e-6);
    return next != steps.end() && *next < high;
}

bool acts(const Preheat& preheat) {
    return preheat.state == PreheatState::figure || preheat.state == PreheatState::none;
}

/// An answer with what it was asked for.
struct Told {
    AskedCase asked;
    Preheat preheat;
};

Told told(const AskedCase& asked) {
    return {asked, asked.preheat()};
}

void never_jumps(const Told& before, const Told& after, bool may_step = false) {
    if (!acts(before.preheat) || !acts(after.preheat))
        return;
    const double from = deg_c(before.preheat.minimum->value);
    const double to = deg_c(after.preheat.minimum->value);
    const auto carbon = [](const Told& one) {
        return one.asked.certificate.empty() ? 0 : one.asked.certificate.front().second;
    };
    if (to < from - 1e-9 || (!may_step && to - from > most_jump_K + 1e-9))
        FAIL(before.asked.base << ": " << from << " °C at " << *before.asked.wall_mm << " mm, "
                               << before.asked.hydrogen << " ml, C " << carbon(before) << " %; " << to
                               << " °C at " << *after.asked.wall_mm << " mm, " << after.asked.hydrogen
                               << " ml, C " << carbon(after) << " %");
}

} // namespace

// 1 mm of wall, ends of tables included.
TEST_CASE("no grade jumps by more than 30 K for a millimetre of wall, and none falls") {
    for (AskedCase grade : every_grade()) {
        const std::set<double> steps = steps_of_wall(grade);
        for (const double hydrogen : {5.0, 12.0}) {
            grade.hydrogen = hydrogen;
            grade.wall_mm = 4.2;
            Told before = told(grade);
            for (double wall = 5.2; wall < 125; wall += 1) {
                grade.wall_mm = wall;
                Told after = told(grade);
                never_jumps(before, after, steps_between(steps, wall - 1, wall));
                before = std::move(after);
            }
        }
    }
}

// Half a millilitre, to where figures end. What plate bears is kept to up to 5 ml/100 g alone, the other step
// that is told in figures.
TEST_CASE("no grade jumps by more than 30 K for half a millilitre of hydrogen, and none falls") {
    for (AskedCase grade : every_grade()) {
        std::set<double> steps = steps_of_hydrogen(grade);
        if (grade.what().is_quenched())
            steps.insert(5);
        for (const double wall : {12.0, 24.0, 59.0}) {
            grade.wall_mm = wall;
            grade.hydrogen = 0.5;
            Told before = told(grade);
            for (double hydrogen = 1; hydrogen <= 30; hydrogen += 0.5) {
                grade.hydrogen = hydrogen;
                Told after = told(grade);
                never_jumps(before, after, steps_between(steps, hydrogen - 0.5, hydrogen));
                before = std::move(after);
            }
        }
    }
}

// Beyond 0.02 % over its most carbon, and far under its least, a certificate is of another steel: steps that
// are told in figures. Unknown metal is no grade: where no known one holds so much the hottest row stands for
// it.
TEST_CASE("no grade jumps by more than 30 K for 0.01 % of carbon on its certificate, and none falls") {
    const auto with_carbon = [](double carbon, bool full) {
        return full ? certificate(carbon, 0.8, 0.5, 0.2, 0.3) : Certificate{{"C", carbon}};
    };
    for (AskedCase grade : every_grade()) {
        if (grade.what().base->structure != "ferritic")
            continue;
        const bool may_step = grade.what().is_unknown_metal();
        for (const double wall : {12.0, 42.0})
            for (const bool full : {false, true}) {
                grade.wall_mm = wall;
                grade.certificate = with_carbon(0.05, full);
                Told before = told(grade);
                for (double carbon = 0.06; carbon < 0.56; carbon += 0.01) {
                    grade.certificate = with_carbon(carbon, full);
                    Told after = told(grade);
                    if (before.asked.what().not_the_grade.has_value() ==
                        after.asked.what().not_the_grade.has_value())
                        never_jumps(before, after, may_step);
                    before = std::move(after);
                }
            }
    }
}
