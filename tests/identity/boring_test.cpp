#include <catch2/catch.hpp>

#include <ringfill/boring/deposit.hpp>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

bool is_skim(const Cut& cut) {
    return cut.kind == CutKind::skim;
}

/// Depth of the cuts before or after the weld together [m].
double depth(const BoringPlan& boring, bool skim) {
    double sum = 0;
    for (const Cut& cut : boring.cuts)
        if (is_skim(cut) == skim)
            sum += cut.depth.value();
    return sum;
}

constexpr double picometre = 1e-12; // m, the rounding of some ten sums

} // namespace

TEST_CASE("cuts add up to the metal there is, follow on one another and end at the finish diameter") {
    for (const std::uint64_t seed : seeds_for(1)) {
        INFO("seed " << seed);
        for (const BorePlan& bore : planned(random_sketch(seed)).bores) {
            const BoringPlan& boring = bore.boring;
            const Length crown = bore.layering.end_radius - bore.bead.valley;
            REQUIRE_THAT(depth(boring, false),
                         WithinAbs((bore.build.finish_radius - crown).value(), picometre));
            REQUIRE_THAT(depth(boring, true),
                         WithinAbs(bore.build.skimmed
                                       ? (bore.build.skim_radius - bore.survey.smallest.radius).value()
                                       : 0.0,
                                   picometre));
            REQUIRE(boring.cuts.back().to == 2.0 * bore.build.finish_radius);
            REQUIRE((boring.cuts.back().kind == CutKind::spring) !=
                    hardens_under_the_edge(boring.settings.deposit.group));
            for (std::size_t i = 0; i < boring.cuts.size(); ++i) {
                const Cut& cut = boring.cuts[i];
                REQUIRE(cut.depth >= Length());
                REQUIRE(cut.depth.value() <= 1.5e-3 + picometre);
                REQUIRE_THAT((cut.to - cut.from).value(), WithinAbs(2 * cut.depth.value(), 4 * picometre));
                if (i > 0 && is_skim(cut) == is_skim(boring.cuts[i - 1]))
                    REQUIRE_THAT((cut.from - boring.cuts[i - 1].to).value(), WithinAbs(0, picometre));
            }
        }
    }
}

TEST_CASE("time is positive and the sum of its parts, each edge cuts no longer than its life") {
    for (const std::uint64_t seed : seeds_for(2)) {
        INFO("seed " << seed);
        for (const BorePlan& bore : planned(random_sketch(seed)).bores) {
            const BoringPlan& boring = bore.boring;
            double cutting = 0;
            for (const Cut& cut : boring.cuts) {
                REQUIRE(cut.time > Time());
                cutting += cut.time.value();
            }
            for (const Facing& face : boring.facing) {
                REQUIRE(face.time > Time());
                cutting += face.time.value();
            }
            REQUIRE(close(cutting, boring.cutting_time.value(), 1e-12));
            REQUIRE(close((boring.edges.rough_time + boring.edges.finish_time).value(), cutting, 1e-12));
            REQUIRE(boring.time() > boring.cutting_time);
            REQUIRE(boring.edges.rough * boring.edges.life.value() >=
                    boring.edges.rough_time.value() * (1 - 1e-8));
            REQUIRE((boring.edges.rough - 1) * boring.edges.life.value() < boring.edges.rough_time.value());
            REQUIRE(boring.edges.finish >= 1);
        }
    }
}

// The job's stock also changes how the layers come out, so here the weld itself is made thicker.
TEST_CASE("more metal to bore never takes less time") {
    for (const std::uint64_t seed : seeds_for(4)) {
        INFO("seed " << seed);
        const Job job = job_from(text_of(random_sketch(seed)));
        const Plan before = plan(job, shop());
        for (std::size_t i = 0; i < before.bores.size(); ++i) {
            const BorePlan& bore = before.bores[i];
            for (const double more : {0.001, 0.1, 0.5, 1.5, 1.6}) {
                BoreWeld thicker = bore;
                thicker.layering.end_radius -= millimetres(more);
                const BoringPlan after = bore_boring(job.bores[i], thicker, bore.boring.settings,
                                                     bore.boring.expansion, shop().size_steps);
                REQUIRE(after.time() >= bore.boring.time());
                REQUIRE(after.edges.rough >= bore.boring.edges.rough);
            }
        }
    }
}
