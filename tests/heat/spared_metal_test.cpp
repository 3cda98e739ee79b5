#include <catch2/catch.hpp>

#include <ringfill/heat/identity.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;

// Steel that softens or was tempered under 250 degC cools in the open, whatever a filler asks [practice].
TEST_CASE("steel that keeps its hardness only under 250 degC cools in the open") {
    const auto softening = [](double degrees) {
        Base base;
        base.structure = "ferritic";
        base.softens_over = Sourced<Temperature>{celsius(degrees), "practice"};
        return cools_in_the_open(base);
    };
    const auto tempered = [](double degrees) {
        Base base;
        base.structure = "martensitic";
        base.tempering = Sourced<Temperature>{celsius(degrees), "practice"};
        return cools_in_the_open(base);
    };
    CHECK(softening(249.9));
    CHECK_FALSE(softening(250.1));
    CHECK(tempered(249.9));
    CHECK_FALSE(tempered(250.1));
    Base base;
    base.structure = "ferritic";
    CHECK_FALSE(cools_in_the_open(base));
    for (const char* structure : {"austenitic", "nickel", "copper"}) {
        base.structure = structure;
        CHECK(cools_in_the_open(base));
    }
}
