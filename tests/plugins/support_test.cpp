#include <catch2/catch.hpp>

#include <string>

#include <ringfill/material/answer.hpp>

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

/// What comes of a rule that an author wrote with the support headers: a function that captures nothing.
template <class Rule>
FamilyAnswer answer_of(Rule) {
    const Plugin plugin{.file = "x.family",
                        .family = "bad",
                        .version = "1",
                        .table = "{}",
                        .answer = [](const rf_sink* sink, const rf_question* question) {
                            return family::guarded(sink, question, Rule{});
                        }};
    return ask(plugin, preheat_question(), test_sources());
}

template <class Rule>
std::string refusal_of(Rule rule) {
    return refusal(Origin::table, [&] { answer_of(rule); });
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
    const FamilyAnswer answer = answer_of([](const family::Sink& sink, const rf_question&) -> rf_status {
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
    REQUIRE(answer.methods.size() == 1);
    const AnsweredMethod& method = answer.methods.front();
    CHECK(method.name == "M1");
    CHECK(method.is(RF_AT_EDGE));
    CHECK(method.formula == std::string(100, 'T'));
    REQUIRE(method.inputs.size() == 1);
    CHECK(method.inputs.front().symbol == std::string(50, 'i'));
    CHECK(method.note == std::string(100, 'n'));
    REQUIRE(answer.values.size() == 1);
    CHECK(answer.values.front().number == 0.4);
    REQUIRE(answer.advice.size() == 1);
    CHECK(answer.advice.front().text == std::string(100, 'a'));
}

TEST_CASE("whatever a guarded rule throws becomes a fault and a refusal") {
    const std::string refused = "x.family: cannot answer (preheat of bad/B1): ";
    CHECK(refusal_of([](const family::Sink&, const rf_question&) -> rf_status {
              throw family::Refusal("wall_m", "too thick for this rule");
          }) == refused + "wall_m: too thick for this rule");
    CHECK(refusal_of([](const family::Sink&, const rf_question&) -> rf_status {
              throw std::out_of_range("no such row");
          }) == refused + "no such row");
    CHECK(refusal_of([](const family::Sink&, const rf_question&) -> rf_status { throw 42; }) ==
          refused + "the rule failed for an unknown reason");
}
