#include <catch2/catch.hpp>

#include <ringfill/report/json/json.hpp>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// Bores and totals of a plan. Packs differ between the two sides of the ocean, and the clock position of an
/// extreme may swap with its equal opposite.
std::vector<Figure> comparable(const Plan& plan) {
    const Value document = plan_document(plan);
    std::vector<Figure> figures;
    for (const char* block : {"bores", "totals"})
        for (const Figure& figure : figures_of(*document.find(block), block))
            if (!figure.path.ends_with("_clock_deg"))
                figures.push_back(figure);
    return figures;
}

} // namespace

TEST_CASE("the same job in millimetres and in inches has the same plan") {
    for (const std::uint64_t seed : seeds_for(6)) {
        INFO("seed " << seed);
        const Sketch sketch = random_sketch(seed);
        const auto metric = comparable(planned(sketch, UnitSystem::metric));
        const auto inch = comparable(planned(sketch, UnitSystem::inch));
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
