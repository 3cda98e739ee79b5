#include <catch2/catch.hpp>

#include <ringfill/caution/hot_work.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("hot work is told in full") {
    CHECK(
        told(hot_work()) ==
        "the job | before | yes | This is hot work. Preheat and interpass temperatures here are reminders "
        "from "
        "published methods made for plate: the approved welding procedure, local codes and licensed practice "
        "rule over everything here. | there is an arc and a flame | practice");
}
