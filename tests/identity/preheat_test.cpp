#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <random>

#include <ringfill/heat/preheat.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

constexpr int cases = 100'000;

/// A random steel, wall, hydrogen and heat, with or without the rows of a grade of the product's table.
struct Steel {
    Base base;
    HeatCase what;

    Preheat answer() {
        what.base = &base;
        return preheat(what);
    }

    void put(const std::string& element, double percent) {
        for (auto& [name, share] : what.composition)
            if (name == element)
                share = percent;
    }
    double share(const std::string& element) const {
        for (const auto& [name, percent] : what.composition)
            if (name == element)
                return percent;
        return 0;
    }
};

const Family& steel() {
    return family_of(testing::shop().registry, "steel/C45");
}

Steel random_steel(std::mt19937_64& random) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    const auto one_in = [&](int n) { return std::uniform_int_distribution<int>(1, n)(random) == 1; };
    Steel made;
    const auto& bases = steel().bases;
    made.base = bases[std::uniform_int_distribution<std::size_t>(0, bases.size() - 1)(random)];
    if (one_in(2)) { // a steel without rows of its own
        made.base.practice.reset();
        made.base.preheat_groups.clear();
    }
    made.what.family = &steel();
    made.what.filler = &steel().fillers.front();
    made.what.filler_name = "steel/" + made.what.filler->name;
    made.what.composition = {{"C", between(0.02, 0.6)},   {"Si", between(0, 1)},   {"Mn", between(0.2, 2)},
                             {"Cr", between(0, 1.8)},     {"Mo", between(0, 0.8)}, {"Ni", between(0, 2.6)},
                             {"Cu", between(0, 0.6)},     {"V", between(0, 0.2)},  {"B", between(0, 0.005)},
                             {"Nb", one_in(2) ? 0 : 0.03}};
    if (one_in(10))
        made.what.not_the_grade = "the certificate is of another steel";
    if (!one_in(20))
        made.what.wall = millimetres(between(3, 150));
    if (made.what.wall)
        made.what.combined = 2.0 * std::min(*made.what.wall, thick_wall);
    made.what.restraint =
        made.what.wall && *made.what.wall <= rigid_wall ? Restraint::medium : Restraint::high;
    if (!one_in(20))
        made.what.hydrogen_ml_100g = Sourced<double>{between(0.5, 20), "practice"};
    made.what.hydrogen_is_measured = made.what.hydrogen_ml_100g && one_in(4);
    if (!one_in(20))
        made.what.lowest_heat_input = in_si<EnergyPerLength>(between(0.1e6, 5e6));
    made.what.ambient = celsius(between(-30, 40));
    return made;
}

/// EN 1011-2 method B, written here apart from the library, where everything lies in its range.
std::optional<double> method_b(const Steel& steel) {
    const auto in = [&](const char* element, double low, double high) {
        return steel.share(element) >= low && steel.share(element) <= high;
    };
    const HeatCase& what = steel.what;
    if (!what.wall || !what.hydrogen_ml_100g || !what.lowest_heat_input || !in("C", 0.05, 0.32) ||
        !in("Si", 0, 0.8) || !in("Mn", 0.5, 1.9) || !in("Cr", 0, 1.5) || !in("Cu", 0, 0.7) ||
        !in("Mo", 0, 0.75) || !in("Ni", 0, 2.5) || !in("V", 0, 0.18) || !in("Nb", 0, 0.06) ||
        !in("B", 0, 0.005))
        return std::nullopt;
    const double cet = steel.share("C") + (steel.share("Mn") + steel.share("Mo")) / 10 +
                       (steel.share("Cr") + steel.share("Cu")) / 20 + steel.share("Ni") / 40;
    const double d = mm(*what.wall);
    const double hd = what.hydrogen_ml_100g->value;
    const double q = kj_mm(*what.lowest_heat_input);
    if (cet < 0.20 || cet > 0.50 || d < 10 || d > 90 || hd < 1 || hd > 20 || q < 0.5 || q > 4)
        return std::nullopt;
    return 697 * cet + 160 * std::tanh(d / 35) + 62 * std::pow(hd, 0.35) + (53 * cet - 32) * q - 328;
}

/// What decided: the same text means the same path.
std::string path_of(const Preheat& answer) {
    std::string text;
    for (const PreheatMethod& method : answer.methods)
        text += fmt::format("{} {} {} {} {};", method.name, static_cast<int>(method.asks), method.applies,
                            method.in_range, method.note);
    return text;
}

double minimum_of(const Preheat& answer) {
    return deg_c(answer.minimum.value().value);
}

} // namespace

TEST_CASE("no answer is below a method that applies, below the chill-off, or silent about a contradiction") {
    std::mt19937_64 random(20'261'125);
    int held_by_b = 0;
    int contradictory = 0;
    for (int i = 0; i < cases; ++i) {
        Steel one = random_steel(random);
        const Preheat found = one.answer();
        INFO("case " << i << ", " << one.base.name);
        if (!found.minimum || !found.interpass_max)
            FAIL("no figure");
        const double minimum = minimum_of(found);
        if (!(minimum >= 20 - 1e-9 && minimum < 700))
            FAIL("minimum " << minimum);
        for (const PreheatMethod& method : found.methods)
            if (method.applies && method.counts && deg_c(*method.counts) > minimum + 1e-9)
                FAIL(method.name << " asks for " << deg_c(*method.counts) << ", the answer is " << minimum);
        const bool goes_by_rows = one.base.practice || !one.base.preheat_groups.empty();
        if (const auto b = method_b(one); b && !goes_by_rows) {
            ++held_by_b;
            if (*b > minimum + 1e-6)
                FAIL("method B asks for " << *b << ", the answer is " << minimum);
        }
        const double window_K = deg_c(found.interpass_max->value) - minimum;
        if (found.asked != PreheatState::needed_without_figure &&
            (found.state == PreheatState::contradictory) != (window_K + 1e-6 < least_window_K))
            FAIL("minimum " << minimum << " under maximum " << deg_c(found.interpass_max->value));
        contradictory += found.state == PreheatState::contradictory ? 1 : 0;
    }
    CHECK(held_by_b > 1'000);
    CHECK(contradictory > 100);
}

TEST_CASE("along one path the answer rises with carbon, wall and hydrogen") {
    std::mt19937_64 random(31);
    int same_path = 0;
    for (int i = 0; i < cases; ++i) {
        Steel one = random_steel(random);
        const Preheat before = one.answer();
        const int what = i % 3;
        if (what == 0)
            one.put("C", one.share("C") + 0.002);
        else if (what == 1 && one.what.wall) {
            one.what.wall = *one.what.wall + millimetres(0.5);
            one.what.combined = 2.0 * std::min(*one.what.wall, thick_wall);
        } else if (what == 2 && one.what.hydrogen_ml_100g)
            one.what.hydrogen_ml_100g->value += 0.2;
        else
            continue;
        const Preheat after = one.answer();
        if (path_of(before) != path_of(after))
            continue;
        ++same_path;
        if (minimum_of(after) < minimum_of(before) - 1e-9)
            FAIL("case " << i << " falls from " << minimum_of(before) << " to " << minimum_of(after) << " by "
                         << after.minimum->by);
    }
    CHECK(same_path > cases / 4);
}
