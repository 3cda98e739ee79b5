#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/report/json/json.hpp>
#include <ringfill/report/text/passes_text.hpp>
#include <ringfill/report/text/take_text.hpp>
#include <ringfill/weld/setting_notes.hpp>

#include "fault_figures.hpp"
#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;
using Catch::WithinRel;

namespace {

const std::string electrode =
    R"("filler": "steel/E7018-H8", "wire": "3.2 mm", "travel": "160 mm/min", "current": "125 A", "voltage": "23 V")";
const std::string rod =
    R"("filler": "steel/ER70S-2", "wire": "2.4 mm", "travel": "110 mm/min", "gas": "I1", "deposition_rate": "0.9 kg/h")";

Plan plan_of(const std::string& procedure, const std::string& more = "") {
    return plan(job_from(job_text(procedure, bore_text("arm root", more))), shop());
}

Lines items(const Plan& planned) {
    Lines found;
    for (const Need& line : planned.take)
        found.push_back(item_text(line, planned.units));
    return found;
}

bool begins_any(const Lines& lines, std::string_view start) {
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.starts_with(start); });
}

} // namespace

TEST_CASE("electrodes lay the metal of the bore, rounded up to whole ones") {
    const Plan planned = plan_of(electrode);
    const BorePlan& bore = planned.bores.front();
    const PieceLaid& piece = bore.deposition.piece.value();
    CHECK(1.0 * bore.metal.pieces * piece.usable >= bore.metal.laid);
    CHECK((bore.metal.pieces - 1.0) * piece.usable < bore.metal.laid);
    CHECK_THAT((bore.metal.laid / bore.metal.arc / bore.deposition.rate).value(), WithinRel(1, 1e-12));
    CHECK(bore.metal.starts == bore.metal.pieces + bore.metal.breaks);
    CHECK_THAT(bore.metal.wire.value(), WithinRel(bore.metal.pieces * piece.mass.value(), 1e-13));
    CHECK(planned.totals.pieces == bore.metal.pieces);
    CHECK(planned.totals.wire == Mass());
    CHECK(planned.totals.gas == Volume());
}

TEST_CASE("a plan with electrodes speaks of no wire, gas, tips or liner") {
    const Plan planned = plan_of(electrode);
    CHECK(begins_any(items(planned), "electrodes steel/E7018-H8 3.2 mm"));
    CHECK(begins_any(items(planned), "welding set 125 A"));
    for (const char* none : {"wire", "gas", "contact tips", "gas nozzles", "liner"})
        CHECK_FALSE(begins_any(items(planned), none));
    const std::string passes = passes_text(planned, Style{});
    CHECK_THAT(passes,
               Contains("1.11 kg/h laid by") && Contains("electrodes, one") && !Contains("wire feed"));
    const std::string take = take_text(planned, Style{});
    CHECK_THAT(take, Contains("electrodes · ") && Contains("filler each") && !Contains("of wire") &&
                         !Contains("transfer") && !Contains("gas_before"));
    const Value result = plan_document(planned);
    const Value& metal = *(*result.find("bores")->list())[0].find("metal");
    CHECK(metal.find("wire_kg") == nullptr);
    CHECK(*metal.find("pieces")->number() == static_cast<double>(planned.totals.pieces));
    CHECK(result.find("totals")->find("wire_kg") == nullptr);
    CHECK(*result.find("totals")->find("pieces")->number() == static_cast<double>(planned.totals.pieces));
}

TEST_CASE("rods are counted in pieces and keep their gas; what is not modelled is said") {
    const Plan planned = plan_of(rod);
    CHECK(begins_any(items(planned), "rods steel/ER70S-2 2.4 mm"));
    CHECK(begins_any(items(planned), "gas I1"));
    CHECK_FALSE(begins_any(items(planned), "contact tips"));
    CHECK(std::any_of(planned.notes.begin(), planned.notes.end(), [](const std::string& note) {
        return note.find("tungsten electrodes, cups and flux are not counted") != std::string::npos;
    }));
}

TEST_CASE("electrode and rod have the thermal efficiency of their process") {
    CHECK(plan_of(electrode).bores.front().heat.thermal_efficiency == 0.8);
    CHECK(plan_of(rod).bores.front().heat.thermal_efficiency == 0.6);
}

TEST_CASE("more current lays more, so that the arc burns for less time") {
    std::string strong = electrode;
    strong.replace(strong.find("125 A"), 5, "150 A");
    const auto arc = [](const std::string& procedure) { return plan_of(procedure).bores.front().metal.arc; };
    CHECK(arc(strong) < arc(electrode));
}

TEST_CASE("what does not fit the form is refused with a remedy") {
    const auto faults = [](const std::string& procedure) { return in_figures(procedure_faults(procedure)); };
    CHECK(faults(electrode + R"(, "wire_feed": "8 m/min")") == Lines{"procedures.main.wire_feed: 7018 8"});
    CHECK(faults(electrode + R"(, "gas": "M21")") == Lines{R"(procedures.main.gas: "M21")"});
    CHECK(faults(electrode + R"(, "gas": "none")").empty());
    CHECK(faults(electrode + R"(, "path": "helix")") == Lines{"procedures.main.path:"});
    CHECK(
        faults_of(
            R"("filler": "steel/ER70S-6", "wire": "1.0 mm", "wire_feed": "8 m/min", "travel": "350 mm/min")") ==
        Lines{R"(procedures.main.gas: is missing; write "gas": "M21")"});
    CHECK(faults(usual + R"(, "wire_feed": "8 m/min", "deposition_rate": "2 kg/h")") ==
          Lines{"procedures.main.deposition_rate:"});
}

TEST_CASE("a window by transfer holds where the job names the transfer") {
    const auto notes = [](const std::string& more) {
        const Job job =
            job_with(R"("filler": "steel/ER70S-6", "wire": "1.2 mm", "gas": "M21", "travel": "350 mm/min",
            "wire_feed": "8 m/min", "current": "250 A")" +
                     more);
        std::vector<Fault> faults;
        return setting_notes(settings(job.procedures.front(), shop(), faults).value(), job.units);
    };
    CHECK(notes("").empty());
    CHECK(notes(R"(, "transfer": "pulse", "voltage": "28 V")").empty());
    CHECK(notes(R"(, "transfer": "short", "voltage": "28 V")") ==
          Lines{"procedure main: a wire feed of 8.0 m/min is outside the usual 2.0 m/min to 5.0 m/min for "
                "steel/ER70S-6 in "
                "short-circuit transfer [AWS-WHB].",
                "procedure main: a current of 250 A is outside the usual 100 A to 225 A for steel/ER70S-6 in "
                "short-circuit "
                "transfer [AWS-WHB].",
                "procedure main: a voltage of 28 V is outside the usual 15 V to 22 V for steel/ER70S-6 in "
                "short-circuit "
                "transfer [AWS-WHB]."});
    CHECK(notes(R"(, "efficiency": 0.8)") ==
          Lines{"procedure main: an efficiency of 0.8 is outside the usual 0.88 to 0.99 for steel/ER70S-6 "
                "[efficiency-articles]."});
}
