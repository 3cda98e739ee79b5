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

/// All that sets one base metal apart from another but its name. A tensile strength counts where rows of
/// preheat ask for it.
std::string print_of(const Base& base) {
    const bool strong = base.structure == "ferritic";
    return fmt::format("{} | {} | {} | {} | {} | {} | {}", base.structure, told(base.composition),
                       told(base.composition_min), base.density.value.value(),
                       base.conductivity ? base.conductivity->value.value() : 0,
                       base.yield_MPa ? base.yield_MPa->value : 0,
                       strong && base.tensile_MPa ? base.tensile_MPa->value : 0);
}

/// The same of a filler, without its diameters.
std::string print_of(const Filler& filler) {
    return fmt::format("{} | {} | {} | {} | {} | {} | {}", static_cast<int>(filler.form), filler.process,
                       told(filler.composition), told(filler.typical), filler.deposit_density.value.value(),
                       filler.efficiency.value, filler.hydrogen_ml_100g ? filler.hydrogen_ml_100g->value : 0);
}

/// Every sourced value below a value, once: the name of its field, its numbers and the key of its source,
/// with how that is known. Own work and common practice are never "read".
void gather(const std::string& field, const Value& value, const Bibliography& known,
            std::map<std::string, std::string>& values) {
    if (const auto* list = value.list()) {
        const std::string* key = list->empty() ? nullptr : list->back().text();
        const bool numbers = list->size() > 1 && std::all_of(list->begin(), list->end() - 1,
                                                             [](const Value& one) { return one.number(); });
        if (key && numbers) {
            std::string print = field;
            for (std::size_t i = 0; i + 1 < list->size(); ++i)
                print += fmt::format(" {}", *(*list)[i].number());
            const Source& source = known.at(*key);
            const bool outside = source.kind != "own" && source.kind != "practice";
            values[print + ' ' + *key] = outside ? source.seen : "memory";
            return;
        }
        for (const Value& element : *list)
            gather(field, element, known, values);
    }
    if (const auto* members = value.object())
        for (const Member& member : *members)
            gather(member.name, member.value, known, values);
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
            if (filler.name != "G 4Si1") // ER70S-6 to another standard, its limits apart by hundredths
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

// A value counts once, however many rows have it. More than this is not known first hand: most compositions,
// strengths and windows are from knowledge of their standards.
TEST_CASE("of the values of the families 18 % were read, or restated in a document that was") {
    std::map<std::string, std::string> values;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(RINGFILL_TABLES) + "/families")) {
        const std::string path = entry.path().string();
        gather("", parse(path, read_whole(path, 1'000'000), Origin::table).root, sources(), values);
    }
    std::map<std::string, std::size_t> by;
    for (const auto& [print, seen] : values)
        ++by[seen];
    const std::size_t known = by["read"] + by["restated"];
    INFO(by["read"] << " read, " << by["restated"] << " restated of " << values.size());
    CHECK(values.size() > 1'000);
    CHECK(100 * known >= 18 * values.size());
}

TEST_CASE("a copy of a value is not another value") {
    std::map<std::string, std::string> values;
    const Bibliography known = {{"A1", {"t", "e", "p", "standard", "read"}},
                                {"B2", {"t", "e", "p", "own", "read"}}};
    gather("",
           parse("t.json", R"({ "a": { "C": [1, "A1"] }, "b": { "C": [1, "A1"], "Mn": [1, 2, "B2"] } })",
                 Origin::table)
               .root,
           known, values);
    CHECK(values == std::map<std::string, std::string>{{"C 1 A1", "read"}, {"Mn 1 2 B2", "memory"}});
}

// Specific heat and conductivity of steel were read as others quote EN 1993-1-2; of the densities only that
// of silicon bronze was read.
TEST_CASE("densities are marked as what they are, memory") {
    const Bibliography known = sources();
    for (const Family& family : families()) {
        for (const Base& base : family.bases) {
            INFO(base.name);
            CHECK(known.at(base.density.source).seen == "memory");
        }
        for (const Filler& filler : family.fillers) {
            INFO(filler.name);
            CHECK((known.at(filler.deposit_density.source).seen == "memory" ||
                   filler.deposit_density.source == "wire-lengths"));
        }
    }
}
