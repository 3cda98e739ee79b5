#include <catch2/catch.hpp>

#include <ringfill/boring/bore_boring.hpp>

using namespace ringfill;

TEST_CASE("a bore longer than the stroke needs more set-ups") {
    CHECK(set_ups(millimetres(350), std::nullopt) == 1);
    CHECK(set_ups(millimetres(350), millimetres(350)) == 1);
    CHECK(set_ups(millimetres(350.2), millimetres(350)) == 2);
    CHECK(set_ups(millimetres(351), millimetres(350)) == 2);
    CHECK(set_ups(millimetres(1000), millimetres(350)) == 3);
    CHECK(set_ups(millimetres(1000), millimetres(1e-6)) == 101);
}
