#include <catch2/catch.hpp>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/units/metric.hpp>

#include "identity/planned.hpp"
#include "report/draw/drawing_parts.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("drawings of random jobs are to scale, well formed, and their texts keep apart") {
    // A drawing takes as long as some plans: every tenth job of this property.
    const auto seeds = seeds_for(11);
    for (std::size_t s = 0; s < seeds.size(); s += 10) {
        INFO("seed " << seeds[s]);
        const UnitSystem units = s % 20 == 0 ? UnitSystem::metric : UnitSystem::inch;
        const Job job = job_from(text_of(random_sketch(seeds[s]), units));
        const Plan made = plan(job, shop());
        for (std::size_t i = 0; i < job.bores.size(); ++i) {
            const BorePlan& bore = made.bores[i];
            const Drawing cross = drawing_of(cross_section({job.bores[i], bore, units}, "a"));
            const std::string along = longitudinal_section({job.bores[i], bore, units}, "b");
            CHECK(text_faults(cross) == "");
            CHECK(text_faults(drawing_of(along)) == "");
            CHECK(along.size() < 250'000);
            CHECK(close(*cross.radius_mm("finish_diameter"), mm(bore.build.finish_radius), 1e-3));
            for (std::size_t n = 0; n < bore.layers.size(); ++n)
                CHECK(close(*cross.radius_mm("layer_" + std::to_string(n + 1)),
                            mm(bore.layers[n].radius_after), 1e-3));
            if (const std::string curve = curve_drawing(bore, units, "c"); !curve.empty())
                CHECK(text_faults(drawing_of(curve)) == "");
        }
    }
}
