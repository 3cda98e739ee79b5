#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/boring/size_limits.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::WithinAbs;

namespace {

/// The limits of a hole, as far above the nominal size [um].
std::pair<double, double> limits_um(double diameter_mm, const std::string& size_class) {
    WornBore bore;
    bore.finish_diameter = millimetres(diameter_mm);
    bore.size_class = size_class;
    std::vector<Fault> faults;
    const auto limits = size_limits(bore, testing::shop().size_steps, faults);
    REQUIRE(limits);
    return {micrometres(limits->low - bore.finish_diameter),
            micrometres(limits->high - bore.finish_diameter)};
}

struct Row {
    double diameter_mm;
    const char* size_class;
    double low_um;
    double high_um;
};

constexpr double exact = 1e-6; // um, the rounding of a double

/// Standard tolerance unit of a size [um], ISO 286-1, which the table follows within rounding: i = 0.45
/// D^(1/3)
/// + 0.001 D with the geometric mean of the step's ends in mm.
double unit_um(double mean_mm) {
    return 0.45 * std::cbrt(mean_mm) + 0.001 * mean_mm;
}

double mean_mm(const SizeStep& step) {
    return std::sqrt(mm(step.over.value) * mm(step.to.value));
}

double value_of(const std::vector<std::pair<std::string, Sourced<double>>>& list, const std::string& name) {
    for (const auto& [key, value] : list)
        if (key == name)
            return value.value;
    FAIL("no " << name);
    return 0;
}

} // namespace

// Limits of holes as copies of ISO 286 print them beside the table of grades, restated; the last two are from
// Sharma, A Textbook of Production Engineering, example 9.4: IT8 46 and IT7 30 for 50 to 80 mm, companion.
TEST_CASE("ready limits of holes are met") {
    for (const Row& row :
         {Row{60, "H7", 0, 30}, Row{100, "H7", 0, 35}, Row{100, "H8", 0, 54}, Row{200, "H8", 0, 72},
          Row{500, "H9", 0, 155}, Row{75, "H8", 0, 46}, Row{75, "H7", 0, 30}}) {
        INFO(row.diameter_mm << ' ' << row.size_class);
        const auto [low, high] = limits_um(row.diameter_mm, row.size_class);
        CHECK_THAT(low, WithinAbs(row.low_um, exact));
        CHECK_THAT(high, WithinAbs(row.high_um, exact));
    }
}

// Pin bores as service manuals print them, read: 90.043, 110.043 and 120.043 mm, each +- 0.043 mm. That is
// 0 to +86 um, H9 but for a micrometre.
TEST_CASE("the pin bores of service manuals are H9 but for a micrometre") {
    for (const double diameter : {90.0, 110.0, 120.0}) {
        CHECK_THAT(limits_um(diameter, "H9").first, WithinAbs(0, exact));
        CHECK_THAT(limits_um(diameter, "H9").second, WithinAbs(86, 1 + exact));
    }
}

// ISO 286-1: IT5 is 7, IT6 10, IT7 16, IT8 25, IT9 40, IT10 64 and IT11 100 units i; restated. The standard
// rounds, here by 4 % at most.
TEST_CASE("every grade follows the tolerance unit of its size") {
    const std::pair<const char*, double> grades[] = {{"5", 7},  {"6", 10},  {"7", 16},  {"8", 25},
                                                     {"9", 40}, {"10", 64}, {"11", 100}};
    REQUIRE(testing::shop().size_steps.size() == 9);
    for (const SizeStep& step : testing::shop().size_steps)
        for (const auto& [grade, units] : grades) {
            INFO(step.name << ", IT" << grade);
            const double formula = units * unit_um(mean_mm(step));
            CHECK_THAT(value_of(step.grades_um, grade), WithinAbs(formula, std::max(0.04 * formula, 0.5)));
        }
}

// Machine Drawing, table 15.4, read: d 16 D^0.44, e 11 D^0.41, f 5.5 D^0.41, g 2.5 D^0.34 um with the
// geometric mean of the step. The standard rounds to whole micrometres and further; 4 % or 1 um.
TEST_CASE("every deviation follows its formula") {
    struct Formula {
        const char* letter;
        double factor;
        double power;
    };
    for (const SizeStep& step : testing::shop().size_steps)
        for (const Formula& one : {Formula{"D", 16, 0.44}, Formula{"E", 11, 0.41}, Formula{"F", 5.5, 0.41},
                                   Formula{"G", 2.5, 0.34}}) {
            INFO(step.name << ", " << one.letter);
            const double formula = one.factor * std::pow(mean_mm(step), one.power);
            CHECK_THAT(value_of(step.deviations_um, one.letter),
                       WithinAbs(formula, std::max(0.04 * formula, 1.0)));
        }
}

TEST_CASE("the steps follow on one another from 18 to 500 mm") {
    double end = 18;
    for (const SizeStep& step : testing::shop().size_steps) {
        CHECK_THAT(mm(step.over.value), WithinAbs(end, 1e-9));
        end = mm(step.to.value);
    }
    CHECK_THAT(end, WithinAbs(500, 1e-9));
}
