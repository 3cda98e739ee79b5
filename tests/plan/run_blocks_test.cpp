#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <vector>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/report/json/json.hpp>

#include "heat/threads_for_tests.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::vector<Job> samples() {
    std::vector<Job> jobs;
    for (const auto& file : std::filesystem::directory_iterator(RINGFILL_ROOT "/cli/demo"))
        if (file.path().extension() == ".json")
            jobs.push_back(job_from(read_whole(file.path().string(), job_file_limit)));
    return jobs;
}

} // namespace

TEST_CASE("a plan has the same bytes whether its blocks are run in one thread, in two or in eight") {
    std::size_t blocks = 0;
    const RunBlocks counting = [&](std::size_t count, const std::function<void(std::size_t)>& block) {
        blocks = std::max(blocks, count);
        while (count > 0) // the last block first
            block(--count);
    };
    for (const Job& job : samples()) {
        CAPTURE(job.title);
        const std::string printed = write_json(plan_document(plan(job, shop())));
        for (const RunBlocks& run_blocks : {counting, on_threads(2), on_threads(8)})
            CHECK((write_json(plan_document(plan(job, shop(), {}, run_blocks))) == printed));
    }
    CHECK(blocks > 2);
}

TEST_CASE("a plan tells how far it is in one thread at a time, never backwards") {
    const Job job = job_from(read_whole(RINGFILL_ROOT "/cli/demo/dredger-pivots.json", job_file_limit));
    std::vector<std::size_t> shown;
    plan(
        job, shop(),
        [&](std::string_view what, std::size_t at, std::size_t of) {
            CHECK(of == job.bores.size());
            if (what.find("heat") != std::string_view::npos)
                shown.push_back(at);
        },
        on_threads(8));
    REQUIRE_FALSE(shown.empty());
    CHECK(std::is_sorted(shown.begin(), shown.end()));
    CHECK(shown.back() == job.bores.size());
}
