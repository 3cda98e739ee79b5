#include <catch2/catch.hpp>

#include <cmath>
#include <filesystem>
#include <set>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/report/json/json.hpp>

#include "formula.hpp"
#include "heat/heat_balance_sample.hpp"
#include "report/odd_jobs.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

/// A job with a name to tell it by.
struct NamedJob {
    std::string name;
    std::string text;
};

/// The demo jobs, jobs at the ends of what there can be, and bosses whose heat goes in every way it can.
std::vector<NamedJob> jobs() {
    std::vector<NamedJob> all;
    for (const auto& file : std::filesystem::directory_iterator(std::string(RINGFILL_ROOT) + "/cli/demo"))
        if (file.path().extension() == ".json")
            all.push_back({file.path().filename(), read_whole(file.path().string(), job_file_limit)});
    for (const testing::OddJob& odd : testing::odd_jobs())
        all.push_back({odd.name, odd.text});
    all.push_back({"an extreme on one of seven readings, a wall just over 50 mm",
                   testing::odd_job(R"("finish_diameter": 90, "length": 100, "heat_wall": "50.5 mm",
                       "worn": { "stations": [ { "depth": 50, "radii": [47, 47, 47, 48, 47, 47, 47] } ] })")});
    testing::BalanceJob boss;
    boss.sink = "\"attached\": [ { \"thickness\": 25 }, { \"thickness\": 12 } ],";
    boss.approved = ", \"post_heat\": { \"temperature\": \"320 degC\", \"time\": \"2 h\" }";
    all.push_back({"two plates and a hold", boss.text()});
    boss.sink = "";
    all.push_back({"a range and a hold", boss.text()});
    boss.ambient = 60;
    all.push_back({"never cold", boss.text()});
    boss.ambient = 4;
    boss.sink = "";
    boss.boss = 125;
    boss.maximum = 230;
    all.push_back({"rests and a range", boss.text()});
    boss = {};
    boss.sink = "";
    boss.ambient = 4;
    boss.heater_kW = 5;
    all.push_back({"heater too small for the plate", boss.text()});
    boss.heater_kW = 1;
    all.push_back({"heater too small", boss.text()});
    return all;
}

Plan plan_of(const NamedJob& job) {
    return plan(testing::job_from(job.text), testing::shop());
}

testing::Symbols symbols_of(const Working& work) {
    testing::Symbols symbols;
    for (const Input& input : work.inputs)
        symbols[input.symbol] = input.values();
    return symbols;
}

const std::set<std::string> exempt = {"count", "layer",    "working",        "inputs",
                                      "curve", "timeline", "timeline_plate", "steps"};

/// Every number of a result with its path, but for what the job says itself (count), counters (layer), the
/// choice of packs, which no formula makes, the inputs of methods, and the workings. The steps and the curve
/// of a heat balance are points of one numerical integration: their working is its equation, told once as
/// time.curve, and a three-dimensional reference judges them in tests/heat.
void collect(const Value& value, const std::string& path,
             std::vector<std::pair<std::string, double>>& figures) {
    if (const double* number = value.number())
        figures.emplace_back(path, *number);
    if (const auto* list = value.list())
        for (std::size_t i = 0; i < list->size(); ++i)
            collect((*list)[i], element_path(path, i), figures);
    if (const auto* members = value.object())
        for (const Member& member : *members)
            if (!exempt.contains(member.name))
                collect(member.value, member_path(path, member.name), figures);
}

} // namespace

TEST_CASE("every formula of every job gives its value with its inputs") {
    REQUIRE(jobs().size() >= 8);
    for (const NamedJob& job : jobs()) {
        const std::string& name = job.name;
        const Plan planned = plan_of(job);
        CHECK(planned.working.size() > 20);
        for (const Working& work : planned.working) {
            INFO(name << ": " << work.figure << " = " << work.formula);
            const double value = testing::evaluate(work.formula, symbols_of(work));
            CHECK(std::fabs(value - work.value) <= 1e-9 * std::max(1.0, std::fabs(work.value)));
        }
    }
}

TEST_CASE("every figure of every job has one working with the same value and a known source") {
    for (const NamedJob& job : jobs()) {
        const std::string& name = job.name;
        const Plan planned = plan_of(job);
        std::map<std::string, double> worked;
        for (const Working& work : planned.working) {
            INFO(name << ": " << work.figure);
            CHECK(worked.emplace(work.figure, work.value).second);
            CHECK(testing::shop().sources.contains(work.source));
        }
        std::vector<std::pair<std::string, double>> figures;
        collect(plan_document(planned), "", figures);
        CHECK(figures.size() > 20);
        for (const auto& [path, value] : figures) {
            INFO(name << ": " << path);
            REQUIRE(worked.contains(path));
            CHECK(std::fabs(worked.at(path) - value) <= 1e-12 * std::max(1.0, std::fabs(value)));
        }
    }
}
