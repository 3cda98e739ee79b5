#include <map>
#include <regex>
#include <sstream>

#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/job/description.hpp>
#include <ringfill/job/format.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

/// Each field of a record and of the records within, once: the path without names of the user's choosing.
void list_fields(std::vector<std::string>& paths, const Record& record, const std::string& path) {
    for (const Field& field : record.fields) {
        const std::string own = path + (path.empty() ? "" : ".") + std::string(field.name);
        paths.push_back(own);
        if (field.record)
            list_fields(paths, *field.record,
                        own + (field.shape == Shape::list    ? "[]"
                               : field.shape == Shape::named ? ".NAME"
                                                             : ""));
    }
}

std::vector<std::string> all_fields() {
    std::vector<std::string> paths;
    list_fields(paths, job_record, "");
    return paths;
}

/// How often each field name of the format stands as a key, in a starter job with its comments opened.
std::map<std::string, int> keys_in(const std::string& starter) {
    std::map<std::string, int> keys;
    const std::regex key("^ *(// )?\"([a-z_0-9]+)\": ");
    std::istringstream stream(starter);
    for (std::string line; std::getline(stream, line);)
        if (std::smatch match; std::regex_search(line, match, key))
            ++keys[match[2]];
    return keys;
}

} // namespace

TEST_CASE("the starter job plans as it stands, in both unit systems") {
    const Workspace workspace;
    for (const std::string units : {"mm", "inch"}) {
        const Outcome written = run(workspace, {.words = {"start", units + ".json", "--units", units}});
        CHECK(written.status == 0);
        CHECK(written.out.empty());
        CHECK(written.err.empty());
        CHECK(workspace.read(units + ".json") == run(workspace, {.words = {"start", "--units", units}}).out);
        const Outcome checked = run(workspace, {.words = {"check", units + ".json"}});
        CHECK(checked.status == 0);
        CHECK(checked.err.empty());
        CHECK_THAT(workspace.read(units + ".json"), Contains("\"units\": \"" + units + "\""));
    }
    CHECK(run(workspace, {.words = {"start"}}).out == workspace.read("mm.json"));
}

TEST_CASE("a file that exists is refused with status 4 and not touched") {
    const Workspace workspace;
    workspace.write("mine.json", "mine\n");
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"start", "mine.json"},
          std::vector<std::string>{"start", "mine.json", "--fields"}}) {
        const Outcome outcome = run(workspace, {.words = words});
        CHECK(outcome.status == 4);
        CHECK(outcome.out.empty());
        CHECK(outcome.err ==
              "mine.json: is there already and was not touched; choose another name or move it away "
              "first\n");
        CHECK(workspace.read("mine.json") == "mine\n");
    }
    const Outcome folder = run(workspace, {.words = {"start", "."}});
    CHECK(folder.status == 4);
    CHECK(workspace.names() == std::vector<std::string>{"mine.json"});
}

TEST_CASE("a folder that is missing is told") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"start", "none/job.json"}});
    CHECK(outcome.status == 4);
    CHECK(outcome.out.empty());
    CHECK(outcome.err ==
          "none/job.json: cannot be written: No such file or directory; check the name and make the "
          "folder first\n");
}

TEST_CASE("the starter job shows each field of each record exactly once") {
    const Workspace workspace;
    const auto keys = keys_in(run(workspace, {.words = {"start"}}).out);
    std::map<std::string, int> expected;
    for (const std::string& path : all_fields())
        ++expected[path.substr(path.rfind('.') == std::string::npos ? 0 : path.rfind('.') + 1)];
    CHECK(expected.size() > 60);
    CHECK(keys == expected);
}

TEST_CASE(
    "the starter job with every comment opened is still a job, faulty only where one excludes another") {
    const Workspace workspace;
    const std::string text = run(workspace, {.words = {"start"}}).out;
    workspace.write("open.json", std::regex_replace(text, std::regex("\n( *)// (?=[\"}\\]])"), "\n$1"));
    const Outcome outcome = run(workspace, {.words = {"check", "open.json"}});
    CHECK(outcome.status == 1);
    CHECK(outcome.out.empty());
    CHECK(outcome.err ==
          fmt::format("open.json:{}:20: ", line_of(text, "\"size_limits\"")) +
              "bores[0].size_limits: stands beside size_class; give the limits in one of the two "
              "ways\n"
              "        \"size_limits\": [\"90.000 mm\", \"90.087 mm\"], //…\n"
              "                       ^\n" +
              fmt::format("open.json:{}:13: ", line_of(text, "\"worn\"")) +
              "bores[0].worn: gives a diameter and stations; give the worn "
              "surface in one of the two "
              "ways\n"
              "        \"worn\": {\n"
              "                ^\n" +
              fmt::format("open.json:{}:21: ", line_of(text, "\"stations\"")) +
              "bores[0].worn.stations[0]: gives radii and diameters; give the readings in one of the two "
              "forms\n"
              "          \"stations\": [ {\n"
              "                        ^\n");
}

TEST_CASE("the list of fields names each field once, with its path") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"start", "--fields"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    std::vector<std::string> named;
    std::istringstream stream(outcome.out);
    for (std::string line; std::getline(stream, line);)
        if (std::regex_match(line, std::regex("[a-zA-Z0-9_.\\[\\]]+")))
            named.push_back(line);
    CHECK(named == all_fields());
    CHECK(outcome.out == field_guide());
}
