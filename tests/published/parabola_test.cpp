#include <catch2/catch.hpp>

#include <ringfill/units/factor.hpp>
#include <ringfill/weld/bead.hpp>

#include "weld/parabola.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

/// A printed mass of weld reinforcement for its length.
struct Row {
    double width;
    double crown;
    double printed;
};

// Printed filler-metal handbook, chart "weight per foot of fillet and butt elements", reinforcement columns:
// width and height in inches, pounds per foot of steel at 0.283 lb/in3. Read in the source. The print
// truncates in places, so the tolerance is one unit of the last digit and a tenth.
constexpr Row pounds_per_foot[] = {
    {0.1875, 0.0625, 0.027}, {0.25, 0.0625, 0.035}, {0.5, 0.125, 0.141},   {0.5, 0.1875, 0.212},
    {0.625, 0.25, 0.354},    {0.75, 0.25, 0.424},   {0.875, 0.125, 0.248}, {1, 0.0625, 0.141},
    {1, 0.1875, 0.424},      {1, 0.25, 0.566},
};

// The same handbook, chart of weight per metre: width and height in mm, kg/m. Read in the source. The density
// of 7.83 g/cm3 is not printed; it was fitted once to the rectangles of the same chart. Sizes are printed to
// 0.01 mm, so the tolerance is one and a half units of the last digit of the mass.
constexpr Row kg_per_metre[] = {
    {7.94, 1.59, 0.065},  {12.7, 1.59, 0.106},  {12.7, 3.18, 0.210},  {12.7, 4.76, 0.315},
    {14.29, 4.76, 0.356}, {15.88, 6.35, 0.527}, {17.46, 4.76, 0.434}, {17.46, 6.35, 0.579},
};

} // namespace

TEST_CASE("a parabolic bead weighs what the printed chart in pounds per foot says") {
    for (const Row& row : pounds_per_foot) {
        INFO(row.width << " x " << row.crown << " in");
        const Area section = parabola_section(in_si<Length>(row.width * factor::inch),
                                              in_si<Length>(row.crown * factor::inch));
        const auto density = in_si<Density>(0.283 * factor::pound / factor::cubic_inch);
        const Mass foot = section * density * in_si<Length>(factor::foot);
        CHECK_THAT(foot.value() / factor::pound, WithinAbs(row.printed, 0.0011));
    }
}

TEST_CASE("a parabolic bead weighs what the printed chart in kilograms per metre says") {
    for (const Row& row : kg_per_metre) {
        INFO(row.width << " x " << row.crown << " mm");
        const Area section = parabola_section(millimetres(row.width), millimetres(row.crown));
        const Mass metre = section * in_si<Density>(7830) * in_si<Length>(1);
        CHECK_THAT(metre.value(), WithinAbs(row.printed, 0.0016));
    }
}
