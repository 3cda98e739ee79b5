#include <catch2/catch.hpp>

#include <ringfill/material/registry.hpp>

#include "document/own_folder.hpp"
#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography& sources() {
    static const Bibliography read = read_sources(table_files(Shelf{{RINGFILL_TABLES}}, "sources.json"));
    return read;
}

const Registry& own() {
    static const Registry read = read_registry(Shelf{{RINGFILL_TABLES}}, sources());
    return read;
}

} // namespace

TEST_CASE("every family of the product loads, every name leads back to its row, every value has its source") {
    const Registry& registry = own();
    REQUIRE(registry.families.size() >= 2);
    std::vector<Fault> faults;
    for (const Family& family : registry.families) {
        CHECK_FALSE(family.fillers.empty());
        for (const Base& one : family.bases) {
            INFO(family.name << '/' << one.name);
            CHECK(find_base(registry, family.name + '/' + one.name, "base", faults) == &one);
            CHECK(family.sources.count(one.density.source) == 1);
        }
        for (const Filler& one : family.fillers) {
            INFO(family.name << '/' << one.name);
            CHECK(find_filler(registry, family.name + '/' + one.name, "filler", faults) == &one);
            CHECK(family.sources.count(one.efficiency.source) == 1);
            CHECK(one.efficiency.value <= 1);
            CHECK_FALSE(one.sizes.empty());
        }
    }
    CHECK(faults.empty());
}

TEST_CASE("a mistyped name is answered with the nearest") {
    const auto filler = [](const std::string& name) {
        std::vector<Fault> faults;
        CHECK(find_filler(own(), name, "procedures.main.filler", faults) == nullptr);
        return to_string(faults.at(0));
    };
    CHECK(filler("steel/ER70S6") ==
          "procedures.main.filler: \"steel/ER70S6\" is not a known filler; did you mean "
          "\"steel/ER70S-6\"?");
    CHECK(filler("ER70S-6") ==
          "procedures.main.filler: \"ER70S-6\" is not a known filler; known here: stainless/ER308L, "
          "stainless/ER309L, steel/ER70S-6, steel/ER80S-D2, steel/E71T-1");
    std::vector<Fault> faults;
    CHECK(find_base(own(), "steel/c45", "bores[0].base", faults) == nullptr);
    CHECK(find_base(own(), "steel", "bores[0].base", faults) == nullptr);
    CHECK(find_base(own(), "steel/", "bores[0].base", faults) == nullptr);
    CHECK(find_base(own(), "", "bores[0].base", faults) == nullptr);
    REQUIRE(faults.size() == 4);
    CHECK(to_string(faults[0]) ==
          "bores[0].base: \"steel/c45\" is not a known base metal; did you mean \"steel/C45\"?");
}

TEST_CASE("a folder of the shop corrects a grade of the product and adds a family") {
    const OwnFolder folder;
    folder.put("families/steel.json",
               family_text(fmt::format("\"bases\": {{\"C45\": {{{}}}}}", base), "steel"));
    folder.put("families/alloy.json", filler_text(solid, R"("1.0": {})"));
    const Registry registry = read_registry(Shelf{{RINGFILL_TABLES, folder.path()}}, sources());
    std::vector<Fault> faults;
    REQUIRE(find_base(registry, "steel/C45", "", faults));
    CHECK(find_base(registry, "steel/C45", "", faults)->standard == "s");
    CHECK(find_base(registry, "steel/S355J2", "", faults));
    CHECK(find_filler(registry, "alloy/F", "", faults));
    CHECK(faults.empty());
}
