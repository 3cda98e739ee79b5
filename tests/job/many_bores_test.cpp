#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "report/odd_jobs.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// A job of so many bores, alike but for their names.
std::string job_of(int bores) {
    std::string text = odd_job(R"("finish_diameter": 90, "length": 100, "worn": { "diameter": 93.4 })");
    Document one = parse("job.json", text, Origin::job);
    const Value& list = *one.root.find("bores");
    std::string all;
    for (int i = 0; i < bores; ++i)
        all += fmt::format(R"({}{{ "name": "{}", "base": "steel/S355J2", "axis": "horizontal",
                               "finish_diameter": 90, "length": 100, "worn": {{ "diameter": 93.4 }} }})",
                           i == 0 ? "[" : ", ", i);
    return text.replace(list.begin, list.end - list.begin, all + "]");
}

} // namespace

// The limit is our own choice: no machine has more pin bores, and a sheet of them still comes within a
// second.
TEST_CASE("a job has sixty bores at most, each with its count; more are refused at the list") {
    CHECK(job_from(job_of(60)).bores.size() == 60);
    try {
        job_from(job_of(61));
        FAIL("was taken");
    } catch (const Faulty& faulty) {
        REQUIRE(faulty.faults().size() == 1);
        CHECK(faulty.faults().front().place.path == "bores");
        CHECK(faulty.faults().front().reason == "has 61 of them");
        CHECK(faulty.faults().front().remedy == "give 1 to 60");
    }
}
