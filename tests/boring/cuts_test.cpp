#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/boring/cuts.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

const BarSettings usual = [] {
    BarSettings settings;
    settings.rough_cut.value = millimetres(1.5);
    settings.semi_finish_cut.value = millimetres(0.5);
    settings.finish_cut.value = millimetres(0.25);
    return settings;
}();

/// "kind depth from to" of each cut, in mm.
std::vector<std::string> told(const std::vector<Cut>& cuts) {
    std::vector<std::string> lines;
    for (const Cut& cut : cuts)
        lines.push_back(fmt::format("{} {:.3f} {:.3f} {:.3f}", word_of(cut.kind), mm(cut.depth), mm(cut.from),
                                    mm(cut.to)));
    return lines;
}

using Lines = std::vector<std::string>;

} // namespace

// Worked by hand, section 11: 3.25 mm of stock are 2.5 of rough cuts, the first with the remainder of 1 mm.
TEST_CASE("the first rough cut takes the remainder, semi-finish, finish and spring pass follow") {
    CHECK(told(bore_cuts(millimetres(41.75), millimetres(45), usual)) ==
          Lines{"skin 1.000 83.500 85.500", "rough 1.500 85.500 88.500", "semi_finish 0.500 88.500 89.500",
                "finish 0.250 89.500 90.000", "spring 0.000 90.000 90.000"});
}

TEST_CASE("a stock of whole rough cuts has no thin first one") {
    CHECK(told(bore_cuts(millimetres(41.25), millimetres(45), usual)).front() == "skin 1.500 82.500 85.500");
    CHECK(bore_cuts(millimetres(41.25), millimetres(45), usual).size() == 5);
}

TEST_CASE("little stock has the finish cut first, then the semi-finish cut") {
    CHECK(told(bore_cuts(millimetres(44.8), millimetres(45), usual)) ==
          Lines{"finish 0.200 89.600 90.000", "spring 0.000 90.000 90.000"});
    CHECK(
        told(bore_cuts(millimetres(44.5), millimetres(45), usual)) ==
        Lines{"semi_finish 0.250 89.000 89.500", "finish 0.250 89.500 90.000", "spring 0.000 90.000 90.000"});
    CHECK(told(bore_cuts(millimetres(44.25), millimetres(45), usual)).size() == 3);
}

TEST_CASE("the skim takes even cuts from the tightest place to the skim radius, none without metal") {
    CHECK(told(skim_cuts(millimetres(45.5), millimetres(47.5), millimetres(1.5))) ==
          Lines{"skim 1.000 91.000 93.000", "skim 1.000 93.000 95.000"});
    CHECK(skim_cuts(millimetres(45.5), millimetres(45.5), millimetres(1.5)).empty());
}

TEST_CASE("rough cuts are counted up, and no further than the most") {
    CHECK(rough_cuts(millimetres(3), millimetres(1.5)) == 2);
    CHECK(rough_cuts(millimetres(3.001), millimetres(1.5)) == 3);
    CHECK(rough_cuts(millimetres(0.001), millimetres(1.5)) == 1);
    CHECK(rough_cuts(Length(), millimetres(1.5)) == 0);
    CHECK(rough_cuts(millimetres(1000), millimetres(1e-9)) == 101);
}

// By hand: 1.7 mm of rough cuts are one of 1.5 and 0.2, too shallow for the skin of 0.5: two of 0.85.
TEST_CASE("two rough cuts share where the first would be too shallow") {
    const auto cuts = bore_cuts(millimetres(45 - 2.45), millimetres(45), usual);
    REQUIRE(cuts.size() == 5);
    CHECK(cuts[0].kind == CutKind::skin);
    CHECK_THAT(mm(cuts[0].depth), WithinAbs(0.85, 1e-9));
    CHECK(cuts[1].kind == CutKind::rough);
    CHECK_THAT(mm(cuts[1].depth), WithinAbs(0.85, 1e-9));
}

namespace {

const BarSettings hardening = [] {
    BarSettings settings = usual;
    settings.deposit.group = DepositGroup::manganese;
    settings.finish_cut = settings.semi_finish_cut;
    return settings;
}();

} // namespace

// Worked by hand, section 11: 4.6 mm of stock less two last cuts of 0.5 are 3.6, the first with 0.6 of it.
TEST_CASE("a deposit that hardens under the edge has two deep last cuts and no spring pass") {
    CHECK(told(bore_cuts(millimetres(40.4), millimetres(45), hardening)) ==
          Lines{"skin 0.600 80.800 82.000", "rough 1.500 82.000 85.000", "rough 1.500 85.000 88.000",
                "semi_finish 0.500 88.000 89.000", "finish 0.500 89.000 90.000"});
    CHECK(told(bore_cuts(millimetres(44), millimetres(45), hardening)) ==
          Lines{"semi_finish 0.500 88.000 89.000", "finish 0.500 89.000 90.000"});
}

// By hand: of 1.2 mm 0.2 are left over two cuts of 0.5, and 0.9 is too little for two.
TEST_CASE("what would only rub in such a deposit goes with the next cut, as far as a rough cut goes") {
    CHECK(told(bore_cuts(millimetres(43.8), millimetres(45), hardening)) ==
          Lines{"semi_finish 0.700 87.600 89.000", "finish 0.500 89.000 90.000"});
    CHECK(told(bore_cuts(millimetres(44.1), millimetres(45), hardening)) ==
          Lines{"finish 0.900 88.200 90.000"});
    BarSettings shallow = hardening;
    shallow.rough_cut.value = millimetres(0.6);
    CHECK(told(bore_cuts(millimetres(43.8), millimetres(45), shallow)).front() == "skin 0.200 87.600 88.000");
}
