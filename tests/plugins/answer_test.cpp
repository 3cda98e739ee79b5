#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

#include <ringfill/material/guard.hpp>

#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// What a plugin is refused with when it is asked, without its name.
std::string refused_asking(const std::string& name) {
    const Plugin plugin = load_plugin(plugin_file(name));
    const std::string text = refusal(Origin::table, [&] { ask(plugin, preheat_question(), test_sources()); });
    return text.starts_with(plugin.file + ": ") ? text.substr(plugin.file.size() + 2) : text;
}

FamilyAnswer answer_of(const std::string& name) {
    return ask(load_plugin(plugin_file(name)), preheat_question(), test_sources());
}

const std::string there = " (preheat of bad/B1)";
const std::string kelvin = "; give it in kelvin, not in degrees Celsius";
const std::string finite = "; give a finite number, or leave the figure out";
const std::string no_method = "answered without any method" + there +
                              "; give a method, flagged RF_NOT_USABLE with the reason if there is no figure";

/// Each breaks one rule in its answer; the whole message after its name.
const std::vector<std::pair<std::string, std::string>> refused_when_asked = {
    {"throws_error",
     "threw across the interface (preheat of bad/B1): the rule failed; catch it in the plugin and give "
     "it to the sink's fault"},
    {"throws_int",
     "threw across the interface (preheat of bad/B1): something that is no std::exception; catch it in "
     "the plugin and give it to the sink's fault"},
    {"silent", no_method},
    {"no_method", no_method},
    {"loses_context", no_method},
    {"not_a_number", "gave the minimum of the method \"M\" as nan" + there + finite},
    {"endless_minimum", "gave the minimum of the method \"M\" as inf" + there + finite},
    {"celsius", "gave the minimum of the method \"M\" as 100 K, below 200 K" + there + kelvin},
    {"too_hot", "gave the minimum of the method \"M\" as 1500 K, above 1200 K" + there +
                    "; give it in kelvin, and only what metal can be heated to"},
    {"value_in_celsius", "gave the value interpass_max_K as 180 K, below 200 K" + there + kelvin},
    {"negative_value", "gave the value CET_pct as -0.1" + there + "; give a figure that is not negative"},
    {"value_with_flags", "gave the value CET_pct with the flags 4" + there + "; set flags to 0 for a value"},
    {"no_source", "gave the method \"M\" without a source" + there + "; name a key of the bibliography"},
    {"unknown_source", "gave the method \"M\" with the source \"nowhere\", which is not in the bibliography" +
                           there + "; add it to the sources of the family's table"},
    {"long_text",
     "gave the note of the method \"M\" of 2001 bytes; 2000 is the most" + there + "; say it shorter"},
    {"not_utf8", "gave the note of the method \"M\" that is not UTF-8 at byte 2" + there + "; give UTF-8"},
    {"control",
     "gave the note of the method \"M\" with characters that are not for people: \"red \xEF\xBF\xBD[31m\"" +
         there + "; leave out control characters, line breaks and marks of direction"},
    {"null_text", "gave the note of the method \"M\" as null with a size of 5" + there +
                      "; give the text, or a size of 0"},
    {"empty_name", "left the name of a method empty" + there + "; say it"},
    {"unknown_value", "gave the value \"hardness_HV\", which this program does not know" + there +
                          "; use a name of the list in abi.h"},
    {"unknown_flags", "gave the method \"M\" with the flags 128, some of which this program does not know" +
                          there + "; use the flags of version 1 only"},
    {"contradicting_flags", "gave the method \"M\" with flags that contradict each other" + there +
                                "; set one of RF_NONE_NEEDED, RF_NO_FIGURE and RF_NOT_USABLE at most"},
    {"not_usable_silently",
     "gave the method \"M\" as not usable without a note" + there + "; say in the note why not"},
    {"small_figure",
     "gave a method of 80 bytes; it must be 96 to 4096" + there + "; set size to sizeof(rf_figure)"},
    {"null_figure", "gave a method that is null" + there + "; pass the address of an rf_figure"},
    {"null_inputs", "gave the method \"M\" with 1 inputs that are null" + there +
                        "; pass the address of the inputs, or a count of 0"},
    {"many_inputs", "gave the method \"M\" with 65 inputs; 64 is the most" + there +
                        "; give only what the formula is made of"},
    {"endless_input", "gave the input T of the method \"M\" as inf" + there + finite},
    {"method_twice", "gave the method \"M\" twice" + there + "; give each once"},
    {"value_twice", "gave the value \"CET_pct\" twice" + there + "; give each once"},
    {"many_methods", "gave more than 64 methods" + there + "; give fewer"},
    {"many_advices", "gave more than 64 advices" + there + "; give fewer"},
    {"unknown_advice", "gave advice of the kind \"weather\", which this program does not know" + there +
                           "; use a kind of the list in abi.h"},
    {"unknown_status",
     "returned the status 7, which there is not" + there + "; return RF_DONE, RF_REFUSED or RF_UNSUPPORTED"},
    {"refuses_silently", "refused without saying why" + there + "; give the reason to the sink's fault"},
    {"refuses", "cannot answer (preheat of bad/B1): wall_m: the wall is thicker than any that was tried"},
    {"fault_and_done",
     "gave the fault \"something is wrong\" and did not refuse" + there + "; return RF_REFUSED with it"},
    {"unsupported_answer",
     "gave an answer and called the question unsupported" + there + "; return RF_DONE with an answer"},
    {"two_breaches", "gave the minimum of the method \"M\" as 100 K, below 200 K" + there + kelvin},
    {"rounds_up",
     "changed the floating-point mode" + there + "; leave rounding, traps and small numbers as they are"},
    {"sets_traps",
     "changed the floating-point mode" + there + "; leave rounding, traps and small numbers as they are"},
};

} // namespace

TEST_CASE(
    "each rule that is broken in an answer is told with file, topic, metal, what is wrong and what to do") {
    const ArithmeticModes before = arithmetic_modes();
    for (const auto& [name, message] : refused_when_asked) {
        INFO(name);
        CHECK(refused_asking(name) == message);
        CHECK(arithmetic_modes() == before);
    }
}

TEST_CASE("a good answer comes whole") {
    const FamilyAnswer answer = answer_of("good");
    CHECK(answer.supported);
    REQUIRE(answer.methods.size() == 1);
    const AnsweredMethod& method = answer.methods.front();
    CHECK(method.name == "M");
    CHECK(method.number == 373.15);
    CHECK(method.formula == "T");
    CHECK(method.source == "practice");
    CHECK(method.note.empty());
    REQUIRE(method.inputs.size() == 1);
    CHECK(method.inputs.front().symbol == "T");
    CHECK(method.inputs.front().values() == std::vector<double>{100});
    CHECK(method.inputs.front().unit == "degC");
    CHECK(method.flags == 0);
}

TEST_CASE("what is said is copied before the plugin uses its buffer again") {
    const FamilyAnswer answer = answer_of("overwrites");
    REQUIRE(answer.methods.size() == 2);
    CHECK(answer.methods[0].name == "first");
    CHECK(answer.methods[1].name == "wirst");
}

TEST_CASE("a topic a plugin has no rule for, and a plugin without a rule, leave it to the table") {
    Question question = preheat_question();
    question.topic = "advice";
    CHECK_FALSE(ask(load_plugin(plugin_file("good")), question, test_sources()).supported);
    CHECK_FALSE(ask(load_plugin(plugin_file("twin_a")), preheat_question(), test_sources()).supported);
}

TEST_CASE("a number that is not finite is never asked with") {
    Question question = preheat_question();
    question.numbers.emplace_back("yield_MPa", std::numeric_limits<double>::infinity());
    CHECK_THROWS_AS(ask(load_plugin(plugin_file("good")), question, test_sources()), std::logic_error);
}

TEST_CASE("what a metal is called is shown so that it cannot disturb a terminal") {
    Question question = preheat_question();
    question.grade = "B\n1";
    const Plugin plugin = load_plugin(plugin_file("silent"));
    const std::string text = refusal(Origin::table, [&] { ask(plugin, question, test_sources()); });
    CHECK(text.find('\n') == std::string::npos);
}
