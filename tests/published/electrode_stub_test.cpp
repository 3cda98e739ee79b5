#include <catch2/catch.hpp>

#include <ringfill/units/factor.hpp>
#include <ringfill/weld/piece.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

/// Length and stub in inches, efficiency without the stub and printed efficiency with it, %.
struct Row {
    double length;
    double efficiency;
    double stub;
    double printed;
};

// "Basic Welding Filler Metal Technology", correspondence course, 2000, lesson IX, page 8, figure 5:
// efficiency of covered electrodes by length, stub and efficiency in the laboratory. Read in the source.
// Printed to a tenth, most of it truncated: the tolerance is one unit of the last digit and a tenth of it.
constexpr Row printed[] = {
    {12, 60, 2, 50},   {12, 65, 2, 54.2}, {12, 70, 3, 52.5}, {12, 75, 3, 56.2}, {12, 80, 5, 46.6},
    {14, 60, 2, 51.4}, {14, 65, 3, 51.1}, {14, 70, 2, 60},   {14, 75, 2, 64.3}, {14, 75, 4, 53.6},
    {14, 80, 3, 62.8}, {14, 80, 5, 51.4}, {18, 60, 2, 53.3}, {18, 65, 4, 50.5}, {18, 70, 3, 58.3},
    {18, 75, 2, 66.6}, {18, 75, 5, 54.2}, {18, 80, 2, 71.1}, {18, 80, 5, 57.7},
};

} // namespace

TEST_CASE("what an electrode lays by its own mass is that share of it") {
    for (const Row& row : printed) {
        PieceLaid piece;
        piece.length = in_si<Length>(row.length * factor::inch);
        piece.stub = in_si<Length>(row.stub * factor::inch);
        piece.mass = in_si<Mass>(0.040);
        piece.of_covered = true;
        const Mass usable = usable_mass(piece, in_si<LinearMass>(0.06), row.efficiency / 100);
        CHECK_THAT(100 * (usable / piece.mass).value(), WithinAbs(row.printed, 0.11));
    }
}
