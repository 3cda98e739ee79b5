#include <catch2/catch.hpp>

#include <cmath>

#include <filesystem>

#include <ringfill/boring/bar.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/units/metric.hpp>

#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// The plan of one bore, worn by 3.4 mm.
Plan planned(double finish_mm, const std::string& bore_fields, const std::string& boring) {
    const std::string bore =
        fmt::format(R"({{ "name": "arm root", "base": "steel/C45", "finish_diameter": "{} mm",
            "length": "100 mm", "worn": {{ "diameter": "{} mm" }}{} }})",
                    finish_mm, finish_mm + 3.4, bore_fields);
    return plan(
        job_from(job_text(usual + R"(, "wire_feed": "8 m/min")", bore, ", \"boring\": {" + boring + "}")),
        shop());
}

/// Its notes on the boring.
Lines notes_of(double finish_mm, const std::string& bore_fields, const std::string& boring) {
    const Plan found = planned(finish_mm, bore_fields, boring);
    Lines notes;
    for (const std::string& note : found.notes)
        for (const char* about : {"portable bars", "first cut", "set-ups", "step of the bit", "bored to",
                                  "cut again", "bar_speeds", "roughness"})
            if (note.find(about) != std::string::npos)
                notes.push_back(note);
    return notes;
}

// Rough cuts that leave no thin remainder.
const std::string deep = R"("rough_cut": "2 mm")";
const std::string listed = deep + R"(, "bar_speeds": ["80 rev/min", "200 rev/min"])";

} // namespace

// Common practice, no source: small electric bars turn about 100 to 400 rev/min, large hydraulic ones 20 to
// 180, feed along the bore 0 to 2.5 in/min, bores of 1.5 to 36 in. The invented jobs are usual ones.
TEST_CASE("usual jobs are bored as portable bars can") {
    std::size_t bores = 0;
    for (const auto& file : std::filesystem::directory_iterator(std::string(RINGFILL_ROOT) + "/cli/demo")) {
        if (file.path().extension() != ".json")
            continue;
        const Plan whole = plan(job_from(read_whole(file.path().string(), job_file_limit)), shop());
        for (const BorePlan& bore : whole.bores) {
            INFO(file.path() << ' ' << bore.name);
            ++bores;
            const double rpm = rev_min(bore.boring.bar.used);
            CHECK(((rpm >= 100 && rpm <= 420) || (rpm >= 20 && rpm <= 180)));
            CHECK(mm_min(feed_rate(bore.boring.settings.feed.value, bore.boring.bar.used)) <= 2.5 * 25.4);
            CHECK(mm(bore.boring.final_diameter) >= 1.5 * 25.4);
            CHECK(mm(bore.boring.final_diameter) <= 36 * 25.4);
            for (const Facing& face : bore.boring.facing)
                CHECK_THAT(mm(face.feed), Catch::WithinAbs(0.005 * 25.4, 1e-9));
            if (bore.boring.limits) // the bit is set in steps of 0.001 in
                CHECK(mm(bore.boring.limits->high - bore.boring.limits->low) >= 2 * 0.001 * 25.4);
        }
        for (const std::string& note : whole.notes)
            CHECK(note.find("portable bars") == std::string::npos);
    }
    CHECK(bores >= 8);
}

TEST_CASE("a usual bore has no note but that speeds are computed where none are listed") {
    CHECK(notes_of(90, "", listed).empty());
    CHECK(notes_of(90, "", deep) ==
          Lines{"boring: the job lists no bar_speeds, so the revolutions are computed; "
                "set the next one down."});
}

TEST_CASE("what portable bars cannot do is a note") {
    CHECK(
        notes_of(90, "", deep + R"(, "bar_speeds": ["10 rev/min"])") ==
        Lines{"arm root: 10.0 rev/min is outside what portable bars turn (small electric ones 100 rev/min to "
              "400 rev/min, large hydraulic ones 20.0 rev/min to 200 rev/min) [practice]."});
    CHECK(
        notes_of(90, "", listed + R"(, "feed": "0.4 mm")") ==
        Lines{
            "arm root: a feed of 80 mm/min along the bore is outside what portable bars have, 0 mm/min to 60 "
            "mm/min [practice]."});
    CHECK(notes_of(1000, "", deep + R"(, "bar_speeds": ["20 rev/min"], "cutting_speed": "70 m/min")") ==
          Lines{"arm root: a bore of 1000.0 mm is outside what portable bars serve, 40.0 mm to 900.0 mm "
                "[practice]."});
}

TEST_CASE("a feed over the nose radius is a note on the roughness") {
    CHECK(
        notes_of(90, "", deep + R"(, "bar_speeds": ["40 rev/min"], "feed": "0.9 mm")") ==
        Lines{"arm root: a feed of 0.90 mm a turn is over the nose radius of 0.80 mm: the roughness that is "
              "worked out does not hold."});
}

TEST_CASE("set-ups, close limits, a class beside the nominal size and a groove that is none are notes") {
    CHECK(notes_of(90, "", listed + R"(, "stroke": "60 mm")") ==
          Lines{"arm root: longer than one stroke of the bar: 2 set-ups, to be aligned on one another."});
    CHECK(notes_of(90, R"(, "size_class": "H7")", listed) ==
          Lines{"arm root: the limits are 0.035 mm apart, closer than one step of the bit (0.051 mm on the "
                "diameter) [practice]."});
    CHECK(notes_of(90, R"(, "size_class": "F9")", listed) ==
          Lines{"arm root: bored to 90.036 mm, where the limits of F9 begin, not to the finish diameter "
                "itself."});
    CHECK(notes_of(90, R"(, "grooves": [{ "diameter": "90 mm", "width": "4 mm" }])", listed) ==
          Lines{"arm root: a groove that is no deeper than the finish diameter is not cut again."});
}

TEST_CASE("a first cut that would only rub shares with the second") {
    const BoringPlan boring = planned(90, "", listed).bores.front().boring; // a copy
    // The rough cuts take all but 0.75 mm; a depth that leaves 0.1 mm for the first of three.
    const double rough = (mm(boring.final_diameter / 2.0 - boring.crown_radius) - 0.75 - 0.1) / 2;
    const std::string bar = fmt::format(R"("bar_speeds": ["80 rev/min"], "rough_cut": "{:.9f} mm")", rough);
    CHECK(notes_of(90, "", bar).empty());
    std::vector<double> depths;
    const Plan shared = planned(90, "", bar);
    for (const Cut& cut : shared.bores.front().boring.cuts)
        if (cut.kind == CutKind::skin || cut.kind == CutKind::rough)
            depths.push_back(mm(cut.depth));
    REQUIRE(depths.size() == 3);
    CHECK(std::fabs(depths[0] - (rough + 0.1) / 2) < 1e-6);
    CHECK(std::fabs(depths[1] - depths[0]) < 1e-12);
    CHECK(std::fabs(depths[2] - rough) < 1e-6);
}
