#include <catch2/catch.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/report/json/json.hpp>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// Written with twelve significant digits, a number is off by 5e-12 of itself at most. Writing refuses a
// number that is not finite, so that a job that comes through has none.
TEST_CASE("every number of every plan is finite and comes back from its text") {
    for (const std::uint64_t seed : seeds_for(8)) {
        INFO("seed " << seed);
        const Value document = plan_document(planned(random_sketch(seed)));
        std::string text;
        REQUIRE_NOTHROW(text = write_json(document));
        const auto written = figures_of(document);
        const auto read = figures_of(parse("plan.json", text, Origin::job).root);
        REQUIRE(written.size() == read.size());
        for (std::size_t i = 0; i < written.size(); ++i)
            if (written[i].path != read[i].path ||
                !(std::fabs(written[i].value - read[i].value) <= 1e-11 * std::fabs(written[i].value))) {
                INFO(written[i].path);
                INFO(read[i].path);
                REQUIRE(written[i].value == read[i].value);
            }
    }
}
