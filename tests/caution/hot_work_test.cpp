#include <catch2/catch.hpp>

#include <ringfill/caution/hot_work.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("hot work is told in full") {
    CHECK(told(hot_work()) == "the job | before | yes | This is hot work. Take preheat and interpass "
                              "temperature from the approved welding "
                              "procedure before the first arc; local codes, that procedure and licensed "
                              "practice rule over everything here. "
                              "| this plan has no preheat in it | practice");
}
