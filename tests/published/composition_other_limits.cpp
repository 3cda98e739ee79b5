// Limits of the standards of the other base metals, typed here apart from the tables; from memory but where
// it says otherwise.

#include "published/composition_limits.hpp"

namespace ringfill::testing {
namespace {

constexpr LimitRow rows[] = {
    {"ASTM A240", "stainless/304", "memory",
     "C 0 0.07, Si 0 0.75, Mn 0 2.00, P 0 0.045, S 0 0.030, Cr 17.5 19.5, Ni 8.0 10.5"},
    {"ASTM A240", "stainless/304L", "memory", "C 0 0.03, Mn 0 2.00, Cr 17.5 19.5, Ni 8.0 12.0"},
    {"ASTM A240", "stainless/316", "memory",
     "C 0 0.08, Si 0 0.75, Mn 0 2.00, P 0 0.045, S 0 0.030, Cr 16.0 18.0, Ni 10.0 14.0, Mo 2.0 3.0"},
    {"ASTM A240", "stainless/316L", "memory", "C 0 0.03, Mn 0 2.00, Cr 16.0 18.0, Ni 10.0 14.0, Mo 2.0 3.0"},
    {"ASTM A240", "stainless/347", "memory", "C 0 0.08, Mn 0 2.00, Cr 17.0 19.0, Ni 9.0 13.0, Nb 0 1.00"},
    {"ASTM A240", "stainless/410", "memory",
     "C 0.08 0.15, Si 0 1.00, Mn 0 1.00, P 0 0.040, S 0 0.030, Cr 11.5 13.5, Ni 0 0.75"},
    {"EN 10088-3", "stainless/X3CrNiMo13-4", "memory",
     "C 0 0.05, Mn 0 1.50, Cr 12.0 14.0, Ni 3.5 4.5, Mo 0.3 0.7"},
    // Classically Fe-1.2C-13Mn, as the abstract of a paper of 2004 has it, which was read.
    {"ASTM A128", "manganese_steel/A128-A", "memory", "C 1.05 1.35, Si 0 1.00, Mn 11.0 100, P 0 0.07"},
    {"ASTM A128", "manganese_steel/A128-B2", "memory", "C 1.05 1.20, Si 0 1.00, Mn 11.5 14.0, P 0 0.07"},
    {"ASTM A128", "manganese_steel/A128-C", "memory",
     "C 1.05 1.35, Si 0 1.00, Mn 11.5 14.0, P 0 0.07, Cr 1.5 2.5"},
    {"ASTM A128", "manganese_steel/A128-D", "memory",
     "C 0.70 1.30, Si 0 1.00, Mn 11.5 14.0, P 0 0.07, Ni 3.0 4.0"},
    {"ASTM A128", "manganese_steel/A128-E1", "memory",
     "C 0.70 1.30, Si 0 1.00, Mn 11.5 14.0, P 0 0.07, Mo 0.9 1.2"},
    // The standards leave the composition to the foundry: the span of metals handbooks.
    {"EN 1561", "cast_iron/EN-GJL-200", "memory", "C 2.5 4.0, Si 1.0 3.0, Mn 0.2 1.0"},
    {"EN 1561", "cast_iron/EN-GJL-250", "memory", "C 2.5 4.0, Si 1.0 3.0, Mn 0.2 1.0"},
    {"EN 1563", "cast_iron/EN-GJS-400-15", "memory", "C 3.0 4.0, Si 1.8 2.8, Mn 0.1 1.0, Mg 0.03 0.06"},
    {"EN 1563", "cast_iron/EN-GJS-600-3", "memory", "C 3.0 4.0, Si 1.8 2.8, Mn 0.1 1.0, Mg 0.03 0.06"},
    {"ASTM B127", "nickel/N04400", "memory", "C 0 0.30, Mn 0 2.0, Cu 28.0 34.0, Ni 63.0 100"},
    {"ASTM B168", "nickel/N06600", "memory", "C 0 0.15, Si 0 0.50, Mn 0 1.0, Cr 14.0 17.0, Ni 72.0 100"},
    {"ASTM B443", "nickel/N06625", "memory",
     "C 0 0.10, Cr 20.0 23.0, Mo 8.0 10.0, Nb 3.15 4.15, Ni 58.0 100"},
    {"ASTM B148", "bronze/C95400", "memory", "Al 10.0 11.5, Fe 3.0 5.0, Cu 83.0 100"},
    {"ASTM B148", "bronze/C95800", "memory", "Al 8.5 9.5, Fe 3.5 4.5, Ni 4.0 5.0, Cu 79.0 100"},
    {"ASTM B584", "bronze/C90500", "memory", "Sn 9.0 11.0, Zn 1.0 3.0, Pb 0 0.30, Cu 86.0 89.0"},
};

} // namespace

std::vector<GradeLimits> other_base_limits() {
    return limits_of(rows);
}

} // namespace ringfill::testing
