#include <catch2/catch.hpp>

#include <ringfill/weld/dilution.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

const Shares base = {{"C", 0.45}, {"Mn", 0.7}};
const Shares filler = {{"C", 0.02}, {"Cr", 24}, {"Ni", 13}};

Layer layer(double before_mm, double after_mm) {
    Layer one;
    one.radius_before = millimetres(before_mm);
    one.radius_after = millimetres(after_mm);
    return one;
}

} // namespace

// Worked out with a dilution of 0.30 and 0.15; computed, no printed answer.
TEST_CASE("the base metal left falls by the dilution in every layer") {
    CHECK_THAT(base_left(0.30, 1), WithinRel(0.30, 1e-14));
    CHECK_THAT(base_left(0.30, 2), WithinRel(0.09, 1e-14));
    CHECK_THAT(base_left(0.30, 3), WithinRel(0.027, 1e-14));
    CHECK_THAT(base_left(0.15, 3), WithinRel(0.003375, 1e-14));
}

TEST_CASE("layer on layer the metal is that of the closed form") {
    for (const double dilution : {0.05, 0.2, 0.6}) {
        Shares under = base;
        for (int n = 1; n <= 5; ++n) {
            under = layer_over(under, filler, dilution);
            for (const std::string element : {"C", "Mn", "Cr", "Ni", "Mo"}) {
                const double own = share_of(filler, element); // C_n = C_f - (C_f - C_b) D^n
                CHECK_THAT(share_of(under, element),
                           WithinAbs(own - (own - share_of(base, element)) * base_left(dilution, n), 1e-12));
            }
        }
    }
}

TEST_CASE("the layers needed are the first with no more base metal than the limit") {
    for (const double dilution : {0.02, 0.1, 0.2, 0.25, 0.3, 0.5, 0.9})
        for (const double limit : {0.01, 0.05, 0.2}) {
            INFO(dilution << ' ' << limit);
            int n = 1;
            double left = dilution;
            for (; left > limit * (1 + 1e-9); ++n)
                left *= dilution;
            CHECK(layers_to_reach(dilution, limit) == n);
        }
    CHECK(layers_to_reach(0.05, 0.05) == 1);
}

TEST_CASE("dilution is the job's, else that of the process, and the finished surface lies in its layer") {
    Processes table;
    table.base_left = {0.05, "limit"};
    ProcessRow row;
    row.process = "gas_metal_arc";
    row.dilution = {0.2, "usual"};
    row.dilution_range = {{0.1, 0.3}, "usual"};
    table.rows = {row};
    Filler wire;
    wire.process = "gas_metal_arc";
    Procedure procedure;
    const std::vector<Layer> layers = {layer(48, 45.5), layer(45.5, 43)};
    const auto found = dilution(procedure, wire, table, layers, millimetres(45)).value();
    CHECK(found.share.value == 0.2);
    CHECK(found.needed == 2);
    CHECK(found.base_left.size() == 2);
    CHECK(found.finish_layer == 2);
    CHECK(dilution(procedure, wire, table, layers, millimetres(45.5))->finish_layer == 1);
    CHECK(dilution(procedure, wire, table, layers, millimetres(42))->finish_layer == 0);
    procedure.dilution = 0.4;
    CHECK(dilution(procedure, wire, table, layers, millimetres(45))->share.source == "job");
    CHECK(dilution(procedure, wire, table, layers, millimetres(45))->needed == 4);
    wire.process = "torch_brazing";
    CHECK(dilution(procedure, wire, table, layers, millimetres(45))->range == std::nullopt);
    procedure.dilution.reset();
    CHECK_FALSE(dilution(procedure, wire, table, layers, millimetres(45)));
}

// By hand: 0.3 x 0.3 = 0.09 is a little over the limit, so a third layer is needed.
TEST_CASE("a limit missed by little takes one layer more") {
    CHECK(layers_to_reach(0.3, 0.09) == 2);
    CHECK(layers_to_reach(0.3, 0.08997) == 3);
}
