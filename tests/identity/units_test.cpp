#include <catch2/catch.hpp>

#include <ringfill/report/json/json.hpp>
#include <ringfill/units/metric.hpp>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// The plan of a sketch whose limits of heat are approved ones, shown as typed: computed ones are rounded in
/// the unit of the job.
Plan approved(const Sketch& sketch, UnitSystem units) {
    Job job = job_from(text_of(sketch, units));
    for (Procedure& procedure : job.procedures) {
        Approved& limits = procedure.approved.emplace();
        limits.reference = "P-12";
        limits.preheat_min = celsius(180);
        limits.interpass_max = celsius(300);
        limits.post_heat = Approved::PostHeat{celsius(250), in_si<Time>(7200)};
    }
    return plan(job, shop());
}

/// Bores and totals of a plan. Packs differ between the two sides of the ocean, the clock position of an
/// extreme may swap with its equal opposite, and what would lower a preheat is told between rounded figures.
std::vector<Figure> comparable(const Plan& plan) {
    const Value document = plan_document(plan);
    std::vector<Figure> figures;
    for (const char* block : {"bores", "totals"})
        for (const Figure& figure : figures_of(*document.find(block), block))
            if (!figure.path.ends_with("_clock_deg") && figure.path.find("lowered_by") == std::string::npos &&
                figure.path.find("later_layers") == std::string::npos)
                figures.push_back(figure);
    return figures;
}

} // namespace

TEST_CASE("the same job in millimetres and in inches has the same plan") {
    for (const std::uint64_t seed : seeds_for(6)) {
        INFO("seed " << seed);
        const Sketch sketch = random_sketch(seed);
        const auto metric = comparable(approved(sketch, UnitSystem::metric));
        const auto inch = comparable(approved(sketch, UnitSystem::inch));
        REQUIRE(metric.size() == inch.size());
        REQUIRE(metric.size() > 30);
        for (std::size_t i = 0; i < metric.size(); ++i)
            if (metric[i].path != inch[i].path || !close(metric[i].value, inch[i].value, 1e-9)) {
                INFO(inch[i].path);
                INFO(metric[i].path);
                REQUIRE(metric[i].value == inch[i].value);
            }
    }
}
