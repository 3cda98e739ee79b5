#include <catch2/catch.hpp>

#include <ringfill/heat/bore_heat.hpp>

#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// The heat of a bore in austenitic metal whose standard asks for so much manganese at least.
BoreHeat austenitic(double least_manganese_pct) {
    HeatSample sample;
    Base base = sample.grade();
    base.structure = "austenitic";
    base.composition_min = {{"Mn", {least_manganese_pct, "practice"}}};
    Procedure procedure;
    procedure.filler = "alloy/W";
    Settings settings;
    settings.procedure = &procedure;
    settings.filler = &sample.family.fillers[0];
    const WornBore bore;
    return bore_heat({bore, settings, base}, BoreWeld(), Site(), sample.family);
}

/// An approved procedure that holds the rings between two temperatures, on cast iron laid cold.
BoreHeat approved_iron(double low, double high) {
    BoreHeat heat;
    heat.structure = "cast_iron";
    heat.cold_iron = true;
    heat.preheat.approved = "P-12";
    AskedTemperature minimum;
    minimum.value = celsius(low);
    AskedTemperature maximum;
    maximum.value = celsius(high);
    heat.preheat.minimum = minimum;
    heat.preheat.interpass_max = maximum;
    return heat;
}

} // namespace

// ASTM A128 asks for 11 % (memory); from 10 % on it is taken for manganese steel [practice].
TEST_CASE("austenitic metal of ten per cent of manganese is manganese steel") {
    CHECK(austenitic(10).manganese_steel);
    CHECK(austenitic(10.5).manganese_steel);
    CHECK_FALSE(austenitic(9.9).manganese_steel);
}

// Cast iron practice, memory: between 200 and 450 degC iron that is laid cold cracks.
TEST_CASE("an approved procedure heats cold iron against its rules between 200 and 450 degC") {
    CHECK_FALSE(is_heated_against_its_rules(approved_iron(20, 199)));
    CHECK(is_heated_against_its_rules(approved_iron(20, 201)));
    CHECK(is_heated_against_its_rules(approved_iron(449, 600)));
    CHECK_FALSE(is_heated_against_its_rules(approved_iron(451, 600)));
}

// EN 1011-1 table 1 lists no flame: what is brazed with a torch has no thermal efficiency of an arc.
TEST_CASE("a process without an arc has no thermal efficiency") {
    HeatSample sample;
    sample.family.fillers[0].process = "torch_brazing";
    Procedure procedure;
    procedure.filler = "alloy/W";
    Settings settings;
    settings.procedure = &procedure;
    settings.filler = &sample.family.fillers[0];
    const WornBore bore;
    const BoreHeat heat = bore_heat({bore, settings, sample.grade()}, BoreWeld(), Site(), sample.family);
    CHECK(heat.thermal_efficiency == 0);
    CHECK_FALSE(heat.bore);
}
