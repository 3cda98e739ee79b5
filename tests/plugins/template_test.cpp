#include <catch2/catch.hpp>

#include <ringfill/material/conformance.hpp>

#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Bibliography sample_sources() {
    Bibliography sources = test_sources();
    sources.emplace("sample-rule", Source{"a rule", "-", "-", "own", "read"});
    return sources;
}

AnsweredMethod sample_answer(std::vector<std::pair<std::string, double>> numbers) {
    const Question question{"preheat", "S1", "steel/ER70S-6", std::move(numbers)};
    const FamilyAnswer answer = ask(load_plugin(RINGFILL_SAMPLE_PLUGIN), question, sample_sources());
    REQUIRE(answer.methods.size() == 1);
    return answer.methods.front();
}

} // namespace

TEST_CASE("the template is a plugin that keeps every rule") {
    for (const RuleKept& rule : conformance(RINGFILL_SAMPLE_PLUGIN, test_sources())) {
        INFO(rule.rule);
        CHECK(rule.broken == "");
    }
}

TEST_CASE("the template answers as its comments say") {
    CHECK(sample_answer({{"wall_m", 0.025}}).is(RF_NONE_NEEDED));
    const AnsweredMethod thick = sample_answer({{"wall_m", 0.026}});
    CHECK_FALSE(thick.is(RF_NONE_NEEDED));
    CHECK(thick.number == 373.15);
    CHECK(thick.note.empty());
    const AnsweredMethod unknown = sample_answer({});
    CHECK(unknown.number == 373.15);
    CHECK(unknown.note == "the wall is not known, so it is taken as thick");
}

TEST_CASE("the template has no rule for other topics") {
    const Question question{"advice", "S1", "steel/ER70S-6", {}};
    CHECK_FALSE(ask(load_plugin(RINGFILL_SAMPLE_PLUGIN), question, sample_sources()).supported);
}

TEST_CASE("a family of a table alone is a plugin without rules, and keeps every rule of the interface") {
    const Plugin plugin = load_plugin(RINGFILL_BARE_PLUGIN);
    CHECK(plugin.family == "bare");
    CHECK(plugin.version == "7");
    CHECK(plugin.answer == nullptr);
    for (const RuleKept& rule : conformance(RINGFILL_BARE_PLUGIN, {})) {
        INFO(rule.rule);
        CHECK(rule.broken == "");
    }
}
