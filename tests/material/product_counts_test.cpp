// How much the product's families hold, and how it is known.

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/table/shelf.hpp>

using namespace ringfill;

namespace {

const Shelf own{{RINGFILL_TABLES}};

Bibliography sources() {
    return read_sources(table_files(own, "sources.json"));
}

std::vector<Family> families() {
    std::vector<Family> read;
    for (const std::string& name : family_names(own))
        read.push_back(read_family(name, table_files(own, "families/" + name + ".json"), sources()));
    return read;
}

std::string told(const Composition& composition) {
    std::string text;
    for (const auto& [element, percent] : composition)
        text += fmt::format("{} {} ", element, percent.value);
    return text;
}

/// All that sets one base metal apart from another but its name.
std::string print_of(const Base& base) {
    return fmt::format("{} | {} | {} | {} | {} | {}", base.structure, told(base.composition),
                       told(base.composition_min), base.density.value.value(),
                       base.yield_MPa ? base.yield_MPa->value : 0,
                       base.tensile_MPa ? base.tensile_MPa->value : 0);
}

/// The same of a filler, without its diameters.
std::string print_of(const Filler& filler) {
    return fmt::format("{} | {} | {} | {} | {} | {} | {}", static_cast<int>(filler.form), filler.process,
                       told(filler.composition), told(filler.typical), filler.deposit_density.value.value(),
                       filler.efficiency.value, filler.hydrogen_ml_100g ? filler.hydrogen_ml_100g->value : 0);
}

/// Counts the sourced values below a value by how their source is known. Own work and common practice are
/// never "read".
void count(const Value& value, const Bibliography& known, std::map<std::string, int>& by) {
    if (const auto* list = value.list()) {
        const std::string* key = list->empty() ? nullptr : list->back().text();
        const bool numbers = list->size() > 1 && std::all_of(list->begin(), list->end() - 1,
                                                             [](const Value& one) { return one.number(); });
        if (key && numbers) {
            const Source& source = known.at(*key);
            const bool outside = source.kind != "own" && source.kind != "practice";
            ++by[outside ? source.seen : "memory"];
            return;
        }
        for (const Value& element : *list)
            count(element, known, by);
    }
    if (const auto* members = value.object())
        for (const Member& member : *members)
            count(member.value, known, by);
}

} // namespace

TEST_CASE("the families hold 45 base metals and 40 fillers that differ in more than name and diameter") {
    std::set<std::string> bases;
    std::set<std::string> fillers;
    for (const Family& family : families()) {
        for (const Base& base : family.bases)
            if (base.name != unknown_metal)
                bases.insert(print_of(base));
        for (const Filler& filler : family.fillers)
            fillers.insert(print_of(filler));
    }
    INFO(bases.size() << " base metals, " << fillers.size() << " fillers");
    CHECK(bases.size() >= 45);
    CHECK(fillers.size() >= 40);
}

TEST_CASE("every form of filler is there: solid and cored wire, electrodes, rods") {
    std::map<FillerForm, int> forms;
    for (const Family& family : families())
        for (const Filler& filler : family.fillers) {
            ++forms[filler.form];
            INFO(filler.name);
            CHECK_FALSE(filler.group.empty());
        }
    CHECK(forms[FillerForm::solid] >= 20);
    CHECK(forms[FillerForm::cored] >= 10);
    CHECK(forms[FillerForm::stick] >= 8);
    CHECK(forms[FillerForm::rod] >= 3);
}

TEST_CASE("a third of all values of the families was read, or restated in a document that was") {
    std::map<std::string, int> by;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(RINGFILL_TABLES) + "/families")) {
        const std::string path = entry.path().string();
        count(parse(path, read_whole(path, 1'000'000), Origin::table).root, sources(), by);
    }
    const int all = by["read"] + by["restated"] + by["memory"];
    INFO(by["read"] << " read, " << by["restated"] << " restated of " << all);
    CHECK(all > 1'000);
    CHECK(3 * (by["read"] + by["restated"]) >= all);
}
