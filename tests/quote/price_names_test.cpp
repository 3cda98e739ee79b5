#include <catch2/catch.hpp>

#include <ringfill/quote/price_names.hpp>
#include <ringfill/units/metric.hpp>

#include "small_job.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Need edges(NeedKind kind) {
    return need_of(kind, "", 1, 2);
}

Need wire(const std::string& filler, const std::string& spool) {
    return need_of(kinds::wire, filler, 3.5, 5, {{spool, 1, 5}});
}

bool is_named(std::string_view name, const Need& need, UnitSystem units = UnitSystem::metric) {
    return names_any_of(name, need, units);
}

} // namespace

TEST_CASE("a name names what has its words, whole and one after another") {
    const Need spool = wire("steel/ER70S-6", "5 kg spool");
    CHECK(is_named("contact tips", need_of(kinds::contact_tip, "steel/ER70S-6", 1, 2)));
    Need stick = need_of(kinds::temperature_stick, "", 1, 2);
    stick.name = "260 °C stick";
    CHECK(is_named("stick", stick));
    CHECK(is_named("5 kg spool", spool));
    CHECK(is_named("1.0 mm 5 kg", spool)); // commas part words, no more
    CHECK(is_named(" boring  edges, rough ", edges(kinds::rough_edge)));
    CHECK_FALSE(is_named("5 kg spool", wire("steel/ER70S-6", "15 kg spool")));
    CHECK_FALSE(is_named("tip", need_of(kinds::contact_tip, "steel/ER70S-6", 1, 2)));
    CHECK_FALSE(is_named("edges boring", edges(kinds::rough_edge)));
    CHECK_FALSE(
        is_named("contact tips 1.0 mm ER70S-6 more", need_of(kinds::contact_tip, "steel/ER70S-6", 1, 2)));
    CHECK_FALSE(is_named("", spool));
    CHECK_FALSE(is_named(" , ", spool));
}

TEST_CASE("the name with the most words counts, of these the longest, wherever it stands") {
    const NamedPrices prices = {{"boring edges", {8, 0}},
                                {"spool", {1, 0}},
                                {"edges", {2, 0}},
                                {"boring edges finish", {9, 0}},
                                {"5 kg spool", {21, 0}}};
    const auto price_of = [&](const Need& need) {
        const auto* found = price_by_name(prices, bought(need).front(), UnitSystem::metric);
        return found ? found->second.digits : -1;
    };
    CHECK(price_of(edges(kinds::rough_edge)) == 8);
    CHECK(price_of(edges(kinds::finish_edge)) == 9);
    CHECK(price_of(wire("steel/x", "5 kg spool")) == 21);
    CHECK(price_of(wire("steel/x", "15 kg spool")) == 1);
    CHECK(price_of(edges(kinds::drill)) == -1);
    const NamedPrices alike = {{"mixture", {1, 0}}, {"cylinder", {2, 0}}};
    const Need gas = need_of(kinds::gas, "M21", 1, 2, {{"10 L mixture cylinder", 1}});
    CHECK(price_by_name(alike, bought(gas).front(), UnitSystem::metric)->second == Decimal{2, 0});
}

TEST_CASE("a substance is named whole or not at all") {
    CHECK(is_named("wire steel/ER70S-6", wire("steel/ER70S-6", "5 kg spool")));
    CHECK_FALSE(is_named("wire steel/ER70S-6", wire("steel/ER70S-6 bare", "5 kg spool")));
    CHECK_FALSE(is_named("bare 1.0 mm", wire("steel/ER70S-6 bare", "5 kg spool")));
    CHECK(is_named("steel/ER70S-6 bare", wire("steel/ER70S-6 bare", "5 kg spool")));
    CHECK(is_named("T Fe1", wire("T Fe1", "5 kg spool")));
    CHECK_FALSE(is_named("T Fe1", wire("T Fe10", "5 kg spool")));
    CHECK_FALSE(is_named("T", wire("T Fe10", "5 kg spool")));
}

TEST_CASE("what a thing only serves does not name it") {
    const Need tips = need_of(kinds::contact_tip, "steel/ER70S-6 bare", 1, 2);
    CHECK(is_named("contact tips 1.0 mm ER70S-6 bare", tips));
    CHECK_FALSE(is_named("ER70S-6 bare", tips));
    CHECK_FALSE(is_named("contact tips 1.0 mm ER70S-6", tips));
    const Need oxygen = need_of(kinds::oxygen, "propane", 100, 200, {{"10 L oxygen cylinder", 1}});
    CHECK_FALSE(is_named("propane", oxygen));
    CHECK(is_named("oxygen for propane, 10 L oxygen cylinder", oxygen));
    CHECK(is_named("propane", need_of(kinds::fuel, "propane", 1, 2, {{"11 kg cylinder", 1}})));
}

// 1 in is 25.4 mm: 0.047 in are 1.1938 mm, and 1 mm is shown as 0.039 in.
TEST_CASE("a size is named in either unit system, by what it is") {
    Need spool = wire("steel/A", "11 lb spool");
    CHECK(is_named("wire steel/A 1.0 mm", spool, UnitSystem::metric));
    CHECK(is_named("wire steel/A 1.0 mm", spool, UnitSystem::inch));
    CHECK(is_named("wire steel/A 0.039 in", spool, UnitSystem::inch)); // as its line says
    CHECK_FALSE(is_named("wire steel/A 0.039 in", spool, UnitSystem::metric));
    CHECK_FALSE(is_named("wire steel/A 1.2 mm", spool));
    spool.size = millimetres(1.1938);
    CHECK(is_named("wire steel/A 0.047 in", spool, UnitSystem::metric));
    CHECK(is_named("wire steel/A 0.047 in", spool, UnitSystem::inch));
    spool.size = millimetres(1.2);
    CHECK_FALSE(is_named("wire steel/A 0.047 in", spool, UnitSystem::metric));
}

TEST_CASE("of two sizes that are shown alike each has the price with its very size") {
    const NamedPrices prices = {{"wire steel/A 0.047 in", {21, 0}}, {"wire steel/A 1.2 mm", {23, 0}}};
    Need spool = wire("steel/A", "11 lb spool");
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch})
        for (const auto& [diameter_mm, price] : {std::pair{1.1938, 21}, {1.2, 23}}) {
            spool.size = millimetres(diameter_mm);
            CHECK(price_by_name(prices, bought(spool).front(), units)->second.digits == price);
        }
}

// A filler whose name goes on after a priced one once had the price of that, and was not said to be missing.
TEST_CASE("a price by the kilogram is of one filler by its whole name") {
    SmallJob job;
    job.prices.wire_kg = {{"steel/ER70S-6", {42, 1}}};
    job.take.front().substance = "steel/ER70S-6 bare";
    const Quote found = job.quoted();
    CHECK_FALSE(section(found, QuotePart::packs).lines.front().amount);
    CHECK(found.missing ==
          std::vector<std::string>{"wire steel/ER70S-6 bare 1.0 mm, 5 kg spool: price: write \"5 kg spool\" "
                                   "in prices.packs, or its filler in prices.wire_kg"});
    job.prices.wire_kg.push_back({"steel/ER70S-6 bare", {50, 1}});
    CHECK(section(job.quoted(), QuotePart::packs).lines.front().amount == 2'500); // 5 kg at 5.00
}

// Fillers that begin with the same word once counted as one, and shared a price in silence.
TEST_CASE("fillers with blanks in their names are told apart when a name prices both") {
    SmallJob job;
    job.prices.wire_kg.clear();
    job.prices.packs = {{"5 kg spool", {30, 0}}};
    job.take = {wire("hard/T Fe1", "5 kg spool"), wire("hard/T Fe10", "5 kg spool")};
    const auto notes = job.quoted().notes;
    CHECK(notes.back() == "prices.packs \"5 kg spool\" is the price for each of hard/T Fe1, hard/T Fe10: "
                          "where they differ in price, write the fuller names that the lines have.");
    job.prices.packs = {{"wire hard/T Fe1", {30, 0}}};
    const Quote one = job.quoted();
    CHECK(section(one, QuotePart::packs).lines[0].amount == 3'000);
    CHECK_FALSE(section(one, QuotePart::packs).lines[1].amount);
}
