#include <catch2/catch.hpp>

#include <regex>

#include <filesystem>

#include <ringfill/document/parse.hpp>
#include <ringfill/fault/printable.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const std::string demo = std::string(RINGFILL_ROOT) + "/cli/demo/";

std::size_t longest_line(const std::string& text) {
    std::size_t longest = 0;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        longest = std::max(longest, count_characters(text.substr(begin, end - begin)));
        begin = end + 1;
    }
    return longest;
}

} // namespace

TEST_CASE("every demo job plans in every view, in both systems, inside the page") {
    const Workspace workspace;
    std::size_t jobs = 0;
    for (const auto& file : std::filesystem::directory_iterator(demo)) {
        ++jobs;
        for (const char* view : {"take", "passes", "boring", "heat", "day", "quote", "cautions"})
            for (const char* units : {"mm", "inch"}) {
                INFO(file.path() << " " << view << " " << units);
                const Outcome outcome =
                    run(workspace, {.words = {view, file.path().string(), "--units", units, "--working"}});
                CHECK(outcome.status == 0);
                CHECK(outcome.err.empty());
                CHECK(longest_line(outcome.out) < 80);
                const std::string last =
                    "\nLocal codes, the approved procedure and licensed practice prevail "
                    "over\neverything here.\n";
                CHECK(outcome.out.ends_with(last));
                CHECK(outcome.out.find(last) < outcome.out.find("\nWORKING ("));
                CHECK(outcome.out.find("\nWORKING (") != std::string::npos);
            }
    }
    CHECK(jobs >= 5);
}

TEST_CASE("passes tells layers, rings, torch speeds, faces and grooves in the sequence of the work") {
    const Workspace workspace;
    const std::string text = run(workspace, {.words = {"passes", demo + "barge-winch-frame.json"}}).out;
    const std::size_t groove = text.find("\n  groove 1");
    const std::size_t layer = text.find("\n  layer 1");
    const std::size_t face = text.rfind("face 1");
    REQUIRE(face != std::string::npos);
    CHECK(groove < layer);
    CHECK(layer < face);
    CHECK(text.find("rev/min") != std::string::npos);
    CHECK(text.find("pitch") != std::string::npos);
}

TEST_CASE("passes as comma-separated values has a line for each groove, layer and face") {
    const Workspace workspace;
    const Outcome table = run(workspace, {.words = {"passes", demo + "barge-winch-frame.json", "--csv"}});
    CHECK(table.status == 0);
    CHECK(
        table.out.starts_with("bore,count,pass,number,from_diameter_mm,to_diameter_mm,layers,rings,pitch_mm,"
                              "travel_mm_min,torch_first_rpm,torch_last_rpm,path_mm,laid_kg,arc_s\r\n"));
    const Document plan =
        parse("plan", run(workspace, {.words = {"passes", demo + "barge-winch-frame.json", "--json"}}).out,
              Origin::job);
    const Value& bore = plan.root.find("bores")->list()->front();
    const std::size_t passes = bore.find("grooves")->list()->size() + bore.find("layers")->list()->size() +
                               bore.find("faces")->list()->size();
    CHECK(static_cast<std::size_t>(std::count(table.out.begin(), table.out.end(), '\n')) == passes + 1);
}

TEST_CASE("take as comma-separated values has the lines of the result") {
    const Workspace workspace;
    const Outcome table = run(workspace, {.words = {"take", demo + "dredger-pivots.json", "--csv"}});
    CHECK(table.out.starts_with(
        "item,need,reserve,unit,load,supplied,spare,why,source\r\nwire steel/ER70S-6 1.0 mm,"));
    CHECK(table.out.find(",kg,1 x 5 kg spool,5,") != std::string::npos);
}

TEST_CASE("JSON and comma-separated values at once are refused") {
    const Workspace workspace;
    const Outcome outcome =
        run(workspace, {.words = {"take", demo + "dredger-pivots.json", "--csv", "--json"}});
    CHECK(outcome.status == 2);
    CHECK(outcome.out.empty());
    CHECK(outcome.err == "ringfill: --csv stands beside --json; choose one of the two\n");
}

TEST_CASE("the working shows formula, inputs with units, value and source of a figure") {
    const Workspace workspace;
    const std::string text =
        run(workspace, {.words = {"take", demo + "sluice-gate-lugs.json", "--working"}}).out;
    CHECK(text.find("- bores[0].survey.largest_radius_mm = 34.1 mm [own]\n    = D/2 + e\n    D = 67.2 mm, e "
                    "= 0.5 mm\n") != std::string::npos);
}

TEST_CASE("materials lists families, one family, and one entry with its sources") {
    const Workspace workspace;
    const std::string all = run(workspace, {.words = {"materials"}}).out;
    CHECK(all.find("steel\n  from ") != std::string::npos);
    CHECK(all.find("stainless\n  from ") != std::string::npos);
    const std::string family = run(workspace, {.words = {"materials", "steel"}}).out;
    CHECK(family.find("  steel/ER70S-6") != std::string::npos);
    CHECK(std::regex_search(family, std::regex("solid wire +AWS A5.18")));
    CHECK(std::regex_search(family, std::regex("steel/E7018-H8 +covered electrode +AWS A5.1")));
    const std::string entry = run(workspace, {.words = {"materials", "steel/C45"}}).out;
    CHECK(std::regex_search(entry, std::regex("\n  density +7850 kg/m³ +\\[EN1993-1-2-density\\]\n")));
    CHECK(entry.find("[ISO683-1] EN ISO 683-1") != std::string::npos);
    CHECK(entry.find("memory.") != std::string::npos);
}

TEST_CASE("an unknown material is refused with the nearest one") {
    const Workspace workspace;
    const Outcome family = run(workspace, {.words = {"materials", "steal"}});
    CHECK(family.status == 2);
    CHECK(family.err == "ringfill: \"steal\" is not a known family; did you mean \"steel\"?\n");
    const Outcome entry = run(workspace, {.words = {"materials", "steel/C46"}});
    CHECK(entry.status == 2);
    CHECK(entry.err ==
          "ringfill: \"C46\" is not a known base metal or filler of steel; did you mean \"C45\"?\n");
    CHECK(entry.out.empty());
}

TEST_CASE("a result never goes over the job file itself, by whatever name") {
    const Workspace workspace;
    const std::string job = content_of(demo + "dredger-pivots.json");
    workspace.write("job.json", job);
    for (const char* name : {"job.json", "./job.json"})
        for (const char* view : {"take", "passes", "check"}) {
            const Outcome outcome = run(workspace, {.words = {view, "job.json", "-o", name}});
            CHECK(outcome.status == 2);
            CHECK(outcome.err ==
                  "ringfill: \"" + std::string(name) +
                      "\" is the job file itself and would be overwritten; choose another name for -o\n");
            CHECK(workspace.read("job.json") == job);
        }
}

TEST_CASE("workings beside comma-separated values are refused") {
    const Workspace workspace;
    const Outcome outcome =
        run(workspace, {.words = {"take", demo + "dredger-pivots.json", "--csv", "--working"}});
    CHECK(outcome.status == 2);
    CHECK(outcome.err ==
          "ringfill: --working stands beside --csv; leave one out; --json holds the workings\n");
}
