#include <catch2/catch.hpp>

#include <ringfill/caution/judged.hpp>

using namespace ringfill;

namespace {

const Sourced<double> from_250{250, "own"};

Fact current(const std::string& procedure, std::optional<double> ampere) {
    return {ampere, "the arc has", Subject{Concern::procedure, procedure}};
}

Answer answer(const Circumstance* circumstance, const WorkFacts& facts) {
    return judged({circumstance, {}, {}}, facts).answer;
}

} // namespace

TEST_CASE("a figure is compared as its limits say: from included, under not") {
    const Trigger trigger{circumstance("wire_current_A"), Sourced<double>{60, "own"},
                          Sourced<double>{160, "own"}};
    const auto with = [&](std::optional<double> ampere) {
        WorkFacts facts;
        facts.procedures = 1;
        facts.known[circumstance("wire_current_A")] = {current("main", ampere)};
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
    const Trigger trigger{circumstance("wire_current_A"), from_250, {}};
    const auto with = [&](std::optional<double> cold, double hot) {
        WorkFacts facts;
        facts.procedures = 2;
        facts.known[circumstance("wire_current_A")] = {current("cold", cold), current("hot", hot)};
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
    facts.known[circumstance("wire_current_A")] = {current("a", 260), current("b", 300), current("c", 280)};
    CHECK(judged({circumstance("wire_current_A"), from_250, {}}, facts).because ==
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
    CHECK(answer(circumstance("coated"), coated("unknown")) == Answer::yes);
    const Judged zinc = judged({circumstance("zinc_coated"), {}, {}}, coated("unknown"));
    CHECK(zinc.answer == Answer::unknown);
    CHECK(zinc.because == "nobody knows the coating");
    CHECK(answer(circumstance("coated"), coated("zinc")) == Answer::yes);
    CHECK(answer(circumstance("zinc_coated"), coated("zinc")) == Answer::yes);
    CHECK(answer(circumstance("coated"), coated("none")) == Answer::no);
    CHECK(answer(circumstance("zinc_coated"), coated("paint")) == Answer::no);
}

TEST_CASE("each kind of arc has limits of its own") {
    WorkFacts facts;
    facts.procedures = 1;
    facts.known[circumstance("stick_current_A")] = {current("sticks", 280)};
    CHECK(judged({circumstance("stick_current_A"), from_250, {}}, facts).answer == Answer::yes);
    CHECK(judged({circumstance("wire_current_A"), from_250, {}}, facts).answer == Answer::no);
    CHECK(judged({circumstance("rod_current_A"), from_250, {}}, facts).answer == Answer::no);
    facts.procedures = 2;
    facts.known[circumstance("wire_current_A")] = {current("wire", std::nullopt)};
    CHECK(judged({circumstance("wire_current_A"), from_250, {}}, facts).answer == Answer::unknown);
    CHECK((judged({circumstance("wire_current_A"), from_250, {}}, facts).about ==
           std::vector<Subject>{{Concern::procedure, "wire"}}));
}

TEST_CASE("bores that are not known stay open beside those that hold") {
    const Trigger trigger{circumstance("peak_degC"), Sourced<double>{43, "own"}, {}};
    WorkFacts facts;
    facts.bores = 2;
    facts.known[circumstance("peak_degC")] = {
        {226.85, "the boss gets to", Subject{Concern::bore, "hot"}},
        {{}, "the boss gets to", Subject{Concern::bore, "nobody knows"}}};
    const Judged found = judged(trigger, facts);
    CHECK((found.about == std::vector<Subject>{{Concern::bore, "hot"}}));
    CHECK((found.open == std::vector<Subject>{{Concern::bore, "nobody knows"}}));
}

TEST_CASE("a heater that is only assumed leaves the other fuels open") {
    WorkFacts facts;
    add_fuels(facts, std::vector<BurntFuel>{{"propane", false}}, false);
    CHECK(answer(circumstance("propane"), facts) == Answer::yes);
    CHECK(answer(circumstance("fuel_gas"), facts) == Answer::yes);
    CHECK(answer(circumstance("acetylene"), facts) == Answer::no);
    CHECK(answer(circumstance("electric_heater"), facts) == Answer::no);
    WorkFacts assumed;
    add_fuels(assumed, std::vector<BurntFuel>{{"propane", false}}, true);
    CHECK(judged({circumstance("propane"), {}, {}}, assumed).because ==
          "propane heats the boss, assumed: the job names no heater");
    for (const Circumstance* open :
         {circumstance("acetylene"), circumstance("oxygen"), circumstance("electric_heater")})
        CHECK(answer(open, assumed) == Answer::unknown);
    WorkFacts electric;
    add_fuels(electric, std::vector<BurntFuel>{}, false);
    CHECK(answer(circumstance("electric_heater"), electric) == Answer::yes);
    CHECK(answer(circumstance("fuel_gas"), electric) == Answer::no);
}

TEST_CASE("metal that is not known is open unless the other one has enough") {
    const Trigger trigger{circumstance("chromium_pct"), Sourced<double>{1, "own"}, {}};
    const auto with = [&](double percent, bool may_be_more) {
        WorkFacts facts;
        facts.bores = 1;
        facts.known[circumstance("chromium_pct")] = {
            {percent, "filler or metal hold Cr of", Subject{Concern::bore, "pin"}, may_be_more}};
        return judged(trigger, facts).answer;
    };
    CHECK(with(30, true) == Answer::yes);
    CHECK(with(0.2, true) == Answer::unknown);
    CHECK(with(0.2, false) == Answer::no);
}
