#include <catch2/catch.hpp>

#include <ringfill/document/whole_file.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// The job has a bore of each filler: two wires, a rod, three gases.
TEST_CASE("wires come first, then gases, then what wears out, what heats, what bores, and the fire watch") {
    const Job job =
        job_from(read_whole(std::string(RINGFILL_ROOT) + "/cli/demo/every-field.json", job_file_limit));
    std::vector<NeedKind> kinds;
    for (const Need& need : plan(job, shop()).take)
        if (kinds.empty() || kinds.back() != need.kind)
            kinds.push_back(need.kind);
    using enum NeedKind;
    CHECK(kinds == std::vector<NeedKind>{wire,         rod,
                                         gas,          contact_tip,
                                         gas_nozzle,   contact_tip,
                                         gas_nozzle,   temperature_stick,
                                         thermometer,  fuel,
                                         blanket,      welding_set,
                                         power_supply, generator_fuel,
                                         plug_rod,     drill,
                                         rough_edge,   finish_edge,
                                         fire_watch,   extinguisher});
}
