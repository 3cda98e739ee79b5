#include <catch2/catch.hpp>

#include <ringfill/caution/judged.hpp>

using namespace ringfill;

namespace {

const Sourced<double> from_250{250, "own"};

Fact current(const std::string& procedure, std::optional<double> ampere) {
    return {ampere, "the arc has", Subject{Concern::procedure, procedure}};
}

Answer answer(Circumstance circumstance, const WorkFacts& facts) {
    return judged({circumstance, {}, {}}, facts).answer;
}

} // namespace

TEST_CASE("a figure is compared as its limits say: from included, under not") {
    const Trigger trigger{Circumstance::wire_current, Sourced<double>{60, "own"},
                          Sourced<double>{160, "own"}};
    const auto with = [&](std::optional<double> ampere) {
        WorkFacts facts;
        facts.procedures = 1;
        facts.known[Circumstance::wire_current] = {current("main", ampere)};
        return judged(trigger, facts);
    };
    CHECK(with(59.9).answer == Answer::no);
    CHECK(with(60).answer == Answer::yes);
    CHECK(with(159.9).answer == Answer::yes);
    CHECK(with(160).answer == Answer::no);
    CHECK(with(60).because == "the arc has 60 A, from 60 A to under 160 A");
    CHECK(with(60).about.empty()); // it is all of them
    const Judged open = with(std::nullopt);
    CHECK(open.answer == Answer::unknown);
    CHECK(open.because == "the job does not say: procedures.current");
}

TEST_CASE(
    "one procedure of two that holds makes it apply, for that one; one that is not known leaves it open") {
    const Trigger trigger{Circumstance::wire_current, from_250, {}};
    const auto with = [&](std::optional<double> cold, double hot) {
        WorkFacts facts;
        facts.procedures = 2;
        facts.known[Circumstance::wire_current] = {current("cold", cold), current("hot", hot)};
        return judged(trigger, facts);
    };
    CHECK((with(100, 300).about == std::vector<Subject>{{Concern::procedure, "hot"}}));
    CHECK(with(std::nullopt, 300).answer == Answer::yes);
    CHECK(with(std::nullopt, 100).answer == Answer::unknown);
    CHECK((with(std::nullopt, 100).about == std::vector<Subject>{{Concern::procedure, "cold"}}));
}

TEST_CASE("of several that hold the highest is told") {
    WorkFacts facts;
    facts.procedures = 3;
    facts.known[Circumstance::wire_current] = {current("a", 260), current("b", 300), current("c", 280)};
    CHECK(judged({Circumstance::wire_current, from_250, {}}, facts).because ==
          "the arc has 300 A, at least 250 A");
}

TEST_CASE("an unknown coating counts as one that burns, and may be zinc") {
    const auto coated = [](const char* coating) {
        Site site;
        site.coating = coating;
        WorkFacts facts;
        add_site(facts, site);
        return facts;
    };
    CHECK(answer(Circumstance::coated, coated("unknown")) == Answer::yes);
    const Judged zinc = judged({Circumstance::zinc_coated, {}, {}}, coated("unknown"));
    CHECK(zinc.answer == Answer::unknown);
    CHECK(zinc.because == "nobody knows the coating");
    CHECK(answer(Circumstance::coated, coated("zinc")) == Answer::yes);
    CHECK(answer(Circumstance::zinc_coated, coated("zinc")) == Answer::yes);
    CHECK(answer(Circumstance::coated, coated("none")) == Answer::no);
    CHECK(answer(Circumstance::zinc_coated, coated("paint")) == Answer::no);
}

TEST_CASE("each kind of arc has limits of its own") {
    WorkFacts facts;
    facts.procedures = 1;
    facts.known[Circumstance::stick_current] = {current("sticks", 280)};
    CHECK(judged({Circumstance::stick_current, from_250, {}}, facts).answer == Answer::yes);
    CHECK(judged({Circumstance::wire_current, from_250, {}}, facts).answer == Answer::no);
    CHECK(judged({Circumstance::rod_current, from_250, {}}, facts).answer == Answer::no);
    facts.procedures = 2;
    facts.known[Circumstance::wire_current] = {current("wire", std::nullopt)};
    CHECK(judged({Circumstance::wire_current, from_250, {}}, facts).answer == Answer::unknown);
    CHECK((judged({Circumstance::wire_current, from_250, {}}, facts).about ==
           std::vector<Subject>{{Concern::procedure, "wire"}}));
}

TEST_CASE("bores that are not known stay open beside those that hold") {
    const Trigger trigger{Circumstance::peak, Sourced<double>{43, "own"}, {}};
    WorkFacts facts;
    facts.bores = 2;
    facts.known[Circumstance::peak] = {{226.85, "the boss gets to", Subject{Concern::bore, "hot"}},
                                       {{}, "the boss gets to", Subject{Concern::bore, "nobody knows"}}};
    const Judged found = judged(trigger, facts);
    CHECK((found.about == std::vector<Subject>{{Concern::bore, "hot"}}));
    CHECK((found.open == std::vector<Subject>{{Concern::bore, "nobody knows"}}));
}

TEST_CASE("a heater that is only assumed leaves the other fuels open") {
    WorkFacts facts;
    add_fuels(facts, std::vector<BurntFuel>{{"propane", false}}, false);
    CHECK(answer(Circumstance::propane, facts) == Answer::yes);
    CHECK(answer(Circumstance::fuel_gas, facts) == Answer::yes);
    CHECK(answer(Circumstance::acetylene, facts) == Answer::no);
    CHECK(answer(Circumstance::electric_heater, facts) == Answer::no);
    WorkFacts assumed;
    add_fuels(assumed, std::vector<BurntFuel>{{"propane", false}}, true);
    CHECK(judged({Circumstance::propane, {}, {}}, assumed).because ==
          "propane heats the boss, assumed: the job names no heater");
    for (const Circumstance open :
         {Circumstance::acetylene, Circumstance::oxygen, Circumstance::electric_heater})
        CHECK(answer(open, assumed) == Answer::unknown);
    WorkFacts electric;
    add_fuels(electric, std::vector<BurntFuel>{}, false);
    CHECK(answer(Circumstance::electric_heater, electric) == Answer::yes);
    CHECK(answer(Circumstance::fuel_gas, electric) == Answer::no);
}

TEST_CASE("metal that is not known is open unless the other one has enough") {
    const Trigger trigger{Circumstance::chromium, Sourced<double>{1, "own"}, {}};
    const auto with = [&](double percent, bool may_be_more) {
        WorkFacts facts;
        facts.bores = 1;
        facts.known[Circumstance::chromium] = {
            {percent, "filler or metal hold Cr of", Subject{Concern::bore, "pin"}, may_be_more}};
        return judged(trigger, facts).answer;
    };
    CHECK(with(30, true) == Answer::yes);
    CHECK(with(0.2, true) == Answer::unknown);
    CHECK(with(0.2, false) == Answer::no);
}
