#include <catch2/catch.hpp>

#include <ringfill/document/whole_file.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// The job has a bore of each filler: two wires, a rod, three gases.
TEST_CASE("wires come first, then gases, then what wears out, what heats, what bores, and the fire watch") {
    const Job job =
        job_from(read_whole(std::string(RINGFILL_ROOT) + "/cli/demo/every-field.json", job_file_limit));
    std::vector<NeedKind> found;
    for (const Need& need : plan(job, shop()).take)
        if (found.empty() || found.back() != need.kind)
            found.push_back(need.kind);
    CHECK(found == std::vector<NeedKind>{kinds::wire,         kinds::rod,
                                         kinds::gas,          kinds::contact_tip,
                                         kinds::gas_nozzle,   kinds::contact_tip,
                                         kinds::gas_nozzle,   kinds::temperature_stick,
                                         kinds::thermometer,  kinds::fuel,
                                         kinds::blanket,      kinds::welding_set,
                                         kinds::power_supply, kinds::generator_fuel,
                                         kinds::plug_rod,     kinds::drill,
                                         kinds::rough_edge,   kinds::finish_edge,
                                         kinds::fire_watch,   kinds::extinguisher});
}
