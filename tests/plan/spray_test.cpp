// What a plan makes of a job that names spray.

#include <catch2/catch.hpp>

#include <ringfill/weld/setting_notes.hpp>

#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Settings made(const std::string& filler, const std::string& gas, const std::string& more) {
    static std::vector<Job> jobs; // the settings point into their job
    jobs.reserve(100);
    jobs.push_back(job_with(fmt::format(
        R"("filler": "{}", "wire": "1.2 mm", "gas": "{}", "wire_feed": "8 m/min", "travel": "350 mm/min", {})",
        filler, gas, more)));
    std::vector<Fault> faults;
    return settings(jobs.back().procedures.front(), shop(), faults).value();
}

Settings sprayed(const std::string& gas, int amperes) {
    return made("steel/ER70S-6", gas, fmt::format(R"("current": "{} A", "transfer": "spray")", amperes));
}

bool notes_with(const Settings& found, const std::string& part) {
    const auto notes = setting_notes(found, UnitSystem::metric);
    return std::any_of(notes.begin(), notes.end(),
                       [&](const std::string& note) { return note.find(part) != std::string::npos; });
}

} // namespace

TEST_CASE("in carbon dioxide no wire sprays: noted, and the share of spray is not taken") {
    const Settings found = sprayed("C1", 250);
    CHECK(notes_with(found, "steel/ER70S-6 does not spray in C1: its drops are large"));
    CHECK(found.deposition.efficiency == 0.90);
    CHECK_FALSE(found.deposition.as_transferred);
}

// By hand: 227 A for 1.2 mm, times 1.1 and 1.35, are 250 and 306 A.
TEST_CASE("under the current that surely sprays in a mixture the share of spray is not taken") {
    CHECK(sprayed("M21", 150).deposition.efficiency == 0.92);
    CHECK(notes_with(sprayed("M21", 150), "a current of 150 A is under the 250 A to 306 A from which "
                                          "steel/ER70S-6 sprays in M21 [spray-between, spray-in-mixtures]"));
    CHECK(notes_with(sprayed("M21", 270), "a current of 270 A is inside the 250 A to 306 A"));
    CHECK(sprayed("M21", 270).deposition.efficiency == 0.92);
    CHECK(sprayed("M21", 320).deposition.efficiency == 0.98);
    CHECK_FALSE(notes_with(sprayed("M21", 320), "a current of"));
    CHECK(notes_with(sprayed("M21", 320), "spray in M21: with 20 to 25 %"));
    CHECK(setting_notes(sprayed("M13", 230), UnitSystem::metric)
              .empty()); // argon with a little oxygen is what was printed
    CHECK(sprayed("M13", 230).deposition.efficiency == 0.98);
}

TEST_CASE("a wire whose spray current nobody here knows is told so") {
    CHECK(notes_with(made("nickel/ERNiCr-3", "I1", R"("current": "200 A", "transfer": "spray")"),
                     "from which current nickel/ERNiCr-3 of 1.2 mm sprays in I1 is not known here"));
}

// The flow of helium mixtures, twice that of argon, is common practice.
TEST_CASE("nickel wire is planned in argon with helium") {
    const Settings found = made("nickel/ERNiCr-3", "I3", R"("current": "200 A")");
    REQUIRE(found.gas != nullptr);
    CHECK(found.gas->holds == "argon_helium");
    CHECK(setting_notes(found, UnitSystem::metric).empty());
}
