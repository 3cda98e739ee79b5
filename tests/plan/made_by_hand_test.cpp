#include <functional>
#include <limits>

#include <catch2/catch.hpp>

#include <ringfill/job/read_job.hpp>

#include "document/fault_words.hpp"
#include "fault_figures.hpp"
#include "job/full_job.hpp"
#include "sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

/// A job as a program makes it: values alone, no file.
Job sound_job() {
    Procedure procedure;
    procedure.name = "main";
    procedure.filler = "steel/ER70S-6";
    procedure.gas = "M21";
    procedure.wire = millimetres(1);
    procedure.wire_feed = in_si<Speed>(8.0 / 60);
    procedure.travel = in_si<Speed>(0.35 / 60);
    procedure.transfer = "short";
    WornBore bore;
    bore.name = "arm root";
    bore.axis = "horizontal";
    bore.base = "steel/C45";
    bore.procedure = "main";
    bore.finish_diameter = millimetres(90);
    bore.length = millimetres(100);
    bore.worn = Worn{millimetres(93.4), millimetres(0.4), Angle()};
    bore.skim = millimetres(0.5);
    bore.stock = millimetres(2);
    bore.overhang = millimetres(3);
    Job job;
    job.title = "Swing-arm pivots";
    job.procedures = {procedure};
    job.bores = {bore};
    job.day_start = in_si<Time>(7 * 3600);
    job.working_day = in_si<Time>(10 * 3600);
    job.change_over = in_si<Time>(20 * 60);
    job.reserve = 0.1;
    return job;
}

/// The faults that plan() finds in the sound job after a change.
std::vector<Fault> faults_after(const std::function<void(Job&)>& spoil) {
    Job job = sound_job();
    spoil(job);
    try {
        plan(job, shop());
    } catch (const Faulty& faulty) {
        CHECK(faulty.origin() == Origin::job);
        return faulty.faults();
    }
    return {};
}

/// What plan() says of it, fault by fault.
Lines told(const std::function<void(Job&)>& spoil) {
    Lines lines;
    for (const Fault& fault : faults_after(spoil))
        lines.push_back(to_string(fault));
    return lines;
}

/// The one fault of it, where a file is refused in the same words.
std::string told_as_of_a_file(const std::function<void(Job&)>& spoil) {
    const auto faults = faults_after(spoil);
    REQUIRE(faults.size() == 1);
    return in_figures(faults.front());
}

using Readings = std::vector<Length> WornStation::*;

/// The sound job with stations, depth and readings [mm], of radii or diameters.
std::function<void(Job&)> worn_as(Readings form,
                                  const std::vector<std::pair<double, std::vector<double>>>& stations) {
    std::vector<WornStation> worn;
    for (const auto& [depth, readings] : stations) {
        worn.push_back({millimetres(depth)});
        for (const double reading : readings)
            (worn.back().*form).push_back(millimetres(reading));
    }
    return [worn](Job& job) { job.bores[0].worn = {.stations = worn}; };
}

constexpr Readings radii = &WornStation::radii;
constexpr Readings diameters = &WornStation::diameters;

} // namespace

TEST_CASE("a sound job made by hand is planned") {
    CHECK(told([](Job&) {}) == Lines());
}

TEST_CASE("a job that was read is judged sound, whatever form it has") {
    CHECK_NOTHROW(judge_job(job_from(full_job)));
}

TEST_CASE("a job made by hand without procedures or bores is refused") {
    CHECK(
        told([](Job& job) { job.procedures.clear(); }) ==
        Lines{
            R"(procedures: is missing; write "procedures": { "main": { "filler": "steel/ER70S-6", ... } })"});
    CHECK(told([](Job& job) { job.bores.clear(); }) ==
          Lines{R"(bores: is missing; write "bores": [{ "name": "arm root", ... }])"});
}

TEST_CASE("a bore made by hand names one of the procedures") {
    CHECK(told([](Job& job) { job.bores[0].procedure = "mian"; }) ==
          Lines{R"(bores[0].procedure: "mian" is not one of the procedures; did you mean "main"?)"});
    CHECK(told([](Job& job) { job.bores[0].procedure.clear(); }) ==
          Lines{"bores[0].procedure: is missing; known here: main"});
}

TEST_CASE("two procedures or two bores of one name are refused") {
    CHECK(told([](Job& job) { job.procedures.push_back(job.procedures[0]); }) ==
          Lines{"procedures: has two of the same name; give each a name of its own"});
    CHECK(told([](Job& job) { job.bores.push_back(job.bores[0]); }) ==
          Lines{R"(bores[1].name: "arm root" is already the name of bores[0]; give each bore its own name)"});
}

TEST_CASE("a length that is no number, infinite, negative or nothing is refused with its path") {
    const auto length = [](double metres) {
        return told([metres](Job& job) { job.bores[0].length = in_si<Length>(metres); });
    };
    const std::string rest = " is out of range; give a value from 0.001 mm to 10000 mm";
    CHECK(length(not_a_number) == Lines{"bores[0].length: nan mm" + rest});
    CHECK(length(infinite) == Lines{"bores[0].length: inf mm" + rest});
    CHECK(length(-0.1) == Lines{"bores[0].length: -100 mm" + rest});
    CHECK(length(0) == Lines{"bores[0].length: 0 mm" + rest});
}

TEST_CASE("a count under one is refused") {
    CHECK(told([](Job& job) { job.bores[0].count = -5; }) ==
          Lines{"bores[0].count: -5" + out_of_range("from 1 to 10000")});
}

TEST_CASE("every figure of a procedure made by hand is held to its range") {
    CHECK(told([](Job& job) { job.procedures[0].wire = in_si<Length>(not_a_number); }) ==
          Lines{"procedures.main.wire: nan mm is out of range; give a value from 0.1 mm to 10 mm"});
    CHECK(told([](Job& job) { job.procedures[0].efficiency = not_a_number; }) ==
          Lines{"procedures.main.efficiency: nan" + out_of_range("from 0.001 to 2.5")});
    CHECK(told([](Job& job) {
              job.procedures[0].spools = {in_si<Mass>(15), in_si<Mass>(-1)};
          }) ==
          Lines{"procedures.main.spools[1]: -1 kg is out of range; give a value from 0.1 kg to 2000 kg"});
    CHECK(told([](Job& job) { job.procedures[0].wire_feed.reset(); }) ==
          Lines{"procedures.main.wire_feed: is missing, and so is current; "
                R"(write "wire_feed": "8 m/min" or "current": "180 A", or both)"});
    CHECK(told([](Job& job) { job.procedures[0].transfer = "long"; }) ==
          Lines{R"(procedures.main.transfer: "long" is not a word used here; )"
                "known here: short, pulse, spray, globular"});
    CHECK(told([](Job& job) { job.procedures[0].torch_path = static_cast<TorchPath>(7); }) ==
          Lines{R"(procedures.main.path: "" is not a word used here; known here: ring, helix)"});
}

TEST_CASE("stations made by hand have readings, all in the same number, deeper and deeper") {
    CHECK(told_as_of_a_file(worn_as(radii, {{5, {46.7, 46.7, 46.8}}, {50, {}}})) ==
          "bores[0].worn.stations[1]:");
    CHECK(told_as_of_a_file(worn_as(diameters, {})) == "bores[0].worn:");
    CHECK(told_as_of_a_file(worn_as(radii, {{5, {46.7, 46.7, 46.8}}, {50, {46.7, 46.7, 46.8, 46.7}}})) ==
          "bores[0].worn.stations[1].radii: 4 3");
    CHECK(told_as_of_a_file(worn_as(diameters, {{50, {93.4, 93.5}}, {5, {93.4, 93.5}}})) ==
          "bores[0].worn.stations[1].depth:");
    CHECK(told(worn_as(radii, {{5, {46.7, not_a_number, 46.8}}})) ==
          Lines{"bores[0].worn.stations[0].radii[1]: nan mm is out of range; give a value from 0.001 mm to "
                "10000 mm"});
}

TEST_CASE("rules of several fields hold for a job made by hand") {
    CHECK(told_as_of_a_file([](Job& job) { job.bores[0].boss_diameter = millimetres(80); }) ==
          "bores[0].boss_diameter:");
    CHECK(told_as_of_a_file([](Job& job) {
              job.bores[0].faces = {{millimetres(150), millimetres(90), millimetres(2)}};
          }) == "bores[0].faces[0].outer:");
    CHECK(told_as_of_a_file([](Job& job) {
              job.bores[0].composition = {{"Xy", 1.0}};
          }) == "bores[0].composition:");
}

TEST_CASE("hours and prices made by hand are judged") {
    CHECK(told([](Job& job) { job.breaks = in_si<Time>(8.5 * 3600); }) ==
          Lines{"breaks: 510 min is out of range; give a value from 0 min to 480 min"});
    CHECK(told_as_of_a_file([](Job& job) { job.breaks = job.working_day = in_si<Time>(4 * 3600); }) ==
          "breaks:");
    CHECK(told([](Job& job) { job.day_start = in_si<Time>(not_a_number); }) ==
          Lines{R"(start: "24:00" is no time of day; write it like "07:00")"});
    CHECK(told([](Job& job) { job.reserve = -1; }) ==
          Lines{"reserve: -100 % is out of range; give a value from 0 % to 1000 %"});
    CHECK(told([](Job& job) {
              job.prices.labour_hour = Decimal{85, 400};
          }) == Lines{"prices.labour_hour: nan" + out_of_range("from 0 to 100000000")});
    CHECK(told([](Job& job) {
              job.prices.labour_hour = Decimal{12'345'678, 7};
          }) == Lines{"prices.labour_hour: has more than 6 decimals; round it"});
    CHECK(told([](Job& job) {
              job.prices.extras = {{" ", Decimal{85, 0}}};
          }) == Lines{"prices.extras. : is a price without a name; name what it is for"});
}

TEST_CASE("metal nobody can name stands in a job made by hand by its row, as a file is read") {
    CHECK(
        told([](Job& job) { job.bores[0].base = "unknown"; }) ==
        Lines{
            R"(bores[0].base: "unknown" names no family; name it "steel/unknown" until a magnet says otherwise)"});
}

TEST_CASE("two of one name in a job made by hand are refused, as in a file") {
    const std::string twice = ": has two of the same name; give each a name of its own";
    const NamedPrices prices = {{"waiting", Decimal{85, 0}}, {"waiting", Decimal{9, 0}}};
    CHECK(told([&](Job& job) { job.prices.labour = prices; }) == Lines{"prices.labour" + twice});
    CHECK(told([&](Job& job) { job.prices.wire_kg = prices; }) == Lines{"prices.wire_kg" + twice});
    CHECK(told([&](Job& job) { job.prices.packs = prices; }) == Lines{"prices.packs" + twice});
    CHECK(told([&](Job& job) { job.prices.extras = prices; }) == Lines{"prices.extras" + twice});
    CHECK(told([](Job& job) {
              job.bores[0].composition = {{"C", 0.4}, {"C", 0.5}};
          }) == Lines{"bores[0].composition" + twice});
}

TEST_CASE("a price made by hand stands in its lowest form") {
    CHECK(told([](Job& job) {
              job.prices.labour_hour = Decimal{420, 2};
          }) == Lines{"prices.labour_hour: nan" + out_of_range("from 0 to 100000000")});
    CHECK(told([](Job& job) { job.prices.labour_hour = Decimal{42, 1}; }) == Lines());
}

TEST_CASE("all that is wrong with a job made by hand is told at once") {
    CHECK(told([](Job& job) {
              job.title.clear();
              job.bores[0].count = 0;
              job.bores[0].length = in_si<Length>(not_a_number);
              job.working_day = Time();
          }).size() == 4);
    CHECK_THROWS_AS(plan(Job(), shop()), Faulty);
}
