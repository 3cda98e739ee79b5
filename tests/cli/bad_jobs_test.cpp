#include <set>

#include <catch2/catch.hpp>

#include "run_program.hpp"

using namespace ringfill::testing;

namespace {

namespace fs = std::filesystem;

const fs::path bad_folder = fs::path(RINGFILL_ROOT) / "tests" / "bad";

/// The stems of the files with that ending, sorted.
std::set<std::string> stems(const std::string& ending) {
    std::set<std::string> found;
    for (const fs::directory_entry& file : fs::directory_iterator(bad_folder))
        if (file.path().extension() == ending)
            found.insert(file.path().stem().string());
    return found;
}

} // namespace

TEST_CASE("each broken job has its message beside it, and each message its job") {
    CHECK(stems(".json") == stems(".txt"));
    CHECK(stems(".json").size() >= 32);
    for (const fs::directory_entry& file : fs::directory_iterator(bad_folder))
        CHECK((file.path().extension() == ".json" || file.path().extension() == ".txt"));
}

TEST_CASE("each broken job is refused with the whole message beside it") {
    for (const std::string& stem : stems(".json")) {
        const Outcome outcome = run(bad_folder, {.words = {"check", stem + ".json"}});
        CAPTURE(stem);
        CHECK(outcome.err == content_of((bad_folder / (stem + ".txt")).string()));
        CHECK(outcome.out.empty());
        CHECK(outcome.status == 1);
    }
}
