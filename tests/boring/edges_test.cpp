#include <catch2/catch.hpp>

#include <ringfill/boring/cuts.hpp>

using namespace ringfill;

namespace {

Time minutes(double value) {
    return in_si<Time>(60 * value);
}

} // namespace

TEST_CASE("edges are rounded up, rough and finish apart, with a fresh one for the finish cut") {
    const Edges used = edges(minutes(20.5), minutes(1), minutes(20));
    CHECK(used.rough == 2);
    CHECK(used.finish == 1);
    CHECK(edges(minutes(20), minutes(41), minutes(20)).rough == 1);
    CHECK(edges(minutes(20), minutes(41), minutes(20)).finish == 3);
    CHECK(edges(minutes(20.01), minutes(41), minutes(20)).rough == 2);
    CHECK(edges(Time(), minutes(1), minutes(20)).rough == 0);
    CHECK(edges(minutes(1e9), minutes(1), minutes(1e-9)).rough == 10'001);
}
