#include <catch2/catch.hpp>

#include <thread>

#include <ringfill/material/registry.hpp>

#include "document/fault_words.hpp"
#include "document/own_folder.hpp"
#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography& sources() {
    static const Bibliography read = read_sources(table_files(Shelf{{RINGFILL_TABLES}}, "sources.json"));
    return read;
}

/// The families that are tables only; those with rules are missing, for no plugin is looked for.
const Registry& tables_only() {
    static const Registry read = Registry(Shelf{{RINGFILL_TABLES}}, {}, sources());
    return read;
}

} // namespace

TEST_CASE("every name leads back to its row") {
    const Registry& registry = tables_only();
    REQUIRE(registry.families().size() == 5); // all but steel and cast iron
    std::vector<Fault> faults;
    for (const Family& family : registry.families()) {
        for (const Base& one : family.bases) {
            INFO(family.name << '/' << one.name);
            CHECK(find_base(registry, family.name + '/' + one.name, "base", faults) == &one);
        }
        for (const Filler& one : family.fillers) {
            INFO(family.name << '/' << one.name);
            CHECK(find_filler(registry, family.name + '/' + one.name, "filler", faults) == &one);
        }
        CHECK(&family_of(registry, family.name + "/any") == &family);
    }
    CHECK(faults.empty());
}

TEST_CASE("a family with rules is missing without its plugin, and says so when it is asked for") {
    const Registry& registry = tables_only();
    REQUIRE(registry.missing().size() == 2);
    CHECK(registry.missing()[0].name == "cast_iron");
    CHECK(registry.missing()[1].name == "steel");
    const std::string why = std::string(RINGFILL_TABLES) +
                            "/families/steel.json: needs the rules of its plugin, which is not there; "
                            "install steel.family again or name its folder with --plugins";
    CHECK(to_string(registry.missing()[1].why) == why);
    std::vector<Fault> faults;
    CHECK(refusal(Origin::table, [&] { find_base(registry, "steel/C45", "bores[0].base", faults); }) == why);
    CHECK(refusal(Origin::table, [&] { find_filler(registry, "steel/ER70S-6", "", faults); }) == why);
    CHECK(faults.empty());
}

TEST_CASE("a mistyped name is answered with the nearest") {
    const auto filler = [](const std::string& name) {
        std::vector<Fault> faults;
        CHECK(find_filler(tables_only(), name, "procedures.main.filler", faults) == nullptr);
        return to_string(faults.at(0));
    };
    CHECK(filler("stainless/ER308") ==
          "procedures.main.filler: \"stainless/ER308\" is not a known filler; did you mean "
          "\"stainless/ER308L\"?");
    CHECK(filler("ER312") ==
          "procedures.main.filler: \"ER312\" is not a known filler; did you mean \"stainless/ER312\"?");
    CHECK(filler("stainless/ERNiCrMo-3") ==
          "procedures.main.filler: \"stainless/ERNiCrMo-3\" is not a known filler; did you mean "
          "\"nickel/ERNiCrMo-3\"?");
    CHECK(filler("ER70S-6") ==
          "procedures.main.filler: \"ER70S-6\" is not a known filler; ringfill materials lists all 38");
    std::vector<Fault> faults;
    CHECK(find_base(tables_only(), "stainless/306", "bores[0].base", faults) == nullptr);
    CHECK(find_base(tables_only(), "stainless", "bores[0].base", faults) == nullptr);
    CHECK(find_base(tables_only(), "stainless/", "bores[0].base", faults) == nullptr);
    CHECK(find_base(tables_only(), "", "bores[0].base", faults) == nullptr);
    REQUIRE(faults.size() == 4);
    CHECK(to_string(faults[0]) ==
          "bores[0].base: \"stainless/306\" is not a known base metal; did you mean \"stainless/304\"?");
}

TEST_CASE("a folder of the shop corrects a grade of the product and adds a family") {
    const OwnFolder folder;
    folder.put("families/stainless.json",
               family_text(fmt::format("\"bases\": {{\"304\": {{{}}}}}", base), "stainless"));
    folder.put("families/alloy.json", filler_text(solid, R"("1.0": {})"));
    const Registry registry = Registry(Shelf{{RINGFILL_TABLES, folder.path()}}, {}, sources());
    std::vector<Fault> faults;
    REQUIRE(find_base(registry, "stainless/304", "", faults));
    CHECK(find_base(registry, "stainless/304", "", faults)->standard == "s");
    CHECK(find_base(registry, "stainless/316", "", faults));
    CHECK(find_filler(registry, "alloy/F", "", faults));
    CHECK(faults.empty());
}

TEST_CASE("a family is read when it is asked for: a broken one is told where it is named or all are read") {
    const OwnFolder folder;
    folder.put("families/pewter.json", "7");
    folder.put("families/stainless.json",
               family_text(fmt::format("\"bases\": {{\"304\": {{{}}}}}", base), "stainless"));
    const Registry registry(Shelf{{folder.path()}}, {}, sources());
    std::vector<Fault> faults;
    const Base* found = find_base(registry, "stainless/304", "", faults);
    REQUIRE(found);
    const std::string why = folder.path() + "/families/pewter.json:1:1: 7" +
                            no_object("a number", "a material family") + "\n    7\n    ^";
    const auto told = [&](const auto& ask) { return refusal(Origin::table, ask); };
    for (int round = 0; round < 2; ++round) {
        CHECK(told([&] { find_filler(registry, "pewter/F", "", faults); }) == why);
        CHECK(told([&] { (void)registry.families(); }) == why);
        CHECK(told([&] { find_base(registry, "nowhere/B", "", faults); }) == why);
    }
    CHECK(find_base(registry, "stainless/304", "", faults) == found);
    CHECK(faults.empty());
}

TEST_CASE(
    "beside the product's own tables those of the user are all read at once: none of theirs is passed over") {
    const OwnFolder folder;
    folder.put("families/pewter.json", "7");
    const Registry registry(Shelf{{RINGFILL_TABLES, folder.path()}}, {}, sources());
    std::vector<Fault> faults;
    CHECK(refusal(Origin::table, [&] {
              find_base(registry, "stainless/304", "", faults);
          }).find("pewter.json:1:1: 7 is a number") != std::string::npos);
    CHECK(faults.empty());
}

TEST_CASE("a copy of a registry knows what the first has read") {
    const Registry registry(Shelf{{RINGFILL_TABLES}}, {}, sources());
    const Registry copy = registry;
    std::vector<Fault> faults;
    CHECK(find_base(copy, "nickel/N04400", "", faults) == find_base(registry, "nickel/N04400", "", faults));
    CHECK(&copy.families().front().get() == &registry.families().front().get());
}

TEST_CASE("threads that ask at once are given the same families") {
    const Registry registry(Shelf{{RINGFILL_TABLES}}, {}, sources());
    std::vector<const Family*> seen(8);
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < seen.size(); ++i)
        threads.emplace_back([&, i] { seen[i] = registry.family(i % 2 == 0 ? "nickel" : "bronze"); });
    for (std::thread& thread : threads)
        thread.join();
    for (std::size_t i = 0; i < seen.size(); ++i) {
        REQUIRE(seen[i]);
        CHECK(seen[i] == registry.family(i % 2 == 0 ? "nickel" : "bronze"));
    }
}
