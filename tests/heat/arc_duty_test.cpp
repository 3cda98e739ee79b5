#include <catch2/catch.hpp>

#include <ringfill/heat/heat_balance.hpp>

using namespace ringfill;

namespace {

HeatStep step(HeatStage stage, double seconds) {
    HeatStep made;
    made.stage = stage;
    made.time = in_si<Time>(seconds);
    return made;
}

double busiest(const std::vector<HeatStep>& steps) {
    return busiest_arc(steps, in_si<Time>(600)).value();
}

} // namespace

TEST_CASE("the busiest ten minutes count short stops only as what they are") {
    CHECK(busiest({}) == 0);
    CHECK(busiest({step(HeatStage::weld, 200)}) == 200);
    CHECK(busiest({step(HeatStage::weld, 900)}) == 600);
    // 210 s of arc between stops of 60 s: 210 + 60 + 210 + 60 + 60
    const std::vector<HeatStep> pulsing = {step(HeatStage::warm_up, 500), step(HeatStage::weld, 210),
                                           step(HeatStage::stop, 60),     step(HeatStage::weld, 210),
                                           step(HeatStage::stop, 60),     step(HeatStage::weld, 210)};
    CHECK(busiest(pulsing) == 480);
    CHECK(busiest({step(HeatStage::weld, 100), step(HeatStage::stop, 600), step(HeatStage::weld, 300)}) ==
          300);
}
