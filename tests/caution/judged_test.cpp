#include <catch2/catch.hpp>

#include <ringfill/caution/judged.hpp>

using namespace ringfill;

TEST_CASE("a figure is compared as its limits say: from included, under not") {
    const Trigger trigger{Circumstance::current, Sourced<double>{60, "own"}, Sourced<double>{160, "own"}};
    WorkFacts facts;
    const auto with = [&](std::optional<double> ampere) {
        facts.procedures = {{"main", {}, false, false}};
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
    const Trigger trigger{Circumstance::current, Sourced<double>{250, "own"}, {}};
    WorkFacts facts;
    facts.procedures = {{"cold", in_si<Current>(100), false, false},
                        {"hot", in_si<Current>(300), false, false}};
    CHECK(judged(trigger, facts).about == std::vector<std::string>{"hot"});
    facts.procedures[0].current = std::nullopt;
    CHECK(judged(trigger, facts).answer == Answer::yes);
    facts.procedures[1].current = in_si<Current>(100);
    CHECK(judged(trigger, facts).answer == Answer::unknown);
    CHECK(judged(trigger, facts).about == std::vector<std::string>{"cold"});
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
