#include <catch2/catch.hpp>

#include <array>
#include <cstdio>
#include <memory>
#include <string>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/material/conformance.hpp>
#include <ringfill/material/trial.hpp>
#include <ringfill/table/shelf.hpp>

#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const std::array shipped = {"steel",  "stainless", "manganese_steel", "cast_iron",
                            "nickel", "bronze",    "hardfacing"};

std::string shipped_file(const std::string& family) {
    return std::string(RINGFILL_PLUGIN_FOLDER) + "/" + family + ".family";
}

Bibliography product_sources() {
    return read_sources(table_files(Shelf{{RINGFILL_TABLES}}, "sources.json"));
}

/// What an outside program prints.
std::string output_of(const std::string& command) {
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(::popen(command.c_str(), "r"), ::pclose);
    REQUIRE(pipe);
    std::string text;
    std::array<char, 4'096> buffer{};
    while (std::fgets(buffer.data(), static_cast<int>(buffer.size()), pipe.get()))
        text += buffer.data();
    return text;
}

Family family_of(const Plugin& plugin) {
    return read_family(plugin.family, {parse("its table", plugin.table, Origin::table)}, product_sources());
}

} // namespace

TEST_CASE("a plugin that comes with the program exports one symbol, as an outside program sees it") {
    for (const std::string family : shipped) {
        const std::string symbols = output_of("nm -D --defined-only '" + shipped_file(family) + "'");
        INFO(symbols);
        CHECK(std::count(symbols.begin(), symbols.end(), '\n') == 1);
        CHECK(symbols.ends_with(" ringfill_material_v1\n"));
    }
}

TEST_CASE("a plugin that comes with the program carries its table as it stands in the tables") {
    for (const std::string family : shipped) {
        const Plugin plugin = load_plugin(shipped_file(family));
        CHECK(plugin.family == family);
        CHECK(plugin.table ==
              read_whole(std::string(RINGFILL_TABLES) + "/families/" + family + ".json", 4'000'000));
    }
}

TEST_CASE("a plugin that comes with the program keeps every rule of the interface") {
    for (const std::string family : shipped)
        for (const RuleKept& rule : conformance(shipped_file(family), product_sources())) {
            INFO(family << ": " << rule.rule);
            CHECK(rule.broken == "");
        }
}

TEST_CASE(
    "a thousand rounds of questions give the same answer, and leak nothing that the sanitizer would find") {
    for (const std::string name : shipped) {
        const Plugin plugin = load_plugin(shipped_file(name));
        const Family family = family_of(plugin);
        if (!plugin.answer) {
            CHECK(name == "hardfacing"); // its table says it all
            continue;
        }
        std::vector<Question> questions;
        for (const char* topic : {"preheat", "advice"})
            for (const double structure : {1.0, 2.0, 3.0, 4.0, 5.0, 6.0}) {
                Question question = middle_questions(family).front();
                question.topic = topic;
                question.numbers.emplace_back("structure", structure);
                questions.push_back(std::move(question));
            }
        std::string first;
        for (const Question& question : questions)
            first += to_the_bit(ask(plugin, question, family.sources));
        CHECK(first.size() > 200); // it does say something
        bool same = true;
        for (int round = 0; round < 1'000; ++round) {
            std::string again;
            for (const Question& question : questions)
                again += to_the_bit(ask(plugin, question, family.sources));
            same = same && again == first;
        }
        CHECK(same);
    }
}
