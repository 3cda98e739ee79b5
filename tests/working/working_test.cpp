#include <catch2/catch.hpp>

#include <cmath>
#include <filesystem>
#include <set>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/report/json.hpp>

#include "formula.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

std::vector<std::string> demo_jobs() {
    std::vector<std::string> names;
    for (const auto& file : std::filesystem::directory_iterator(std::string(RINGFILL_ROOT) + "/cli/demo"))
        if (file.path().extension() == ".json")
            names.push_back(file.path().string());
    return names;
}

Plan plan_of(const std::string& name) {
    return plan(testing::job_from(read_whole(name, job_file_limit)), testing::shop());
}

testing::Symbols symbols_of(const Working& work) {
    testing::Symbols symbols;
    for (const Input& input : work.inputs)
        symbols[input.symbol] = input.values;
    return symbols;
}

const std::set<std::string> exempt = {"count", "layer",    "working",       "inputs",
                                      "curve", "timeline", "timeline_plate"};

/// Every number of a result with its path, but for what the job says itself (count), counters (layer), the
/// choice of packs, which no formula makes, the inputs of methods, and the workings. The steps and the curve
/// of a heat balance are points of one numerical integration: their working is its equation, told once as
/// time.curve, and a fixed-step integration of it judges them in tests/heat.
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

TEST_CASE("every formula of every demo job gives its value with its inputs") {
    REQUIRE(demo_jobs().size() >= 2);
    for (const std::string& name : demo_jobs()) {
        const Plan planned = plan_of(name);
        CHECK(planned.working.size() > 20);
        for (const Working& work : planned.working) {
            INFO(name << ": " << work.figure << " = " << work.formula);
            const double value = testing::evaluate(work.formula, symbols_of(work));
            CHECK(std::fabs(value - work.value) <= 1e-9 * std::max(1.0, std::fabs(work.value)));
        }
    }
}

TEST_CASE("every figure of every demo job has one working with the same value and a known source") {
    for (const std::string& name : demo_jobs()) {
        const Plan planned = plan_of(name);
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
