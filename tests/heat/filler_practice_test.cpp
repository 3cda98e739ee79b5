#include <catch2/catch.hpp>

#include <algorithm>

#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

/// A sample whose wire asks for 200 °C, and no more than 240 °C, itself.
HeatSample hard_wire(double formula_degC) {
    HeatSample sample({{"formula", formula_degC}});
    PreheatRow own = row(0, 200);
    own.maximum = Sourced<Temperature>{celsius(240), "practice"};
    own.printed_maximum_degC = 240;
    sample.family.fillers[0].practice = PreheatGroup{"what W asks for itself", {}, {}, {own}};
    return sample;
}

const PreheatMethod& told(const Preheat& preheat, const std::string& name) {
    const auto found = std::find_if(preheat.methods.begin(), preheat.methods.end(),
                                    [&](const PreheatMethod& method) { return method.name == name; });
    REQUIRE(found != preheat.methods.end());
    return *found;
}

} // namespace

TEST_CASE("the filler's own metal asks beside the metal under it, and the higher rules") {
    HeatSample sample = hard_wire(150);
    CHECK_THAT(sample.minimum(), WithinAbs(200, 1e-9));
    CHECK(told(sample.preheat(), "what W asks for itself").rules);
    CHECK_THAT(deg_c(sample.preheat().interpass_max.value().value), WithinAbs(240, 1e-9));
    sample = hard_wire(230);
    CHECK_THAT(sample.minimum(), WithinAbs(230, 1e-9));
    CHECK(told(sample.preheat(), "what W asks for itself").applies);
}

// 300 °C: common practice, no source.
TEST_CASE("of a range far over 300 degC no more than that or its lower end counts, and the range is kept") {
    HeatSample sample = hard_wire(150);
    const auto counted = [&](double low, double high) {
        PreheatRow own = row(0, high);
        own.range_from = celsius(low);
        sample.family.fillers[0].practice = PreheatGroup{"what W asks for itself", {}, {}, {own}};
        return sample.preheat();
    };
    CHECK_THAT(deg_c(counted(100, 300).minimum->value), WithinAbs(300, 1e-9));
    CHECK_FALSE(counted(100, 300).filler_range);
    CHECK_THAT(deg_c(counted(200, 400).minimum->value), WithinAbs(300, 1e-9));
    CHECK_THAT(deg_c(counted(350, 600).minimum->value), WithinAbs(350, 1e-9));
    const Preheat hot = counted(200, 400);
    CHECK_THAT(deg_c(hot.filler_range.value().high), WithinAbs(400, 1e-9));
    CHECK_THAT(deg_c(hot.filler_range->counted), WithinAbs(300, 1e-9));
    CHECK(told(hot, "what W asks for itself").note == "of its 200 to 400 °C no more counts here");
    sample.grade().structure = "austenitic"; // spared, and told what it would have been
    CHECK_THAT(deg_c(*told(sample.preheat(), "what W asks for itself").minimum), WithinAbs(400, 1e-9));
    CHECK_FALSE(sample.preheat().filler_range);
}

TEST_CASE("a filler laid hot must not heat the steel under it past its own maximum") {
    HeatSample sample = hard_wire(150);
    sample.family.fillers[0].practice->rows[0].maximum = Sourced<Temperature>{celsius(550), "practice"};
    sample.family.fillers[0].practice->rows[0].printed_maximum_degC = 550;
    const auto most = [&] { return deg_c(sample.preheat().interpass_max.value().value); };
    CHECK_THAT(most(), WithinAbs(250, 1e-9)); // the common maximum of steel of no group
    sample.grade().tempering = Sourced<Temperature>{celsius(290), "practice"};
    CHECK_THAT(most(), WithinAbs(240, 1e-9));
    sample.grade().softens_over = Sourced<Temperature>{celsius(225), "practice"};
    CHECK_THAT(most(), WithinAbs(225, 1e-9));
}

TEST_CASE("a table for one filler is not asked with another") {
    HeatSample sample({{"formula", 100}});
    PreheatRow own = row(0, 180);
    PreheatGroup group{"for X", {}, {}, {own}};
    group.fillers = {"alloy/X"};
    sample.family.preheat_groups = {group};
    sample.grade().preheat_groups = {"for X"};
    CHECK_THAT(sample.minimum(), WithinAbs(100, 1e-9));
    sample.family.preheat_groups[0].fillers = {"alloy/W"};
    CHECK_THAT(sample.minimum(), WithinAbs(180, 1e-9));
}

TEST_CASE("a hot filler never heats metal of its own practice, and says what it would have asked") {
    for (const auto& [structure, why] :
         {std::pair("austenitic", "austenitic metal is harmed by heat"),
          std::pair("nickel", "nickel metal is harmed by heat"),
          std::pair("copper", "held hot, bronze tears as it shrinks"),
          std::pair("cast_iron", "cast iron is welded cold or hot as its own practice says")}) {
        HeatSample sample = hard_wire(10);
        sample.grade().structure = structure;
        CHECK_THAT(sample.minimum(), WithinAbs(20, 1e-9));
        CHECK(sample.preheat().state == PreheatState::none);
        CHECK_FALSE(sample.preheat().interpass_max); // nor its 240
        const PreheatMethod method = told(sample.preheat(), "what W asks for itself");
        CHECK_FALSE(method.applies);
        CHECK(method.note == why);
    }
}

// A figure for the filler says nothing of the metal under it: without one for that there is none.
TEST_CASE("the filler's own practice never stands alone") {
    HeatSample sample;
    PreheatGroup own{"what W asks for itself", {}, {}, {row(0, 100)}};
    sample.family.fillers[0].practice = own;
    sample.grade().structure = "martensitic";
    CHECK_FALSE(sample.preheat().figure());
    CHECK_FALSE(told(sample.preheat(), "what W asks for itself").applies);
}

TEST_CASE("what the filler's metal bears bounds the interpass temperature") {
    HeatSample sample({{"formula", 100}});
    sample.family.fillers[0].interpass_max = Sourced<Temperature>{celsius(150), "practice"};
    CHECK_THAT(deg_c(sample.preheat().interpass_max.value().value), WithinAbs(150, 1e-9));
    CHECK(sample.preheat().interpass_max->by == "the table for alloy/W");
    sample = HeatSample({{"formula", 160}});
    sample.family.fillers[0].interpass_max = Sourced<Temperature>{celsius(150), "practice"};
    CHECK(sample.preheat().state == PreheatState::contradictory);
}

TEST_CASE("advice on the filler is told, but nothing that keeps metal hot that must not be") {
    HeatSample sample({{"formula", 100}});
    sample.family.fillers[0].advice = {{"slow_cooling", "Cool it slowly.", "practice"},
                                       {"soak", "Heat it through.", "practice"},
                                       {"technique", "Lay no more than 3 layers.", "practice"}};
    const auto own = [](const Preheat& preheat) { // without what is said of how the base cools
        std::vector<Advice> advice = preheat.advice;
        advice.erase(std::remove_if(advice.begin(), advice.end(),
                                    [](const Advice& one) {
                                        return one.text.starts_with("Cover the part") ||
                                               one.text.starts_with("Let it cool in still air");
                                    }),
                     advice.end());
        return advice;
    };
    CHECK(own(sample.preheat()).size() == 3);
    for (const char* structure : {"austenitic", "nickel", "copper", "cast_iron"}) {
        sample.grade().structure = structure;
        const auto cold = own(sample.preheat());
        REQUIRE(cold.size() == 1);
        CHECK(cold[0].text == "Lay no more than 3 layers.");
    }
    sample.grade().structure = "ferritic";
    sample.grade().softens_over = Sourced<Temperature>{celsius(225), "practice"};
    const auto plate = own(sample.preheat());
    REQUIRE(plate.size() == 2);
    CHECK(plate[0].kind == "soak");
}
