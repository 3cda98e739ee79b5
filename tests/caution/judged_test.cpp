#include <catch2/catch.hpp>

#include <ringfill/caution/judged.hpp>

using namespace ringfill;

TEST_CASE("a figure is compared as its limits say: from included, under not") {
    const Trigger trigger{Circumstance::wire_current, Sourced<double>{60, "own"},
                          Sourced<double>{160, "own"}};
    WorkFacts facts;
    const auto with = [&](std::optional<double> ampere) {
        facts.procedures = {{"main", Arc::wire, {}, false, false}};
        if (ampere)
            facts.procedures[0].current = in_si<Current>(*ampere);
        return judged(trigger, facts);
    };
    CHECK(with(59.9).answer == Answer::no);
    CHECK(with(60).answer == Answer::yes);
    CHECK(with(159.9).answer == Answer::yes);
    CHECK(with(160).answer == Answer::no);
    CHECK(with(60).because == "the arc has 60 A, from 60 A to under 160 A");
    const Judged open = with(std::nullopt);
    CHECK(open.answer == Answer::unknown);
    CHECK(open.because == "the job does not say: procedures.current");
}

TEST_CASE(
    "one procedure of two that holds makes it apply, for that one; one that is not known leaves it open") {
    const Trigger trigger{Circumstance::wire_current, Sourced<double>{250, "own"}, {}};
    WorkFacts facts;
    facts.procedures = {{"cold", Arc::wire, in_si<Current>(100), false, false},
                        {"hot", Arc::wire, in_si<Current>(300), false, false}};
    CHECK((judged(trigger, facts).about == std::vector<Subject>{{Concern::procedure, "hot"}}));
    facts.procedures[0].current = std::nullopt;
    CHECK(judged(trigger, facts).answer == Answer::yes);
    facts.procedures[1].current = in_si<Current>(100);
    CHECK(judged(trigger, facts).answer == Answer::unknown);
    CHECK((judged(trigger, facts).about == std::vector<Subject>{{Concern::procedure, "cold"}}));
}

TEST_CASE("an unknown coating counts as one that burns, and may be zinc") {
    WorkFacts facts;
    facts.site.coating = "unknown";
    CHECK(judged({Circumstance::coated, {}, {}}, facts).answer == Answer::yes);
    CHECK(judged({Circumstance::zinc_coated, {}, {}}, facts).answer == Answer::unknown);
    facts.site.coating = "zinc";
    CHECK(judged({Circumstance::coated, {}, {}}, facts).answer == Answer::yes);
    CHECK(judged({Circumstance::zinc_coated, {}, {}}, facts).answer == Answer::yes);
}

TEST_CASE("each kind of arc has limits of its own") {
    WorkFacts facts;
    facts.procedures = {{"sticks", Arc::stick, in_si<Current>(280), false, true}};
    const Sourced<double> from{250, "own"};
    CHECK(judged({Circumstance::stick_current, from, {}}, facts).answer == Answer::yes);
    CHECK(judged({Circumstance::wire_current, from, {}}, facts).answer == Answer::no);
    CHECK(judged({Circumstance::rod_current, from, {}}, facts).answer == Answer::no);
    facts.procedures.push_back({"wire", Arc::wire, std::nullopt, true, false});
    CHECK(judged({Circumstance::wire_current, from, {}}, facts).answer == Answer::unknown);
    CHECK((judged({Circumstance::wire_current, from, {}}, facts).about ==
           std::vector<Subject>{{Concern::procedure, "wire"}}));
}

TEST_CASE("bores that are not known stay open beside those that hold") {
    const Trigger trigger{Circumstance::peak, Sourced<double>{43, "own"}, {}};
    WorkFacts facts;
    facts.bores = {{"hot", {}, in_si<Temperature>(500), false, {}, {}},
                   {"nobody knows", {}, {}, false, {}, {}}};
    const Judged found = judged(trigger, facts);
    CHECK((found.about == std::vector<Subject>{{Concern::bore, "hot"}}));
    CHECK((found.open == std::vector<Subject>{{Concern::bore, "nobody knows"}}));
}

TEST_CASE("a heater that is only assumed leaves the other fuels open") {
    WorkFacts facts;
    facts.fuels = {{"propane", false}};
    CHECK(judged({Circumstance::propane, {}, {}}, facts).answer == Answer::yes);
    CHECK(judged({Circumstance::acetylene, {}, {}}, facts).answer == Answer::no);
    facts.fuel_is_assumed = true;
    CHECK(judged({Circumstance::propane, {}, {}}, facts).because ==
          "propane heats the boss, assumed: the job names no heater");
    for (const Circumstance open :
         {Circumstance::acetylene, Circumstance::oxygen, Circumstance::electric_heater})
        CHECK(judged({open, {}, {}}, facts).answer == Answer::unknown);
}

TEST_CASE("metal that is not known is open unless the other one has enough") {
    const Trigger trigger{Circumstance::chromium, Sourced<double>{1, "own"}, {}};
    WorkFacts facts;
    facts.bores = {{"pin", {}, {}, false, {}, {}}};
    facts.bores[0].metal[Circumstance::chromium] = {30, false};
    CHECK(judged(trigger, facts).answer == Answer::yes);
    facts.bores[0].metal[Circumstance::chromium] = {0.2, false};
    CHECK(judged(trigger, facts).answer == Answer::unknown);
    facts.bores[0].metal[Circumstance::chromium] = {0.2, true};
    CHECK(judged(trigger, facts).answer == Answer::no);
}
