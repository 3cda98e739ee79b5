#include <catch2/catch.hpp>

#include <ringfill/heat/heat_case.hpp>
#include <ringfill/units/factor.hpp>

using namespace ringfill;

namespace {

struct Metal {
    std::vector<std::pair<std::string, double>> limits;
    std::string group;
};

/// A filler of so much of its elements, on ferritic steel.
HeatCase case_of(const Metal& metal, std::optional<double> wall_mm = std::nullopt) {
    static const Family family;
    static Base base;
    static Filler filler;
    base.structure = "ferritic";
    filler = Filler();
    filler.group = metal.group;
    for (const auto& [element, percent] : metal.limits)
        filler.composition.emplace_back(element, Sourced<double>{percent, "own"});
    const auto wall = wall_mm ? std::optional(millimetres(*wall_mm)) : std::nullopt;
    return heat_case(WornBore(), Procedure(), Site(), family, base, filler, wall, std::nullopt);
}

} // namespace

// Common practice, no source, as heat_case.hpp says: nickel from 40 %; austenitic over 16 % Cr and 7 % Ni;
// foreign from 10 % Mn or over 5 % Al, Sn or Cu; neither over 16 % Cr nor from 2 % C is the metal ferritic.
TEST_CASE("a filler is told by the limits of its metal") {
    CHECK(case_of({{{"Ni", 40}}, ""}).nickel_on_steel);
    CHECK_FALSE(case_of({{{"Ni", 39.9}}, ""}).nickel_on_steel);
    CHECK(case_of({{{"Cr", 16.5}, {"Ni", 7.5}}, ""}).stainless_on_steel);
    CHECK_FALSE(case_of({{{"Cr", 16}, {"Ni", 7.5}}, ""}).stainless_on_steel);
    CHECK_FALSE(case_of({{{"Cr", 16.5}, {"Ni", 7}}, ""}).stainless_on_steel);
    CHECK_FALSE(case_of({{{"Cr", 20}, {"Ni", 40}}, ""}).stainless_on_steel);
    for (const char* element : {"Al", "Sn", "Cu"}) {
        INFO(element);
        CHECK(case_of({{{element, 5.5}}, ""}).foreign_on_steel);
        CHECK_FALSE(case_of({{{element, 5}}, ""}).foreign_on_steel);
        CHECK_FALSE(case_of({{{element, 5.5}, {"Ni", 60}}, ""}).foreign_on_steel);
    }
    CHECK(case_of({{}, "aluminium_bronze_filler"}).foreign_on_steel);
    CHECK(case_of({{{"Mn", 10}}, ""}).foreign_on_steel);
    CHECK_FALSE(case_of({{{"Mn", 9.9}}, ""}).foreign_on_steel);
}

TEST_CASE("a filler holds hydrogen as steel does unless its metal is of another kind") {
    CHECK(case_of({{}, ""}).ferritic_filler);
    CHECK(case_of({{{"Cr", 16}, {"C", 1.9}}, ""}).ferritic_filler);
    CHECK_FALSE(case_of({{{"Cr", 16.5}}, ""}).ferritic_filler);
    CHECK_FALSE(case_of({{{"C", 2}}, ""}).ferritic_filler);
    CHECK_FALSE(case_of({{{"Ni", 40}}, ""}).ferritic_filler);
    CHECK_FALSE(case_of({{{"Mn", 10}}, ""}).ferritic_filler);
}

// Section 10: the combined thickness is twice the wall, at most 100 mm; over 25 mm the restraint is high.
TEST_CASE("the wall governs the combined thickness and the restraint") {
    CHECK(case_of({{}, ""}, 25).combined == millimetres(50));
    CHECK(case_of({{}, ""}, 25).restraint == Restraint::medium);
    CHECK(case_of({{}, ""}, 25.1).restraint == Restraint::high);
    CHECK(case_of({{}, ""}, 49).combined == millimetres(98));
    CHECK(case_of({{}, ""}, 50.5).combined == millimetres(100));
    CHECK_FALSE(case_of({{}, ""}).combined);
    CHECK(case_of({{}, ""}).restraint == Restraint::high);
}

TEST_CASE("a plugin is asked with the hydrogen and whether it was measured") {
    const auto number = [](const HeatCase& what, const std::string& name) -> std::optional<double> {
        for (const auto& [known, value] : question_on("preheat", what).numbers)
            if (known == name)
                return value;
        return std::nullopt;
    };
    HeatCase what = case_of({{}, ""}, 20);
    CHECK(number(what, "hydrogen_is_measured") == 0);
    what.hydrogen_is_measured = true;
    CHECK(number(what, "hydrogen_is_measured") == 1);
    CHECK(number(what, "wall_m") == 0.02);
    CHECK(number(what, "restraint") == 2); // medium, as the interface numbers it
    what.restraint = Restraint::low;
    CHECK(number(what, "restraint") == 1);
    what.restraint = Restraint::high;
    CHECK(number(what, "restraint") == 3);
    CHECK_FALSE(number(what, "grade_is_denied"));
    what.not_the_grade = "C 0.50 % is over the 0.4 % of X";
    CHECK(number(what, "grade_is_denied") == 1);
}
