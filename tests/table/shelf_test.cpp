#include <catch2/catch.hpp>

#include <filesystem>

#include <sys/stat.h>

#include <ringfill/table/gases.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/table/wear_parts.hpp>

#include "document/own_folder.hpp"
#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Bibliography sources() {
    return read_sources(table_files(Shelf{{RINGFILL_TABLES}}, "sources.json"));
}

const WirePack* spool(const Packs& packs, const std::string& name) {
    for (const WirePack& pack : packs.wire)
        if (pack.name == name)
            return &pack;
    return nullptr;
}

} // namespace

TEST_CASE("a second folder corrects an entry and adds one") {
    const OwnFolder folder;
    folder.put("packs.json", R"({"format": "ringfill-packs/1", "description": "of this shop", "wire": {
        "15 kg spool": {"units": "mm", "content_kg": [14.5, "practice"], "stocked": false},
        "1 kg spool": {"units": "mm", "content_kg": [1, "practice"]}}})");
    const Shelf shelf{{RINGFILL_TABLES, folder.path()}};
    const Packs before = read_packs(table_files(Shelf{{RINGFILL_TABLES}}, "packs.json"), sources());
    const Packs after = read_packs(table_files(shelf, "packs.json"), sources());
    CHECK(after.wire.size() == before.wire.size() + 1);
    CHECK(after.gas.size() == before.gas.size());
    REQUIRE(spool(after, "15 kg spool"));
    CHECK(spool(after, "15 kg spool")->content.value == 14.5 * units::si::kilogram);
    CHECK(spool(after, "15 kg spool")->content.source == "practice");
    CHECK_FALSE(spool(after, "15 kg spool")->stocked);
    REQUIRE(spool(after, "1 kg spool"));
    CHECK(spool(after, "1 kg spool")->stocked);
    CHECK(spool(after, "5 kg spool")->content.value == spool(before, "5 kg spool")->content.value);
}

TEST_CASE("a wear part is corrected figure by figure") {
    const OwnFolder folder;
    folder.put("wear_parts.json", R"({"format": "ringfill-wear_parts/1", "description": "of this shop",
        "parts": {"nozzle": {"arc_life_h": [50, "practice"]}}})");
    const WearParts before =
        read_wear_parts(table_files(Shelf{{RINGFILL_TABLES}}, "wear_parts.json"), sources());
    const WearParts after =
        read_wear_parts(table_files(Shelf{{RINGFILL_TABLES, folder.path()}}, "wear_parts.json"), sources());
    CHECK(after.nozzle_life.value.value() == 50 * 3'600.0);
    CHECK(after.tip_life.value == before.tip_life.value);
    CHECK(after.liner_length.value == before.liner_length.value);
}

TEST_CASE("a table that no folder has is missing") {
    const OwnFolder folder;
    CHECK(refusal(Origin::table, [&] { table_files(Shelf{{folder.path()}}, "packs.json"); }) ==
          "packs.json: is in none of the table folders (" + folder.path() +
              "); install the tables again or name their folder with --tables");
}

TEST_CASE("a table of broken JSON names its file") {
    const OwnFolder folder;
    folder.put("packs.json", "{");
    CHECK(refusal(Origin::table,
                  [&] {
                      table_files(Shelf{{RINGFILL_TABLES, folder.path()}}, "packs.json");
                  }) == folder / "packs.json" +
                            ":1:2: the file ends too early; close every bracket and quote\n    {\n     ^");
}

TEST_CASE("folders that are not there are all named") {
    const OwnFolder folder;
    folder.put("file", "");
    CHECK_NOTHROW(refuse_missing_folders(Shelf{{RINGFILL_TABLES, folder.path()}}));
    CHECK(refusal(Origin::file,
                  [&] {
                      refuse_missing_folders(Shelf{{folder / "no", folder / "file"}});
                  }) == folder / "no" + ": is not a folder of tables; check the name\n" + folder / "file" +
                            ": is not a folder of tables; check the name");
}

TEST_CASE("families are found in every folder, once each, by names that are names") {
    const OwnFolder first;
    const OwnFolder second;
    for (const std::string name :
         {"steel.json", "b2_x.json", "Steel.json", "2b.json", "a-b.json", "note.txt"})
        first.put("families/" + name, "{}");
    second.put("families/steel.json", "{}");
    second.put("families/aluminium.json", "{}");
    second.put("families/" + std::string(40, 'a') + ".json", "{}");
    second.put("families/" + std::string(41, 'a') + ".json", "{}");
    CHECK(family_names(Shelf{{first.path(), second.path()}}) ==
          std::vector<std::string>{std::string(40, 'a'), "aluminium", "b2_x", "steel"});
    CHECK(family_names(Shelf{{first / "no"}}).empty());
}

TEST_CASE("every table of the product is one that is read") {
    CHECK_NOTHROW(refuse_unread_files(Shelf{{RINGFILL_TABLES, RINGFILL_TABLES}}));
}

TEST_CASE("a file that nothing reads is told with the nearest name, in a folder of the user alone") {
    const OwnFolder folder;
    for (const char* name : {"pack.json", "standing-times.json", "Packs.JSON", "steel.json", "familys/x.json",
                             "families/Steel.json", "families/ours.json", "notes.txt", "old/steel.json"})
        folder.put(name, "{}");
    CHECK_NOTHROW(refuse_unread_files(Shelf{{folder.path()}}));
    CHECK(
        refusal(Origin::table,
                [&] {
                    refuse_unread_files(Shelf{{RINGFILL_TABLES, folder.path()}});
                }) ==
        folder / "Packs.JSON" + ": is no table that is read; did you mean \"packs.json\"?\n" +
            folder / "familys" + ": is no folder that is read; did you mean \"families\"?\n" +
            folder / "pack.json" + ": is no table that is read; did you mean \"packs.json\"?\n" +
            folder / "standing-times.json" +
            ": is no table that is read; did you mean \"standing_times.json\"?\n" + folder / "steel.json" +
            ": is no table that is read; put it into the folder families: families/steel.json\n" +
            folder / "families/Steel.json" +
            ": is no name of a family, so it is not read; name it after its family in small letters, digits "
            "and _: steel.json");
}

TEST_CASE("a pipe, a device and a link to nothing are refused at once, a link to a table is read") {
    const OwnFolder folder;
    const Shelf shelf{{folder.path()}};
    const auto told = [&](const std::string& name) {
        return refusal(Origin::file, [&] { table_files(shelf, name); });
    };
    REQUIRE(::mkfifo((folder / "packs.json").c_str(), 0600) == 0);
    std::filesystem::create_symlink("/dev/zero", folder / "gases.json");
    std::filesystem::create_symlink(folder / "no", folder / "fuels.json");
    const std::string pipe = ": is a pipe or a device, not a file of a table; put a plain file in its place";
    CHECK(told("packs.json") == folder / "packs.json" + pipe);
    CHECK(told("gases.json") == folder / "gases.json" + pipe);
    CHECK(told("fuels.json") ==
          folder / "fuels.json" +
              ": is a link to a file that is not there; put the table there or take the link away");
    folder.put("real.json", "{}");
    std::filesystem::create_symlink(folder / "real.json", folder / "suits.json");
    CHECK(table_files(shelf, "suits.json").size() == 1);
}

TEST_CASE("a table that is too large is told as a table") {
    const OwnFolder folder;
    folder.put("packs.json", std::string(4'000'001, ' '));
    CHECK(refusal(Origin::table, [&] { table_files(Shelf{{folder.path()}}, "packs.json"); }) ==
          folder / "packs.json" +
              ": is larger than 4000000 bytes; leave in the table only the rows that differ from ours");
    folder.put("gases.json", "{} {}");
    CHECK(refusal(Origin::table, [&] {
              table_files(Shelf{{folder.path()}}, "gases.json");
          }).find("something stands after the end of the table") != std::string::npos);
}
