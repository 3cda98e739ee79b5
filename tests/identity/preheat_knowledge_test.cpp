#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

#include <fmt/format.h>

#include <ringfill/heat/preheat.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

const Family& steel() {
    return family_of(testing::shop().registry, "steel/C45");
}

/// The answer for a grade of the product's table as it stands.
struct Situation {
    std::string grade;
    std::optional<double> wall_mm;
    std::optional<double> hydrogen;
    bool measured = false;
    std::optional<double> heat_input_kj_mm;
    std::vector<std::pair<std::string, double>> certificate = {};

    double minimum() const {
        WornBore bore;
        bore.composition = certificate;
        if (wall_mm)
            bore.heat_wall = millimetres(*wall_mm);
        Procedure procedure;
        procedure.filler = "steel/ER70S-6";
        Filler filler = *std::find_if(steel().fillers.begin(), steel().fillers.end(),
                                      [](const Filler& one) { return one.name == "ER70S-6"; });
        filler.hydrogen_ml_100g.reset();
        if (hydrogen && measured)
            procedure.hydrogen_ml_100g = hydrogen;
        else if (hydrogen)
            filler.hydrogen_ml_100g = Sourced<double>{*hydrogen, "practice"};
        const Base& base = *std::find_if(steel().bases.begin(), steel().bases.end(),
                                         [&](const Base& one) { return one.name == grade; });
        std::optional<EnergyPerLength> heat;
        if (heat_input_kj_mm)
            heat = in_si<EnergyPerLength>(*heat_input_kj_mm * 1e6);
        const HeatCase what = heat_case(bore, procedure, Site(), steel(), base, filler, std::nullopt, heat);
        return deg_c(preheat(what).minimum.value().value);
    }
};

constexpr int situations = 20'000;

Situation random_situation(std::mt19937_64& random) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    const auto& bases = steel().bases;
    return {bases[std::uniform_int_distribution<std::size_t>(0, bases.size() - 1)(random)].name,
            between(3, 150), between(0.5, 20), std::bernoulli_distribution(0.3)(random), between(0.1, 5)};
}

void never_lower(const Situation& known, const Situation& less_known, const std::string& what) {
    const double before = known.minimum();
    const double after = less_known.minimum();
    INFO(known.grade << ", " << *known.wall_mm << " mm, H " << *known.hydrogen << ", Q "
                     << *known.heat_input_kj_mm << ", " << what);
    REQUIRE(after >= before - 1e-9);
}

} // namespace

TEST_CASE("what is not known never lowers the answer for a grade of the table") {
    std::mt19937_64 random(4140);
    for (int i = 0; i < situations; ++i) {
        const Situation known = random_situation(random);
        Situation less = known;
        less.wall_mm.reset();
        never_lower(known, less, "an unknown wall");
        less = known;
        less.hydrogen.reset();
        never_lower(known, less, "unknown hydrogen");
        less = known;
        less.heat_input_kj_mm.reset();
        never_lower(known, less, "an unknown heat input");
        less = known;
        less.grade = std::string(unknown_metal);
        if (known.grade == "4140")
            never_lower(known, less, "an unknown metal");
    }
}

TEST_CASE("for a grade of the table the answer rises with wall and hydrogen, whatever path it takes") {
    std::mt19937_64 random(77);
    for (int i = 0; i < situations; ++i) {
        const Situation before = random_situation(random);
        Situation after = before;
        after.wall_mm = *before.wall_mm + std::uniform_real_distribution<double>(0, 30)(random);
        never_lower(before, after, fmt::format("a wall of {} mm", *after.wall_mm));
        after = before;
        after.hydrogen =
            std::min(20.0, *before.hydrogen + std::uniform_real_distribution<double>(0, 8)(random));
        never_lower(before, after, fmt::format("hydrogen {}", *after.hydrogen));
    }
}

TEST_CASE("a certificate that denies the grade never asks for less than the grade") {
    std::mt19937_64 random(2'01);
    for (int i = 0; i < situations; ++i) {
        const Situation before = random_situation(random);
        Situation after = before;
        const char* elements[] = {"C", "Mn", "Cr", "Ni", "Mo"};
        const std::string element = elements[std::uniform_int_distribution<int>(0, 4)(random)];
        const Base& base = *std::find_if(steel().bases.begin(), steel().bases.end(),
                                         [&](const Base& one) { return one.name == before.grade; });
        double limit = element == "Mn" ? 1.65 : 0.30;
        for (const auto& [name, percent] : base.composition)
            if (name == element)
                limit = percent.value;
        const double tolerated =
            element == "C" ? limit + 0.02 : 1.1 * limit; // within that it is of the grade
        after.certificate = {{element, tolerated + std::uniform_real_distribution<double>(
                                                       0.001, element == "C" ? 0.2 : 0.5)(random)}};
        never_lower(before, after, fmt::format("{} {} %", element, after.certificate[0].second));
    }
}
