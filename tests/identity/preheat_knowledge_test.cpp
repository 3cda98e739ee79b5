#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

#include <fmt/format.h>

#include <ringfill/heat/preheat.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

using Certificate = std::vector<std::pair<std::string, double>>;

/// The answer for a grade of the product's tables as it stands, with the first filler of its family.
struct Situation {
    const Family* family = nullptr;
    std::string grade;
    std::optional<double> wall_mm;
    std::optional<double> hydrogen;
    bool measured = false;
    std::optional<double> heat_input_kj_mm;
    Certificate certificate = {};

    const Base& base() const {
        return *std::find_if(family->bases.begin(), family->bases.end(),
                             [&](const Base& one) { return one.name == grade; });
    }

    HeatCase what(const Filler& filler) const {
        WornBore bore;
        bore.composition = certificate;
        if (wall_mm)
            bore.heat_wall = millimetres(*wall_mm);
        Procedure procedure;
        procedure.filler = family->name + "/" + filler.name;
        if (hydrogen && measured)
            procedure.hydrogen_ml_100g = hydrogen;
        std::optional<EnergyPerLength> heat;
        if (heat_input_kj_mm)
            heat = in_si<EnergyPerLength>(*heat_input_kj_mm * 1e6);
        return heat_case(bore, procedure, Site(), *family, base(), filler, std::nullopt, heat);
    }

    double minimum() const {
        Filler filler = family->fillers.front();
        filler.hydrogen_ml_100g.reset();
        if (hydrogen && !measured)
            filler.hydrogen_ml_100g = Sourced<double>{*hydrogen, "practice"};
        return deg_c(preheat(what(filler)).minimum.value().value);
    }
};

constexpr int situations = 20'000;

Situation random_situation(std::mt19937_64& random) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    static const Registry::Families families = testing::shop().registry.families();
    static const std::vector<std::pair<const Family*, std::string>> grades = [] {
        std::vector<std::pair<const Family*, std::string>> all;
        for (const Family& family : families)
            for (const Base& base : family.bases)
                all.emplace_back(&family, base.name);
        return all;
    }();
    const auto& [family, grade] =
        grades[std::uniform_int_distribution<std::size_t>(0, grades.size() - 1)(random)];
    return {
        family,         grade, between(3, 150), between(0.5, 30), std::bernoulli_distribution(0.3)(random),
        between(0.1, 5)};
}

void never_lower(const Situation& known, const Situation& less_known, const std::string& what) {
    const double before = known.minimum();
    const double after = less_known.minimum();
    INFO(known.grade << ", " << *known.wall_mm << " mm, H " << *known.hydrogen << ", Q "
                     << *known.heat_input_kj_mm << ", " << what);
    REQUIRE(after >= before - 1e-9);
}

/// The most of an element that the grade may hold [%]; what its standard leaves out as low-alloy steel has
/// it.
double most_of(const Base& base, const std::string& element) {
    for (const auto& [name, percent] : base.composition)
        if (name == element)
            return percent.value;
    return element == "Mn" ? 1.65 : 0.30;
}

/// The least of the maxima that a grade's standard gives of an element, over all thicknesses; of one that it
/// leaves out what is usual [%].
double least_maximum(const Base& base, const std::string& element) {
    for (const auto& [name, residual] :
         {std::pair("Cr", 0.15), {"Mo", 0.04}, {"Ni", 0.15}, {"Cu", 0.25}, {"V", 0.02}})
        if (name == element && std::none_of(base.composition.begin(), base.composition.end(),
                                            [&](const auto& named) { return named.first == element; }))
            return residual;
    double least = most_of(base, element);
    for (const LadleRow& row : base.by_thickness)
        for (const auto& [name, percent] : row.composition)
            if (name == element)
                least = std::min(least, percent.value);
    return least;
}

/// A certificate that is whole and within every limit of the grade; empty where it would pass the cap of its
/// carbon equivalent.
Certificate certificate_within(const Base& base, std::mt19937_64& random) {
    Certificate made;
    double carbon_equivalent = 0;
    for (const auto& [element, weight] : {std::pair("C", 1.0),
                                          {"Mn", 1.0 / 6},
                                          {"Cr", 0.2},
                                          {"Mo", 0.2},
                                          {"Ni", 1.0 / 15},
                                          {"Cu", 1.0 / 15},
                                          {"V", 0.2}}) {
        const double share = std::uniform_real_distribution<double>(0.7, 1)(random);
        made.emplace_back(element, share * least_maximum(base, element));
        carbon_equivalent += weight * made.back().second;
    }
    for (const ThicknessRow& row : base.cev_max)
        if (carbon_equivalent > row.value)
            return {};
    return made;
}

} // namespace

TEST_CASE("what is not known never lowers the answer for a grade of the tables") {
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

TEST_CASE("for a grade of the tables the answer rises with wall and hydrogen, whatever path it takes") {
    std::mt19937_64 random(77);
    for (int i = 0; i < situations; ++i) {
        const Situation before = random_situation(random);
        Situation after = before;
        after.wall_mm = *before.wall_mm + std::uniform_real_distribution<double>(0, 30)(random);
        never_lower(before, after, fmt::format("a wall of {} mm", *after.wall_mm));
        after = before;
        after.hydrogen =
            std::min(30.0, *before.hydrogen + std::uniform_real_distribution<double>(0, 8)(random));
        never_lower(before, after, fmt::format("hydrogen {}", *after.hydrogen));
    }
}

TEST_CASE("a certificate that denies the grade never asks for less than the grade") {
    std::mt19937_64 random(2'01);
    int asked = 0;
    for (int i = 0; i < situations; ++i) {
        const Situation before = random_situation(random);
        if (before.base().structure != "ferritic")
            continue;
        Situation after = before;
        const char* elements[] = {"C", "Mn", "Cr", "Ni", "Mo"};
        const std::string element = elements[std::uniform_int_distribution<int>(0, 4)(random)];
        const double limit = most_of(before.base(), element);
        const double tolerated =
            element == "C" ? limit + 0.02 : 1.1 * limit; // within that it is of the grade
        after.certificate = {{element, tolerated + std::uniform_real_distribution<double>(
                                                       0.001, element == "C" ? 0.2 : 0.5)(random)}};
        if (after.what(after.family->fillers.front()).doubt)
            continue; // it is no ferritic steel at all: no figure is given
        ++asked;
        never_lower(before, after, fmt::format("{} {} %", element, after.certificate[0].second));
    }
    CHECK(asked > situations / 2);
}

// Within its standard every element that the certificate leaves out counts with the most that it may be.
// Quenched plate is left out: a certificate that is whole takes the place of its row.
TEST_CASE("an element that the certificate leaves out never lowers the answer") {
    std::mt19937_64 random(12);
    int asked = 0;
    for (int i = 0; i < situations; ++i) {
        Situation known = random_situation(random);
        if (known.base().structure != "ferritic" || known.grade == unknown_metal ||
            known.what(known.family->fillers.front()).is_quenched())
            continue;
        known.certificate = certificate_within(known.base(), random);
        if (known.certificate.empty())
            continue;
        ++asked;
        Situation less = known;
        const auto left_out = std::uniform_int_distribution<std::ptrdiff_t>(0, 6)(random);
        const std::string element = less.certificate[static_cast<std::size_t>(left_out)].first;
        less.certificate.erase(less.certificate.begin() + left_out);
        never_lower(known, less, element + " left out");
    }
    CHECK(asked > situations / 5);
}
