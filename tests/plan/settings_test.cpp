#include <catch2/catch.hpp>

#include <ringfill/units/factor.hpp>
#include <ringfill/weld/setting_notes.hpp>

#include "fault_figures.hpp"
#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

/// A job and the settings of its procedure, which points into the job.
struct Ready {
    Job job;
    Settings settings;

    explicit Ready(const std::string& procedure, const Shop& in = shop()) : job(job_with(procedure)) {
        std::vector<Fault> faults;
        settings = ringfill::settings(job.procedures.front(), in, faults).value();
    }
};

Lines notes_of(const std::string& procedure, const Shop& in = shop()) {
    return setting_notes(Ready(procedure, in).settings, UnitSystem::metric);
}

Lines assumed_of(const std::string& procedure) {
    Lines lines;
    for (const Assumed& one : assumed_settings(Ready(procedure).settings, UnitSystem::metric))
        lines.push_back(one.path + " | " + one.value + " | " + one.source);
    return lines;
}

double limit_mm_min(const std::string& procedure) {
    return Ready(procedure).settings.travel_limit.value() * 1e3 * factor::minute;
}

std::string with_travel(const std::string& travel) {
    return R"("filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "M21", "wire_feed": "8 m/min", "current": "180 A", )" +
           travel;
}

const std::string fed = usual + R"(, "wire_feed": "8 m/min", "current": "180 A")";

} // namespace

TEST_CASE("a filler that is not known is refused with the nearest") {
    CHECK(
        faults_of(R"("filler": "steel/ER70S6", "wire": "1.0 mm", "gas": "M21", "wire_feed": "8 m/min",
                       "travel": "350 mm/min")") ==
        Lines{
            R"(procedures.main.filler: "steel/ER70S6" is not a known filler; did you mean "steel/ER70S-6"?)"});
}

TEST_CASE("a gas that is not known is refused with the nearest") {
    CHECK(faults_of(R"("filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "M211", "wire_feed": "8 m/min",
                       "travel": "350 mm/min")") ==
          Lines{R"(procedures.main.gas: "M211" is not a known gas; did you mean "M21"?)"});
}

TEST_CASE("no gas for a wire that needs one is refused with its gases") {
    CHECK(
        faults_of(R"("filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "none", "wire_feed": "8 m/min",
                       "travel": "350 mm/min")") ==
        Lines{
            R"(procedures.main.gas: "none" does not shield steel/ER70S-6; use one of M21, M20, M12, M13, C1)"});
}

TEST_CASE("filler and gas that are not known are refused together") {
    CHECK(
        faults_of(R"("filler": "steel/ER70S6", "wire": "1.0 mm", "gas": "M211", "wire_feed": "8 m/min",
                       "travel": "350 mm/min")") ==
        Lines{
            R"(procedures.main.filler: "steel/ER70S6" is not a known filler; did you mean "steel/ER70S-6"?)",
            R"(procedures.main.gas: "M211" is not a known gas; did you mean "M21"?)"});
}

TEST_CASE("gas and feed faults of one procedure come together") {
    CHECK(in_figures(procedure_faults(
              R"("filler": "steel/E71T-1", "wire": "1.2 mm", "gas": "none", "current": "200 A",
                       "travel": "350 mm/min")")) ==
          Lines{R"(procedures.main.gas: "none" 71 1 21 1)", "procedures.main.current: 71 1"});
}

TEST_CASE("a current outside the filler's table is refused with its range") {
    const Shop tabulated = shop_with_filler("steel", "E71T-1", [](Filler& filler) {
        for (WireSize& size : filler.sizes)
            size.feed_table = {{{in_si<Speed>(0.1), "own"}, {in_si<Current>(150), "own"}},
                               {{in_si<Speed>(0.2), "own"}, {in_si<Current>(250), "own"}}};
    });
    const std::string cored =
        R"("filler": "steel/E71T-1", "wire": "1.2 mm", "gas": "M21", "travel": "350 mm/min")";
    CHECK(in_figures(procedure_faults(cored + R"(, "current": "260 A")", tabulated)) ==
          Lines{"procedures.main.current: 260 A 150 250"});
    CHECK(faults_of(cored + R"(, "current": "250 A")", tabulated).empty());
}

TEST_CASE("a self-shielded wire needs no gas and takes none") {
    const Shop bare = shop_with_filler("steel", "E71T-1", [](Filler& filler) { filler.gases.clear(); });
    const Ready ready(R"("filler": "steel/E71T-1", "wire": "1.2 mm", "gas": "none", "wire_feed": "8 m/min",
                         "travel": "350 mm/min")",
                      bare);
    CHECK(ready.settings.gas == nullptr);
    CHECK(ready.settings.gas_flow == VolumeFlow());
}

// Worked by hand: a travel of 350 may rise to 350/0.75 = 467 mm/min; 1.0 mm of wire takes 12 L/min of an
// argon mixture.
TEST_CASE("what the filler adds to a procedure is listed with its source") {
    CHECK(assumed_of(usual + R"(, "wire_feed": "8 m/min")") ==
          Lines{"procedures.main.efficiency | 0.92 | efficiency-chosen",
                "procedures.main.bead_ratio | 3 | Suryakumar",
                "procedures.main.pitch_ratio | 0.667 | Suryakumar",
                "procedures.main.stick_out | 12.0 mm | practice",
                "procedures.main.current | 197 A from the wire feed | Norrish-scaled",
                "procedures.main.travel_max | 467 mm/min | ISO15614-1",
                "procedures.main.gas_flow | 12.0 L/min | practice"});
}

// Worked by hand: 0.432 x 180 + 1.04e-4 x 12 x 180^2 = 118.195 mm/s = 7.1 m/min; carbon dioxide has its own
// efficiency and 15 L/min.
TEST_CASE("a feed that follows from the current is listed too") {
    CHECK(assumed_of(R"("filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "C1", "travel": "350 mm/min",
                        "current": "180 A")") ==
          Lines{"procedures.main.efficiency | 0.9 | efficiency-chosen",
                "procedures.main.bead_ratio | 3 | Suryakumar",
                "procedures.main.pitch_ratio | 0.667 | Suryakumar",
                "procedures.main.stick_out | 12.0 mm | practice",
                "procedures.main.wire_feed | 7.1 m/min from the current | Norrish-scaled",
                "procedures.main.travel_max | 467 mm/min | ISO15614-1",
                "procedures.main.gas_flow | 15.0 L/min | practice"});
}

TEST_CASE("a procedure that says everything has nothing assumed") {
    CHECK(
        assumed_of(fed +
                   R"(, "travel_max": "400 mm/min", "efficiency": 0.95, "bead_ratio": 3.2, "pitch_ratio": 0.7,
                              "gas_flow": "14 L/min")")
            .empty());
}

TEST_CASE("the job's ratios and flow rule over the filler's") {
    const Ready ready(fed + R"(, "bead_ratio": 3.2, "pitch_ratio": 0.7, "gas_flow": "14 L/min")");
    CHECK(ready.settings.bead_ratio == 3.2);
    CHECK(ready.settings.pitch_ratio == 0.7);
    CHECK_THAT(ready.settings.gas_flow.value(), WithinRel(14e-3 / 60, 1e-14));
    CHECK_THAT((ready.settings.unscaled_bead.width / ready.settings.unscaled_bead.crown).value(),
               WithinRel(3.2, 1e-13));
    CHECK_THAT((ready.settings.unscaled_bead.pitch / ready.settings.unscaled_bead.width).value(),
               WithinRel(0.7, 1e-13));
}

// Section 5: the procedure's travel_max, else v0/0.75; never over the filler's window of 1000 mm/min, and a
// travel that is itself over the window is its own limit.
TEST_CASE("the fastest travel is the procedure's, else a third more, within the window") {
    CHECK_THAT(limit_mm_min(with_travel(R"("travel": "300 mm/min")")), WithinRel(400, 1e-12));
    CHECK_THAT(limit_mm_min(with_travel(R"("travel": "300 mm/min", "travel_max": "310 mm/min")")),
               WithinRel(310, 1e-12));
    CHECK_THAT(limit_mm_min(with_travel(R"("travel": "300 mm/min", "travel_max": "900 mm/min")")),
               WithinRel(900, 1e-12));
    CHECK_THAT(limit_mm_min(with_travel(R"("travel": "900 mm/min")")), WithinRel(1000, 1e-12));
    CHECK_THAT(limit_mm_min(with_travel(R"("travel": "300 mm/min", "travel_max": "1100 mm/min")")),
               WithinRel(1000, 1e-12));
    CHECK_THAT(limit_mm_min(with_travel(R"("travel": "1200 mm/min")")), WithinRel(1200, 1e-12));
}

TEST_CASE("settings inside the window have no note") {
    CHECK(notes_of(fed).empty());
    CHECK(notes_of(usual + R"(, "wire_feed": "2 m/min", "current": "70 A")").empty());
    CHECK(notes_of(usual + R"(, "wire_feed": "12 m/min", "current": "260 A")").empty());
}

TEST_CASE("a wire feed outside the window is noted") {
    CHECK(notes_of(usual + R"(, "wire_feed": "1.9 m/min", "current": "180 A")") ==
          Lines{"procedure main: a wire feed of 1.9 m/min is outside the usual 2.0 m/min to 12.0 m/min for "
                "steel/ER70S-6 "
                "[AWS-WHB]."});
    CHECK(notes_of(usual + R"(, "wire_feed": "12.1 m/min", "current": "180 A")") ==
          Lines{"procedure main: a wire feed of 12.1 m/min is outside the usual 2.0 m/min to 12.0 m/min for "
                "steel/ER70S-6 "
                "[AWS-WHB]."});
}

TEST_CASE("a current outside the window is noted") {
    CHECK(notes_of(usual + R"(, "wire_feed": "8 m/min", "current": "69 A")") ==
          Lines{"procedure main: a current of 69 A is outside the usual 70 A to 260 A for steel/ER70S-6 "
                "[AWS-WHB]."});
    CHECK(notes_of(usual + R"(, "wire_feed": "8 m/min", "current": "261 A")") ==
          Lines{"procedure main: a current of 261 A is outside the usual 70 A to 260 A for steel/ER70S-6 "
                "[AWS-WHB]."});
}

TEST_CASE("a travel outside the window is noted") {
    CHECK(notes_of(with_travel(R"("travel": "100 mm/min")")).empty());
    CHECK(notes_of(with_travel(R"("travel": "1000 mm/min")")).empty());
    CHECK(notes_of(with_travel(R"("travel": "99 mm/min")")) ==
          Lines{"procedure main: a travel of 99 mm/min is outside the usual 100 mm/min to 1000 mm/min for "
                "steel/ER70S-6 "
                "[practice]."});
    CHECK(notes_of(with_travel(R"("travel": "1001 mm/min")")) ==
          Lines{"procedure main: a travel of 1001 mm/min is outside the usual 100 mm/min to 1000 mm/min for "
                "steel/ER70S-6 "
                "[practice]."});
}

TEST_CASE("a fastest travel over the window is cut to it, with a note") {
    CHECK(notes_of(with_travel(R"("travel": "900 mm/min", "travel_max": "1000 mm/min")")).empty());
    CHECK(
        notes_of(with_travel(R"("travel": "900 mm/min", "travel_max": "1100 mm/min")")) ==
        Lines{
            "procedure main: travel_max is taken as 1000 mm/min, the fastest of the window of steel/ER70S-6 "
            "[practice]."});
}

TEST_CASE("a pitch outside 0.55 to 0.738 of the width is noted") {
    CHECK(notes_of(fed + R"(, "pitch_ratio": 0.55)").empty());
    CHECK(notes_of(fed + R"(, "pitch_ratio": 0.738)").empty());
    CHECK(notes_of(fed + R"(, "pitch_ratio": 0.549)") ==
          Lines{"procedure main: a pitch of 0.549 of the bead width is outside the usual 0.55 to 0.738."});
    CHECK(notes_of(fed + R"(, "pitch_ratio": 0.739)") ==
          Lines{"procedure main: a pitch of 0.739 of the bead width is outside the usual 0.55 to 0.738."});
}

TEST_CASE("a wire without a row takes the nearest one's limits, with a note") {
    const std::string odd =
        R"("filler": "steel/ER70S-6", "wire": "1.3 mm", "gas": "M21", "travel": "350 mm/min",
                               "wire_feed": "8 m/min", "current": "180 A")";
    CHECK(notes_of(odd) == Lines{"procedure main: steel/ER70S-6 has no row for 1.3 mm wire; the limits of "
                                 "1.2 mm are used, mass and melting scaled by "
                                 "section."});
    CHECK(Ready(odd).settings.size->name == "1.2");
}

TEST_CASE("a gas the filler is not usually welded with is noted") {
    CHECK(notes_of(R"("filler": "stainless/ER308L", "wire": "1.0 mm", "gas": "M21", "travel": "350 mm/min",
                      "wire_feed": "8 m/min")") ==
          Lines{"procedure main: M21 is not a gas that stainless/ER308L is usually welded with (M12, M13)."});
}
