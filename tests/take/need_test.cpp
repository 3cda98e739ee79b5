#include <catch2/catch.hpp>

#include <filesystem>
#include <map>
#include <set>

#include <fmt/format.h>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/units/metric.hpp>

#include "fahrenheit.hpp"
#include "shop_for_tests.hpp"
#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Need need_for(NeedKind kind, const std::string& substance = {}, NeedSize size = {}) {
    Need need;
    need.kind = kind;
    need.substance = substance;
    need.size = size;
    return need;
}

std::vector<Job> sample_jobs() {
    std::vector<Job> jobs;
    for (const char* folder : {"/cli/demo", "/tests/same_bytes/jobs"})
        for (const auto& file : std::filesystem::directory_iterator(std::string(RINGFILL_ROOT) + folder))
            if (file.path().extension() == ".json" && file.path().stem() != "unknown-filler")
                jobs.push_back(job_from(read_whole(file.path().string(), job_file_limit)));
    return jobs;
}

std::vector<std::string> ids_of(Job job, UnitSystem units) {
    job.units = units;
    std::vector<std::string> ids;
    for (const Need& need : plan(job, shop()).take)
        ids.push_back(need_id(need));
    return ids;
}

bool is_stick(const std::string& id) {
    return id.starts_with("temperature_stick:");
}

} // namespace

TEST_CASE("an id is kind, substance and size, in millimetres and degrees Celsius") {
    CHECK(need_id(need_for(kinds::wire, "steel/ER70S-6", millimetres(1))) == "wire:steel/ER70S-6:1.0 mm");
    CHECK(need_id(need_for(kinds::electrode, "steel/E7018", millimetres(3.2))) ==
          "electrode:steel/E7018:3.2 mm");
    CHECK(need_id(need_for(kinds::contact_tip, "steel/X", in_si<Length>(0.047 * factor::inch))) ==
          "contact_tip:steel/X:1.1938 mm");
    CHECK(need_id(need_for(kinds::drill, "", millimetres(10))) == "drill::10.0 mm");
    CHECK(need_id(need_for(kinds::gas, "M21")) == "gas:M21:");
    CHECK(need_id(need_for(kinds::oxygen, "acetylene")) == "oxygen:acetylene:");
    CHECK(need_id(need_for(kinds::temperature_stick, "", celsius(260))) == "temperature_stick::260 degC");
    CHECK(need_id(need_for(kinds::temperature_stick, "", fahrenheit(500))) ==
          "temperature_stick::260 degC"); // (500 - 32)/1.8
    CHECK(need_id(need_for(kinds::temperature_stick, "", fahrenheit(325))) ==
          "temperature_stick::162.7778 degC");
    CHECK(need_id(need_for(kinds::welding_set, "", SetRating{221, 100})) == "welding_set::221 A 100 %");
    CHECK(need_id(need_for(kinds::fire_watch)) == "fire_watch::");
}

TEST_CASE("every kind has an id, a unit and words of its own") {
    std::set<std::string> ids;
    std::set<std::string> items;
    const std::vector<NeedKind> all = {kinds::wire,
                                       kinds::electrode,
                                       kinds::rod,
                                       kinds::gas,
                                       kinds::contact_tip,
                                       kinds::gas_nozzle,
                                       kinds::liner,
                                       kinds::temperature_stick,
                                       kinds::thermometer,
                                       kinds::fuel,
                                       kinds::oxygen,
                                       kinds::blanket,
                                       kinds::welding_set,
                                       kinds::power_supply,
                                       kinds::generator_fuel,
                                       kinds::plug_rod,
                                       kinds::drill,
                                       kinds::fitting,
                                       kinds::rough_edge,
                                       kinds::finish_edge,
                                       kinds::fire_watch,
                                       kinds::extinguisher};
    for (const NeedKind& kind : all) {
        Need need = need_for(kind, "x/y");
        need.name = "a stick";
        ids.insert(need_id(need));
        items.insert(item(need));
        CHECK_FALSE(unit(need).empty());
    }
    CHECK(ids.size() == all.size());
    CHECK(items.size() == ids.size());
}

TEST_CASE("no two needs of a sample share an id, and it is the same in either unit system") {
    std::size_t compared = 0;
    for (const Job& job : sample_jobs()) {
        INFO(job.title);
        auto metric = ids_of(job, UnitSystem::metric);
        auto inch = ids_of(job, UnitSystem::inch);
        CHECK(std::set<std::string>(metric.begin(), metric.end()).size() == metric.size());
        CHECK(std::set<std::string>(inch.begin(), inch.end()).size() == inch.size());
        // In the other unit system sticks of the other scale are on sale: other things, with other ids.
        metric.erase(std::remove_if(metric.begin(), metric.end(), is_stick), metric.end());
        inch.erase(std::remove_if(inch.begin(), inch.end(), is_stick), inch.end());
        CHECK(metric == inch);
        compared += metric.size();
    }
    CHECK(compared > 50);
}

TEST_CASE("a stick of one rating is one thing, whatever two rows of a table call it") {
    const std::vector<Stick> sticks = {{"red", UnitSystem::metric, celsius(150), "practice", true},
                                       {"150", UnitSystem::metric, celsius(150), "practice", true}};
    const auto lines =
        stick_needs({{"pin", celsius(140), {}}, {"lug", {}, celsius(160)}}, sticks, UnitSystem::metric);
    REQUIRE(lines.size() == 2);
    CHECK(item(lines[0]) == "red");
    CHECK(lines[0].supplied == 2);
}
