#include <catch2/catch.hpp>

#include <ringfill/units/metric.hpp>

#include "fault_figures.hpp"
#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

const std::string procedure = usual + R"(, "wire_feed": "8 m/min")";

Plan planned(const std::string& bore_fields, const std::string& boring) {
    return plan(job_from(job_text(procedure, bore_text("arm root", bore_fields),
                                  boring.empty() ? "" : ", \"boring\": {" + boring + "}")),
                shop());
}

BoringPlan boring_of(const std::string& bore_fields, const std::string& boring) {
    return planned(bore_fields, boring).bores.front().boring;
}

/// What the job is refused with.
Lines refused(const std::string& boring) {
    try {
        planned("", boring);
    } catch (const Faulty& faulty) {
        CHECK(faulty.origin() == Origin::job);
        return in_figures(faulty.faults());
    }
    return {};
}

} // namespace

// Section 11, worked by hand: 106 mm welded, 0.2 mm a turn at 160 rev/min, which is the highest that does not
// pass 50 m/min on 90 mm (176.8).
TEST_CASE("the bar settings of the job are used throughout") {
    const BoringPlan boring = boring_of("", R"("bar_speeds": ["160 rev/min", "200 rev/min"],
        "cutting_speed": "50 m/min", "feed": "0.2 mm", "rough_cut": "1 mm", "edge_life": "9 min")");
    CHECK_THAT(rev_min(boring.bar.used), WithinRel(160.0, 1e-12));
    for (const Cut& cut : boring.cuts) {
        CHECK(cut.depth <= millimetres(1.0000001));
        CHECK(cut.bar.used == boring.bar.used); // the job's own speed holds in the skin too
        CHECK_THAT(cut.time.value(), WithinRel(60.0 * (cut.kind == CutKind::skim ? 100 : 106) / 32, 1e-12));
    }
    CHECK(boring.cuts.back().kind == CutKind::spring);
    CHECK_THAT(mm(boring.cuts.back().to), WithinAbs(90, 1e-12));
    // Skim 45.2 … 47.6 mm: the worn radius lies from 46.7 − 0.4 to 46.7 + 0.4, the skim goes 0.5 deeper.
    CHECK_THAT(mm(boring.cuts.front().from), WithinAbs(2 * 46.3, 1e-9));
    CHECK(boring.skim_time.value() == 2 * 60 * 100.0 / 32);
    const double cuts_after = static_cast<double>(boring.cuts.size() - 2);
    CHECK_THAT(boring.edges.rough_time.value(), WithinRel((cuts_after - 2) * 198.75 + 375, 1e-12));
    CHECK(boring.edges.finish == 1);
}

TEST_CASE("the figures of the table fill what the job leaves out, and are listed as assumed") {
    const Plan whole = planned("", "");
    std::vector<std::string> assumed;
    for (const Assumed& one : whole.assumed)
        if (one.path.starts_with("boring") || one.path.starts_with("cutting"))
            assumed.push_back(one.path + ": " + one.value + " [" + one.source + "]");
    CHECK(assumed == Lines{"boring.cutting_speed: 60 m/min (30 m/min to 100 m/min), mild deposit, carbide "
                           "[practice]",
                           "cutting.json skin_speed_m_min: 45 m/min, mild deposit, carbide [practice]",
                           "boring.feed: 0.15 mm (0.05 mm to 0.20 mm), mild deposit, carbide [practice]",
                           "boring.rough_cut: 1.50 mm [practice]",
                           "boring.edge_life: 20 min (10 min to 45 min), mild deposit, carbide [practice]",
                           "cutting.json semi_finish_cut_mm: 0.50 mm [practice]",
                           "cutting.json finish_cut_mm: 0.25 mm [practice]",
                           "cutting.json nose_radius_mm: 0.80 mm [practice]",
                           "cutting.json expansion_per_K: 1.2e-05 [practice]"});
}

TEST_CASE("a bore longer than the stroke moves the bar and sets the bit anew") {
    const BoringPlan one = boring_of("", R"("stroke": "106 mm")");
    const BoringPlan three = boring_of("", R"("stroke": "50 mm")");
    CHECK(one.set_ups == 1);
    CHECK(three.set_ups == 3);
    CHECK(three.cutting_time == one.cutting_time);
    const auto pieces = [](const BoringPlan& boring, const std::string& step) {
        int count = 0;
        for (const Standing& standing : boring.standing)
            if (standing.step == step)
                count = standing.count;
        return count;
    };
    CHECK(pieces(one, "bar_move") == 0);
    CHECK(pieces(three, "bar_move") ==
          3); // two for the welded length, one for the skim // twice before the weld, twice after it
    CHECK(pieces(three, "tool_set") == 3 * pieces(one, "tool_set"));
    CHECK(pieces(one, "trim") == 2);
    CHECK(pieces(one, "hole") == 0);
}

TEST_CASE("holes, grooves and faces have their standing times, faces are cut to their outer edge") {
    const BoringPlan boring =
        boring_of(R"(, "faces": [{ "inner": "90 mm", "outer": "150 mm", "build": "2 mm" }],
        "grooves": [{ "diameter": "94 mm", "width": "4 mm" }], "overhang": "0 mm",
        "holes": [{ "diameter": "8 mm", "depth": "20 mm", "clock": "0 deg" }])",
                  "");
    std::vector<std::string> steps;
    for (const Standing& standing : boring.standing)
        steps.push_back(std::string(standing.step) + ' ' + std::to_string(standing.count));
    CHECK(std::vector<std::string>(steps.begin() + 1, steps.end()) ==
          Lines{"chamfer 2", "groove 1", "hole 1", "facing_head 1"});
    REQUIRE(boring.facing.size() == 1);
    // 60 m/min on 150 mm, 30 mm across at 0.127 mm a turn.
    const double rpm = 60'000 / (150 * 3.14159265358979323846);
    CHECK_THAT(rev_min(boring.facing.front().bar.used), WithinRel(rpm, 1e-12));
    CHECK_THAT(boring.facing.front().time.value(),
               WithinRel(boring.facing.front().cuts * 60 * 30 / (0.127 * rpm), 1e-12));
}

TEST_CASE("without a skim nothing is cut before the weld") {
    const BoringPlan boring = boring_of(R"(, "skim": "none")", "");
    CHECK(boring.cuts.front().kind != CutKind::skim);
    CHECK(boring.skim_time == Time());
    for (const Standing& standing : boring.standing)
        CHECK(standing.step != "bar_move");
}

TEST_CASE("settings that make far too many cuts, set-ups or edges are refused") {
    CHECK(refused(R"("rough_cut": "0.001 mm")") == Lines{"boring.rough_cut: 100"});
    CHECK(refused(R"("stroke": "0.1 mm")") == Lines{"boring.stroke: 100"});
    CHECK(refused(R"("edge_life": "0.06 s")") == Lines{"boring.edge_life: 10000"});
}

TEST_CASE("the workings of the edges are fed with the times of the cuts") {
    const Plan whole = planned("", "");
    const Edges& edges = whole.bores.front().boring.edges;
    int seen = 0;
    for (const Working& work : whole.working) {
        const bool rough = work.figure.ends_with("boring.edges_rough");
        if (!rough && !work.figure.ends_with("boring.edges_finish"))
            continue;
        ++seen;
        double sum = 0;
        for (const double time : work.inputs.at(0).values())
            sum += time;
        CHECK_THAT(sum, WithinRel((rough ? edges.rough_time : edges.finish_time).value(), 1e-12));
        CHECK(work.inputs.at(1).values().at(0) == edges.life.value());
    }
    CHECK(seen == 2);
}
