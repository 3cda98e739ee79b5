#include <catch2/catch.hpp>

#include <algorithm>

#include "fault_figures.hpp"
#include "small_job.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

using Lines = std::vector<std::string>;

bool has(const Lines& lines, const std::string& line) {
    return std::count(lines.begin(), lines.end(), line) == 1;
}

/// Two fillers and two gases in packs of the same names.
SmallJob two_of_each() {
    SmallJob job;
    job.prices.wire_kg.clear();
    job.prices.packs.clear();
    job.take = {need_of(kinds::wire, "steel/A", 3.5, 5, {{"5 kg spool", 1}}),
                need_of(kinds::wire, "stainless/B", 3, 5, {{"5 kg spool", 1}}),
                need_of(kinds::gas, "M21", 1'200, 2'242, {{"10 L mixture cylinder", 1}}),
                need_of(kinds::gas, "M12", 900, 2'242, {{"10 L mixture cylinder", 1}}),
                need_of(kinds::fuel, "propane", 9, 11, {{"11 kg propane cylinder", 1}})};
    return job;
}

} // namespace

TEST_CASE("where the name of a pack would price something else too, the full one is told, and it works") {
    SmallJob job = two_of_each();
    const Quote found = job.quoted();
    CHECK(has(found.missing, "wire stainless/B 1.0 mm, 5 kg spool: price: write \"wire stainless/B 1.0 mm, 5 "
                             "kg spool\" in prices.packs, or its filler in prices.wire_kg"));
    CHECK(has(found.missing, "gas M12, 10 L mixture cylinder: price: write \"gas M12, 10 L mixture "
                             "cylinder\" in prices.packs"));
    CHECK(has(found.missing, "fuel propane, 11 kg propane cylinder: price: write \"11 kg propane cylinder\" "
                             "in prices.packs"));
    job.prices.packs = {{"wire stainless/B 1.0 mm, 5 kg spool", {90, 0}}};
    const Quote priced = job.quoted();
    const auto& lines = section(priced, QuotePart::packs).lines;
    CHECK_FALSE(lines[0].amount);
    CHECK(lines[1].amount == 9'000);
}

TEST_CASE("a name that prices more than one filler or gas is told") {
    SmallJob job = two_of_each();
    job.prices.packs = {{"5 kg spool", {30, 0}}, {"cylinder", {40, 0}}, {"gas M12", {50, 0}}};
    const Lines notes = job.quoted().notes;
    const std::string differ = ": where they differ in price, write the fuller names that the lines have.";
    CHECK(has(notes, "prices.packs \"5 kg spool\" is the price for each of steel/A, stainless/B" + differ));
    CHECK(has(notes, "prices.packs \"cylinder\" is the price for each of M21, propane" + differ));
    CHECK(std::none_of(notes.begin(), notes.end(), [](const std::string& note) {
        return note.find("\"gas M12\"") != std::string::npos;
    }));
}

// By hand: the large spool at its own 50.00, and 2 spools of 5 kg at 4.20 a kilogram, 42.00; of the 25 kg and
// 92.00 20 kg are used, 73.60.
TEST_CASE("a pack without a price of its own goes by the kilogram beside one that has its own") {
    SmallJob job;
    job.take = {need_of(kinds::wire, "steel/A", 20, 25, {{"15 kg spool", 1, 15}, {"5 kg spool", 2, 5}})};
    job.prices.packs = {{"15 kg spool", {50, 0}}};
    const Quote found = job.quoted();
    const auto& lines = section(found, QuotePart::packs).lines;
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].amount == 5'000);
    CHECK(lines[1].item == "wire steel/A 1.0 mm, 2 × 5 kg spool");
    CHECK(lines[1].amount == 4'200);
    CHECK(section(found, QuotePart::use).sum == 7'360);
    job.take.front().cover.back().filler_kg.reset(); // its mass is not known: the price of the pack is
                                                     // missing
    CHECK(has(job.quoted().missing, "wire steel/A 1.0 mm, 5 kg spool: price: write \"5 kg spool\" in "
                                    "prices.packs, or its filler in prices.wire_kg"));
}

TEST_CASE("of way and time the one that has a price but is not given is missing, else told") {
    SmallJob job;
    job.prices.travel->distance.reset();
    CHECK(job.quoted().missing ==
          Lines{"driving: distance: write prices.travel.distance, 0 if there is none"});
    job.prices.drive.reset();
    Quote found = job.quoted();
    CHECK(found.is_whole());
    CHECK(has(found.notes, "Driving is in no line: the job gives neither prices.travel.distance nor "
                           "prices.drive."));
    job.prices.travel = Travel{Decimal{90, 0}, false, std::nullopt, std::nullopt};
    job.prices.drive = Decimal{65, 2};
    found = job.quoted();
    CHECK(found.is_whole());
    CHECK(has(found.notes, "Time on the road is in no line: the job gives no prices.travel.time."));
    job.prices.labour.push_back({"travel", {60, 0}});
    CHECK(job.quoted().missing ==
          Lines{"time on the road: time: write prices.travel.time, \"0 min\" if there is none"});
}

TEST_CASE("no way and no time need no price and no number of trips") {
    SmallJob job;
    job.prices.drive.reset();
    job.prices.labour.push_back({"travel", {60, 0}});
    job.prices.travel = Travel{Decimal{}, false, std::nullopt, std::nullopt};
    CHECK(job.quoted().is_whole());
    job.prices.travel->time = Time();
    CHECK(job.quoted().is_whole());
    job.hours.reset();
    CHECK_THROWS(section(job.quoted(), QuotePart::travel)); // not so many trips of nothing
    const Lines missing = job.quoted().missing;
    CHECK(std::none_of(missing.begin(), missing.end(),
                       [](const std::string& line) { return line.starts_with("travel"); }));
}

TEST_CASE("a name in prices.packs of what another field prices is told") {
    SmallJob job;
    job.prices.packs.insert(
        job.prices.packs.end(),
        {{"generator fuel", {5, 0}}, {"fire watch", {100, 0}}, {"power supply", {50, 0}}});
    const Quote found = job.quoted();
    CHECK(has(found.notes, "prices.packs \"generator fuel\" is not used: that is priced by "
                           "prices.fuel_litre."));
    CHECK(has(found.notes, "prices.packs \"fire watch\" is not used: that is priced by prices.watch_hour."));
    CHECK(has(found.notes, "prices.packs \"power supply\" is not used: that is priced by prices.power_kwh."));
}

TEST_CASE("where the materials used count, what is missing tells the field") {
    SmallJob job;
    job.prices.by_use = true;
    job.prices.packs.erase(job.prices.packs.begin());
    CHECK(job.quoted().missing == Lines{"gas M21: price: write \"10 L mixture cylinder\" in prices.packs"});
}

TEST_CASE("unknown hours and energy do not hide a price that is missing too") {
    SmallJob job;
    job.hours.reset();
    job.energy.reset();
    job.prices.labour_hour.reset();
    job.prices.watch_hour.reset();
    job.prices.power_kwh.reset();
    job.prices.travel = Travel{Decimal{}, false, std::nullopt, std::nullopt};
    const Lines missing = job.quoted().missing;
    REQUIRE(missing.size() == 3);
    const auto lacks_both = [](const std::string& line, const std::string& item, const std::string& price) {
        return line.starts_with(item + ": ") && line.ends_with("; price: write prices." + price);
    };
    CHECK(lacks_both(missing[0], "work: hours", "labour_hour"));
    CHECK(lacks_both(missing[1], "fire watch, a second person: hours", "watch_hour"));
    CHECK(lacks_both(missing[2], "power: energy", "power_kwh"));
    job.prices.fuel_litre = Decimal{18, 1};
    for (const char* phase : {"set_up", "heating", "waiting", "boring", "clean_up"})
        job.prices.labour.push_back({phase, {80, 0}});
    const Quote found = job.quoted();
    CHECK(section(found, QuotePart::power).lines.front().price == Decimal{18, 1});
    const auto still_missing = [&](QuotePart part) { return section(found, part).lines.front().missing; };
    CHECK(still_missing(QuotePart::labour).starts_with("hours: ")); // each phase has its own price
    CHECK(still_missing(QuotePart::power).starts_with("energy: "));
    for (const QuotePart part : {QuotePart::labour, QuotePart::power})
        CHECK(still_missing(part).find("price") == std::string::npos);
}

TEST_CASE("what an unknown pack holds is not known") {
    SmallJob job;
    job.take.front().pack_known = false;
    const Quote found = job.quoted();
    const QuoteLine& used = section(found, QuotePart::use).lines.front();
    CHECK_FALSE(used.part.value().supplied);
    CHECK(used.missing.starts_with("pack: "));
}

// By hand: 1000 times 99,999,999.00 and the 1197.30 of the small job are 100,000,000,197.30, of which 20 %
// are 20,000,000,039.46.
TEST_CASE("a share of a large sum is exact, and its working is in its lowest terms") {
    SmallJob job;
    job.prices.extras.assign(1'000, {"all of it", {99'999'999, 0}});
    job.prices.tax = 20'000;
    const Quote found = job.quoted();
    CHECK(job.faults.empty());
    CHECK(found.subtotal == 10'000'000'019'730);
    CHECK(found.on_top.front().amount == 2'000'000'003'946);
    const auto work = quote_working(found);
    const auto tax = std::find_if(work.begin(), work.end(), [](const Working& one) {
        return one.figure == "quote.on_top[0].amount_minor";
    });
    REQUIRE(tax != work.end());
    CHECK(tax->inputs[1].values() == std::vector<double>{1});
    CHECK(tax->inputs[2].values() == std::vector<double>{5});
}

TEST_CASE("the working of a line tells its price in a hundredth of the smallest unit, as one number") {
    const auto work = quote_working(SmallJob().quoted());
    const auto line = std::find_if(work.begin(), work.end(), [](const Working& one) {
        return one.figure == "quote.sections[0].lines[0].amount_minor";
    });
    REQUIRE(line != work.end());
    CHECK(line->inputs[1].unit == "0.0001 EUR");
}

TEST_CASE("the share that cannot be counted exactly is named") {
    SmallJob job;
    job.prices.extras.assign(1'000, {"all of it", {99'999'999, 0}});
    job.prices.markup = 12'345;
    job.quoted();
    REQUIRE(job.faults.size() == 1);
    CHECK(in_figures(job.faults.front()) == "prices.markup:");
}

TEST_CASE("one price is faulted once, however many lines it stands for") {
    SmallJob job;
    job.prices.labour.clear();
    job.prices.labour_hour = Decimal{1, 6};
    job.quoted();
    REQUIRE(job.faults.size() == 1);
    CHECK(in_figures(job.faults.front()) == "prices.labour_hour: 0.000001 4 2");
}
