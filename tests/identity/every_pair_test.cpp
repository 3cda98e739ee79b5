// Every base metal with every filler: an answer that holds together, or a refusal that says why.

#include <catch2/catch.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::WithinRel;

namespace {

std::string named(const Family& family, const std::string& row) {
    return family.name + '/' + row;
}

/// Current or feed inside what the table gives for a wire, or usual ones.
std::string settings_of(const Filler& filler, const WireSize& size) {
    const double current = size.window.current ? size.window.current->value.first.value() + 30 : 140;
    const std::string common = fmt::format(R"("current": "{} A", "voltage": "22 V")", current);
    if (filler.form == FillerForm::stick)
        return common;
    if (filler.form == FillerForm::rod)
        return common + R"(, "deposition_rate": "0.6 kg/h")";
    return common + R"(, "wire_feed": "6 m/min")";
}

/// A job for one metal and one filler, a boss of 60 mm wall.
std::string job_text(const std::string& base, const std::string& filler_name, const Filler& filler) {
    const WireSize& size = filler.sizes[filler.sizes.size() / 2];
    const std::string gas =
        filler.gases.empty() ? std::string() : fmt::format(R"("gas": "{}", )", filler.gases.front());
    return fmt::format(R"({{ "format": "ringfill-job/1", "title": "pair", "units": "mm",
"site": {{ "ambient": "15 degC" }},
"procedures": {{ "p": {{ "filler": "{}", "wire": "{} mm", {}{}, "travel": "250 mm/min" }} }},
"bores": [ {{ "name": "b", "base": "{}", "finish_diameter": "90 mm", "length": "60 mm",
             "boss_diameter": "210 mm", "worn": {{ "diameter": "92 mm" }}, "procedure": "p" }} ] }})",
                       filler_name, size.name, gas, settings_of(filler, size), base);
}

/// What must hold of any answer.
void holds_together(const Plan& plan) {
    const BorePlan& bore = plan.bores.at(0);
    const Preheat& preheat = bore.heat.preheat;
    const bool open = preheat.state == PreheatState::needed_without_figure;
    REQUIRE(preheat.state != PreheatState::not_known);
    REQUIRE(preheat.figure().has_value() != open);
    REQUIRE((preheat.interpass_max || open)); // so much over a minimum that nobody knows is not known
    const bool closed =
        preheat.asked != PreheatState::needed_without_figure && preheat.interpass_max &&
        preheat.interpass_max->value.value() - preheat.least()->value() + 1e-6 < least_window_K;
    CHECK((preheat.state == PreheatState::contradictory) == closed);
    CHECK(*preheat.least() >= chill_off);
    if (preheat.interpass_max)
        CHECK(deg_c(preheat.interpass_max->value) <= 700);
    CHECK_FALSE(preheat.methods.empty());
    for (const PreheatMethod& method : preheat.methods)
        CHECK_FALSE(method.source.empty());
    double laid = 0;
    for (const Layer& layer : bore.layers)
        laid += layer.laid.value();
    CHECK_THAT(bore.metal.laid.value(), WithinRel(laid, 1e-9)); // no faces, no grooves
    CHECK_THAT(bore.metal.laid.value() / bore.metal.arc.value(),
               WithinRel(bore.deposition.rate.value(), 1e-9));
    CHECK(plan.totals.wire.value() + plan.totals.piece_mass.value() > bore.metal.laid.value());
}

/// A refusal names its place, its reason and what to do.
void is_reasoned(const Faulty& faulty) {
    REQUIRE_FALSE(faulty.faults().empty());
    for (const Fault& fault : faulty.faults()) {
        CHECK_FALSE(fault.reason.empty());
        CHECK_FALSE(fault.remedy.empty());
    }
}

struct Tally {
    int answered = 0;
    int refused = 0;
    int contradictory = 0;
};

void try_pair(const std::string& base, const std::string& filler_name, const Filler& filler, Tally& tally) {
    INFO(base << " with " << filler_name);
    try {
        const Plan made = plan(testing::job_from(job_text(base, filler_name, filler)), testing::shop());
        holds_together(made);
        ++tally.answered;
        if (made.bores[0].heat.preheat.state == PreheatState::contradictory) {
            ++tally.contradictory;
            CHECK(std::any_of(made.cautions.begin(), made.cautions.end(), [](const Caution& caution) {
                return caution.text.starts_with("Contradictory: needs an approved procedure.");
            }));
        }
    } catch (const Faulty& faulty) {
        is_reasoned(faulty);
        ++tally.refused;
    }
}

} // namespace

TEST_CASE("every base metal with every filler gives an answer that holds together, or a reasoned refusal") {
    Tally tally;
    for (const Family& metals : testing::shop().registry.families())
        for (const Base& base : metals.bases)
            for (const Family& fillers : testing::shop().registry.families())
                for (const Filler& filler : fillers.fillers)
                    try_pair(named(metals, base.name), named(fillers, filler.name), filler, tally);
    INFO(tally.answered << " answered, " << tally.refused << " refused, " << tally.contradictory
                        << " contradictory");
    CHECK(tally.answered >= 45 * 40);
    CHECK(tally.refused == 0); // what does not go together is told in the plan, by a caution
    CHECK(tally.contradictory > 0);
}

TEST_CASE("every family has positive densities, ordered windows and shares of the filler") {
    const auto ordered = [](const auto& range) {
        if (range)
            CHECK(range->value.first < range->value.second);
    };
    for (const Family& family : testing::shop().registry.families()) {
        for (const Base& base : family.bases) {
            INFO(named(family, base.name));
            CHECK(base.density.value.value() > 2'000);
            CHECK(base.density.value.value() < 10'000);
        }
        for (const Filler& filler : family.fillers) {
            INFO(named(family, filler.name));
            CHECK(filler.deposit_density.value.value() > 6'500);
            CHECK(filler.deposit_density.value.value() < 9'500);
            CHECK(filler.efficiency.value > 0.5);
            CHECK(filler.efficiency.value <= 1.0);
            for (const WireSize& size : filler.sizes) {
                ordered(size.window.wire_feed);
                ordered(size.window.current);
                ordered(size.window.travel);
                for (const auto& [transfer, window] : size.windows) {
                    ordered(window.current);
                    ordered(window.wire_feed);
                    ordered(window.voltage);
                }
            }
        }
    }
}
