#include <catch2/catch.hpp>

#include <ringfill/take/offers.hpp>
#include <ringfill/units/factor.hpp>

using namespace ringfill;

TEST_CASE("what a cylinder gives is rounded down to whole grams and what is needed up") {
    CHECK(whole_down(2.9999) == 2);
    CHECK(whole_down(2.9999999) == 3); // a rounding error
    CHECK(whole_down(0.4) == 1);       // at least one
    CHECK(whole_down(1.9) == 1);
    CHECK(whole_up(3.001) == 4);
    CHECK(whole_up(3.0000001) == 3);
}

// By hand. One of each offer holds 10 and 4 kg and gives 2 and 1.5 kg an hour, in grams.
TEST_CASE("cylinders that hold enough are joined by others until they give enough") {
    const std::vector<Offer> offers = {{10'000, {}, "large", 2'000}, {4'000, {}, "small", 1'500}};
    const Cover one = cover(10'000, offers);
    CHECK(one.counts == std::vector<std::int64_t>{1, 0});
    CHECK(one.supplied == 10'000);
    CHECK(enough_for_both(one, 10'000, 2'000, offers).counts == one.counts);
    CHECK(enough_for_both(one, 10'000, 2'001, offers).counts ==
          std::vector<std::int64_t>{1, 1}); // a gram short
    // 3.4 kg an hour: one small beside the large gives 3.5. For the flow alone one of each as well.
    const Cover both = enough_for_both(one, 10'000, 3'400, offers);
    CHECK(both.counts == std::vector<std::int64_t>{1, 1});
    CHECK(both.packs == 2);
    CHECK(both.supplied == 14'000);
    CHECK_THAT(steady_draw(both, offers).value() * 3'600, Catch::WithinRel(3.5, 1e-12));
}
