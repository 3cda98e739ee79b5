#include <catch2/catch.hpp>

#include <ringfill/ringfill.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const std::string root = RINGFILL_ROOT;
const std::string sample = root + "/cli/demo/dredger-pivots.json";

const SharedShop& ready_shop() {
    static const SharedShop shop = read_shop({RINGFILL_TABLES}, {RINGFILL_PLUGIN_FOLDER});
    return shop;
}

/// What the program prints for the sample.
std::string printed(std::vector<std::string> words) {
    const Workspace workspace;
    words.push_back(sample);
    return run(workspace, {.words = std::move(words)}).out;
}

} // namespace

TEST_CASE("each view of the public door is what the program prints") {
    const Planned planned = plan_file(sample, ready_shop());
    CHECK(take_text(planned) == printed({"take"}));
    CHECK(passes_text(planned) == printed({"passes"}));
    CHECK(heat_text(planned) == printed({"heat"}));
    CHECK(boring_text(planned) == printed({"boring"}));
    CHECK(day_text(planned) == printed({"day"}));
    CHECK(quote_text(planned) == printed({"quote"}));
    CHECK(cautions_text(planned) == printed({"cautions"}));
    CHECK(take_text(planned) + '\n' + working_text(planned) == printed({"take", "--working"}));
    CHECK(take_csv(planned) == printed({"take", "--csv"}));
    CHECK(passes_csv(planned) == printed({"passes", "--csv"}));
    CHECK(boring_csv(planned) == printed({"boring", "--csv"}));
    CHECK(quote_csv(planned) == printed({"quote", "--csv"}));
    CHECK(plan_json(planned) == printed({"take", "--json"}));
    CHECK(sheet(planned) == printed({"sheet"}));
}

TEST_CASE("the public door tells the faults of a job and of its plan as the program does") {
    for (const char* name :
         {"no-unit", "five-faults-geometry", "cleans-up-without-weld", "three-faults-unknown-names"}) {
        CAPTURE(name);
        const std::string text = content_of(root + "/tests/bad/" + name + ".json");
        const Workspace workspace;
        workspace.write("job.json", text);
        const std::string told = run(workspace, {.words = {"take", "job.json"}}).err;
        try {
            plan_text("job.json", text, ready_shop());
            FAIL("was planned");
        } catch (const Faulty& faulty) {
            CHECK(faulty.what() + std::string("\n") == told);
        }
    }
}

TEST_CASE("the public door plans a job made by hand, and names its faults by their paths") {
    Job job = read_job(sample);
    job.bores[1].path.clear();
    job.procedures[0].path.clear();
    CHECK(take_text(plan(job, ready_shop())) == printed({"take"}));
    job.procedures[0].filler = "steel/none-such";
    try {
        plan(job, ready_shop());
        FAIL("was planned");
    } catch (const Faulty& faulty) {
        CHECK(faulty.faults().front().place.path == "procedures." + job.procedures[0].name + ".filler");
    }
    CHECK_THROWS_AS(plan(Job(), ready_shop()), Faulty);
}
