#include <algorithm>

#include <catch2/catch.hpp>

#include <ringfill/job/description.hpp>
#include <ringfill/job/format.hpp>

#include "full_job.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

/// Nothing but what is required.
const std::string least_job = R"json({
  "format": "ringfill-job/1", "title": "Least", "units": "mm",
  "procedures": { "main": { "filler": "steel/ER70S-6", "wire": "1 mm", "gas": "M21", "wire_feed": "8 m/min",
                            "travel": "350 mm/min" } },
  "bores": [{ "name": "one", "base": "steel/C45", "finish_diameter": "90 mm", "length": "100 mm",
              "worn": { "diameter": "93.4 mm" } }]
})json";

bool assumes(const Job& job, const std::string& path, const Field& field) {
    return std::any_of(job.assumed.begin(), job.assumed.end(), [&](const Assumed& one) {
        return one.path == path && one.value == field.fallback && one.source == field.fallback_source;
    });
}

std::size_t fallbacks(const Record& record) {
    return static_cast<std::size_t>(
        std::count_if(record.fields.begin(), record.fields.end(),
                      [](const Field& field) { return !field.fallback.empty(); }));
}

} // namespace

TEST_CASE("each value that falls back is listed as assumed with its source") {
    const Job job = job_from(least_job);
    for (const auto& [record, path] : {std::pair{&job_record, std::string()},
                                       std::pair{&procedure_record, std::string("procedures.main.")},
                                       std::pair{&bore_record, std::string("bores[0].")}})
        for (const Field& field : record->fields) {
            CAPTURE(path, field.name);
            if (!field.fallback.empty())
                CHECK(assumes(job, path + std::string(field.name), field));
        }
    CHECK(job.assumed.size() == fallbacks(job_record) + fallbacks(procedure_record) + fallbacks(bore_record));
}

TEST_CASE("the values that fall back are those of common practice") {
    // Computation, sections 2, 3, 8 and 12: skim 0.5 mm, stock 2 mm, overhang 3 mm, gas 1 s before and 2 s
    // after, reserve 10 %; common practice, no published source.
    const Job job = job_from(least_job);
    const WornBore& bore = job.bores.front();
    REQUIRE(bore.skim);
    CHECK_THAT(bore.skim->value(), WithinRel(0.5e-3, 1e-14));
    CHECK_THAT(bore.stock.value(), WithinRel(2e-3, 1e-14));
    CHECK_THAT(bore.overhang.value(), WithinRel(3e-3, 1e-14));
    CHECK(bore.axis == "horizontal");
    CHECK(bore.count == 1);
    CHECK(bore.procedure == "main");
    CHECK_THAT(job.procedures.front().gas_before.value(), WithinRel(1.0, 1e-14));
    CHECK_THAT(job.procedures.front().gas_after.value(), WithinRel(2.0, 1e-14));
    CHECK(job.procedures.front().transfer.empty());
    CHECK(job.procedures.front().torch_path == TorchPath::ring);
    CHECK_THAT(job.reserve, WithinRel(0.1, 1e-14));
}

TEST_CASE("what is left out without a value to fall back to stays absent") {
    const Job job = job_from(least_job);
    CHECK_FALSE(job.site.ambient);
    CHECK_FALSE(job.heater);
    CHECK_FALSE(job.procedures.front().current);
    CHECK_FALSE(job.procedures.front().travel_max);
    CHECK_FALSE(job.procedures.front().approved);
    CHECK_FALSE(job.bores.front().boss_diameter);
    CHECK(job.bores.front().faces.empty());
}

TEST_CASE("a job that gives everything assumes nothing in its first bore, procedure and head") {
    const Job job = job_from(full_job);
    for (const Assumed& one : job.assumed) {
        CAPTURE(one.path);
        CHECK((one.path.starts_with("bores[1].") || one.path.starts_with("bores[2].")));
    }
    CHECK(job.assumed.size() ==
          3 + 4); // axis, stock, overhang of the second; these and the skim of the third
}

TEST_CASE("a record within that is absent assumes nothing") {
    for (const Record* record :
         {&site_record, &approved_record, &post_heat_record, &worn_record, &station_record, &attached_record,
          &face_record, &groove_record, &hole_record, &torch_record, &heater_record, &boring_record,
          &prices_record, &labour_record}) {
        CAPTURE(record->name);
        CHECK(fallbacks(*record) == 0);
    }
}
