#include <catch2/catch.hpp>

#include "steel/hydrogen_annex.hpp"

// Regression, not print: computed from the published formula outside this program. Tolerance: half of the
// last digit.

using Catch::WithinAbs;
using ringfill::steel::susceptibility_index;

namespace {

struct Row {
    double pcm;
    double hydrogen;
    double index;
};

constexpr Row rows[] = {{0.18, 5, 2.859},  {0.23, 5, 3.459},  {0.28, 10, 4.360}, {0.33, 10, 4.960},
                        {0.18, 30, 3.637}, {0.38, 30, 6.037}, {0.25, 4, 3.602},  {0.30, 8, 4.503}};

} // namespace

TEST_CASE("regression: the susceptibility index of the annex") {
    for (const Row& row : rows) {
        INFO("Pcm " << row.pcm << ", " << row.hydrogen << " ml/100 g");
        CHECK_THAT(susceptibility_index(row.pcm, row.hydrogen), WithinAbs(row.index, 0.0005 + 1e-9));
    }
}
