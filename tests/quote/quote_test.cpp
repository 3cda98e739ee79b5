#include <catch2/catch.hpp>

#include "fault_figures.hpp"
#include "small_job.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// By hand. Packs: 5 kg at 4.20 = 21.00; 2 at 46.50 = 93.00; 2 at 1.40 = 2.80; together 116.80. Use: 3.5 of 5
// kg of 21.00 = 14.70; 1200 of 4000 L of 93.00 = 27.90; 1 of 2 of 2.80 = 1.40; together 44.00. Labour: 2 h at
// 80 = 160.00; 1.5 h at 95 = 142.50; 1 h at 80 = 80.00; 4 h at 40 = 160.00; together 542.50. Power: 8 kWh at
// 0.3125 = 2.50. Travel: 2 days and the crack test are 3 trips: 270 km at 0.65 = 175.50; 4.5 h at 80 =
// 360.00.
TEST_CASE("a quote of a small job, by hand") {
    SmallJob job;
    const Quote found = job.quoted();
    CHECK(job.faults.empty());
    CHECK(section(found, QuotePart::packs).sum == 11'680);
    CHECK(section(found, QuotePart::use).sum == 4'400);
    CHECK_FALSE(section(found, QuotePart::use).counts);
    CHECK(section(found, QuotePart::labour).sum == 54'250);
    CHECK(section(found, QuotePart::power).sum == 250);
    CHECK(section(found, QuotePart::travel).sum == 53'550);
    CHECK(found.subtotal == 11'680 + 54'250 + 250 + 53'550);
    CHECK(found.total == found.subtotal);
    CHECK(found.is_whole());
    CHECK_FALSE(found.taxed);
    CHECK(section(found, QuotePart::packs).lines.front().item == "wire steel/A 1.0 mm, 1 × 5 kg spool");
    CHECK(section(found, QuotePart::packs).lines.size() ==
          3); // the tool has no price, the fuel is no material
}

TEST_CASE("where the materials used count, the packs are for comparison") {
    SmallJob job;
    job.prices.by_use = true;
    const Quote found = job.quoted();
    CHECK_FALSE(section(found, QuotePart::packs).counts);
    CHECK(found.subtotal == 4'400 + 54'250 + 250 + 53'550);
}

// By hand: 1197.30 and 5 % are 59.865, to the even 59.86; 1257.16 and 12.5 % are 157.145, to 157.14; 1414.30
// and 8.875 % are 125.519125, to 125.52.
TEST_CASE("shares come on top of all that stands before them, each rounded once") {
    SmallJob job;
    job.prices.contingency = 5'000;
    job.prices.markup = 12'500;
    job.prices.tax = 8'875;
    const Quote found = job.quoted();
    REQUIRE(found.on_top.size() == 3);
    CHECK(found.on_top[0].amount == 5'986);
    CHECK(found.on_top[1].amount == 15'714);
    CHECK(found.on_top[2].amount == 12'552);
    CHECK(found.total == 119'730 + 5'986 + 15'714 + 12'552);
    CHECK(found.taxed);
}

TEST_CASE("a price of a pack goes before one by the kilogram, and a tool counts once it has a price") {
    SmallJob job;
    job.prices.packs.push_back({"5 kg spool", {2450, 2}});
    job.prices.packs.push_back({"blanket", {15, 0}});
    const Quote found = job.quoted();
    CHECK(section(found, QuotePart::packs).sum == 11'680 - 2'100 + 2'450 + 1'500);
    CHECK(section(found, QuotePart::packs).lines.front().item == "wire steel/A 1.0 mm, 5 kg spool");
}

TEST_CASE("each missing price is told, and the total is of the rest") {
    SmallJob job;
    job.prices.wire_kg.clear();
    job.prices.packs.erase(job.prices.packs.begin());
    job.prices.watch_hour.reset();
    job.prices.power_kwh.reset();
    job.prices.travel.reset();
    const Quote found = job.quoted();
    CHECK_FALSE(found.is_whole());
    CHECK(
        found.missing ==
        std::vector<std::string>{
            "wire steel/A 1.0 mm, 5 kg spool: price: write \"5 kg spool\" in prices.packs, or its filler in "
            "prices.wire_kg",
            "gas M21, 10 L mixture cylinder: price: write \"10 L mixture cylinder\" in prices.packs",
            "fire watch, a second person: price: write prices.watch_hour",
            "electricity: price: write prices.power_kwh",
            "travel: distance: write prices.travel.distance, 0 if there is none"});
    CHECK(found.total == 280 + 38'250);
    CHECK_FALSE(section(found, QuotePart::power).sum);
}

TEST_CASE("what is not known of hours, trips and energy is missing too") {
    SmallJob job;
    job.hours.reset();
    job.energy.reset();
    const Quote found = job.quoted();
    CHECK(found.missing == std::vector<std::string>{
                               "work: hours: no day is laid out, because no reason",
                               "fire watch, a second person: hours: no day is laid out, because no reason",
                               "power: energy: the job does not give current and voltage of every bore",
                               "travel: number of trips: write prices.travel.trips"});
    job.prices.travel->trips = 2;
    CHECK(section(job.quoted(), QuotePart::travel).sum == 11'700 + 24'000);
}

TEST_CASE("with no price at all there is no total") {
    SmallJob job;
    job.prices = {};
    job.prices.currency = "EUR";
    const Quote found = job.quoted();
    CHECK_FALSE(found.subtotal);
    CHECK_FALSE(found.total);
    CHECK(found.missing.size() == 3 + 4 + 1 + 1);
}

TEST_CASE("generator fuel counts instead of the mains, and is told") {
    SmallJob job;
    job.prices.fuel_litre = Decimal{18, 1};
    const Quote found = job.quoted();
    CHECK(section(found, QuotePart::power).sum == 450); // 2.5 L at 1.80
    CHECK(std::count(found.notes.begin(), found.notes.end(),
                     "The power is a generator's: prices.fuel_litre is given, and power_kwh is not used.") ==
          1);
}

TEST_CASE("a name of a pack that names nothing is told: it may be misspelt") {
    SmallJob job;
    job.prices.packs.push_back({"contct tips", {1, 0}});
    const Quote found = job.quoted();
    CHECK(found.notes.back() ==
          "prices.packs \"contct tips\" names nothing that is taken; a filler is named in full, "
          "family/filler.");
}

TEST_CASE("hours that are in no line are told") {
    SmallJob job;
    const auto told = [&](const char* note) {
        const Quote found = job.quoted();
        return std::count(found.notes.begin(), found.notes.end(), note) == 1;
    };
    const char* const heater =
        "Staying with a heater that slows the cooling after the last ring, 6 h 30 min in all, is in no "
        "line: add it to the extras.";
    const char* const looks =
        "The looks after the fire watch, from time to time over 2 h 00 min in all, are in no line.";
    CHECK_FALSE((told(heater) || told(looks)));
    job.hours->heater_after = in_si<Time>(6.5 * 3'600);
    job.hours->looks_after = in_si<Time>(2 * 3'600);
    CHECK((told(heater) && told(looks)));
    CHECK(told("The second person's time on the road is in no line."));
    CHECK(told("Tools without a price are not in it: insulating blanket."));
    job.prices.packs.push_back({"blanket", {15, 0}});
    CHECK_FALSE(told("Tools without a price are not in it: insulating blanket."));
}

// By hand: 3 h at 30 = 90.00.
TEST_CASE("idle hours are in no line unless the job gives them a price") {
    SmallJob job;
    const auto labour = *section(job.quoted(), QuotePart::labour).sum;
    job.hours->idle = 3;
    const Quote without = job.quoted();
    CHECK(section(without, QuotePart::labour).sum == labour);
    CHECK(std::count(without.notes.begin(), without.notes.end(),
                     "Idle hours until a morning, 3 h 00 min in all, are in no line: prices.labour.idle puts "
                     "them in.") == 1);
    job.prices.labour.push_back({"idle", {30, 0}});
    const Quote with = job.quoted();
    CHECK(section(with, QuotePart::labour).sum == labour + 9'000);
    CHECK(std::count_if(with.notes.begin(), with.notes.end(),
                        [](const std::string& note) { return note.starts_with("Idle hours"); }) == 0);
}

TEST_CASE("extras are whole amounts, and miles are miles") {
    SmallJob job;
    job.prices.extras = {{"lodging", {240, 0}}, {"=1+1", {5, 1}}};
    job.prices.travel->in_miles = true;
    const Quote found = job.quoted();
    CHECK(section(found, QuotePart::extras).sum == 24'050);
    CHECK(section(found, QuotePart::travel).lines.front().unit == "mi");
}

TEST_CASE("amounts too large to be exact are noted at their price") {
    SmallJob job;
    job.prices.labour_hour = Decimal{100'000'000, 0};
    job.hours->work.front().second = 1'000;
    job.quoted();
    REQUIRE_FALSE(job.faults.empty());
    CHECK(in_figures(job.faults.front()) == "prices.labour_hour:");
}
