#include <catch2/catch.hpp>

#include <string>

#include <ringfill/material/answer_sink.hpp>

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

rf_text as_text(const char* words) {
    return {words, std::char_traits<char>::length(words)};
}

/// What comes of a rule that an author wrote with the support headers.
template <class Rule>
AnswerSink::Outcome outcome_of(const Rule& rule) {
    AnswerSink collected(test_sources());
    const rf_sink sink = collected.interface();
    rf_question question = {};
    question.size = sizeof question;
    const rf_status status = family::guarded(&sink, &question, rule);
    return collected.outcome(status, "preheat");
}

} // namespace

TEST_CASE("a number is found by its name, and one that is not there is not zero") {
    const rf_number numbers[] = {{as_text("wall_m"), 0.02}, {as_text("wall"), 1}};
    rf_question question = {};
    question.numbers = numbers;
    question.number_count = 2;
    CHECK(family::number_of(question, "wall_m") == 0.02);
    CHECK(family::number_of(question, "wall") == 1);
    CHECK_FALSE(family::number_of(question, "wall_mm").has_value());
    question.number_count = 0;
    question.numbers = nullptr;
    CHECK_FALSE(family::number_of(question, "wall_m").has_value());
}

TEST_CASE("what is said from temporaries arrives whole") {
    const auto outcome = outcome_of([](const family::Sink& sink, const rf_question&) -> rf_status {
        sink.method({.name = std::string("M") + "1",
                     .number = 373.15,
                     .formula = std::string(100, 'T'),
                     .inputs = {{std::string(50, 'i'), 1.5, "%"}},
                     .source = "practice",
                     .note = std::string(100, 'n'),
                     .flags = RF_AT_EDGE});
        sink.value({.name = "CET_pct", .number = 0.4, .source = "practice"});
        sink.advice("soak", std::string(100, 'a'), "practice");
        return RF_DONE;
    });
    CHECK_FALSE(outcome.breach.has_value());
    REQUIRE(outcome.answer.methods.size() == 1);
    const AnsweredMethod& method = outcome.answer.methods.front();
    CHECK(method.name == "M1");
    CHECK(method.at_edge);
    CHECK(method.formula == std::string(100, 'T'));
    REQUIRE(method.inputs.size() == 1);
    CHECK(method.inputs.front().symbol == std::string(50, 'i'));
    CHECK(method.note == std::string(100, 'n'));
    REQUIRE(outcome.answer.values.size() == 1);
    CHECK(outcome.answer.values.front().number == 0.4);
    REQUIRE(outcome.answer.advice.size() == 1);
    CHECK(outcome.answer.advice.front().text == std::string(100, 'a'));
}

TEST_CASE("whatever a guarded rule throws becomes a fault and a refusal") {
    const auto refused = outcome_of([](const family::Sink&, const rf_question&) -> rf_status {
        throw family::Refusal("wall_m", "too thick for this rule");
    });
    CHECK(refused.refusal == "wall_m: too thick for this rule");
    const auto failed = outcome_of(
        [](const family::Sink&, const rf_question&) -> rf_status { throw std::out_of_range("no such row"); });
    CHECK(failed.refusal == "no such row");
    const auto odd = outcome_of([](const family::Sink&, const rf_question&) -> rf_status { throw 42; });
    CHECK(odd.refusal == "the rule failed for an unknown reason");
}
