// Limits of the standards of fillers, wires by their own composition, electrodes and cored wires by that of
// their metal; typed here apart from the tables, from memory but where it says otherwise.

#include "published/composition_limits.hpp"

namespace ringfill::testing {
namespace {

constexpr LimitRow rows[] = {
    {"AWS A5.18", "steel/ER70S-2", "memory", "C 0 0.07, Si 0.40 0.70, Mn 0.90 1.40, P 0 0.025, S 0 0.035"},
    {"AWS A5.18", "steel/ER70S-3", "memory", "C 0.06 0.15, Si 0.45 0.75, Mn 0.90 1.40"},
    {"AWS A5.18", "steel/ER70S-6", "memory", "C 0.06 0.15, Si 0.80 1.15, Mn 1.40 1.85, P 0 0.025, S 0 0.035"},
    {"AWS A5.18", "steel/ER70S-7", "memory", "C 0.07 0.15, Si 0.50 0.80, Mn 1.50 2.00"},
    {"AWS A5.18", "steel/E70C-6M-H4", "memory",
     "C 0 0.12, Si 0 0.90, Mn 0 1.75, Cr 0 0.20, Ni 0 0.50, Mo 0 0.30"},
    {"AWS A5.28", "steel/ER80S-D2", "memory",
     "C 0.07 0.12, Si 0.50 0.80, Mn 1.60 2.10, P 0 0.025, S 0 0.025, Mo 0.40 0.60"},
    {"AWS A5.28", "steel/ER80S-Ni1", "memory", "C 0 0.12, Si 0.40 0.80, Mn 0 1.25, Ni 0.80 1.10, Mo 0 0.35"},
    {"AWS A5.28", "steel/ER80S-Ni2", "memory", "C 0 0.12, Si 0.40 0.80, Mn 0 1.25, Ni 2.00 2.75"},
    {"AWS A5.28", "steel/ER80S-B2", "memory",
     "C 0.07 0.12, Si 0.40 0.70, Mn 0.40 0.70, Cr 1.20 1.50, Mo 0.40 0.65"},
    {"AWS A5.28", "steel/ER90S-B3", "memory",
     "C 0.07 0.12, Si 0.40 0.70, Mn 0.40 0.70, Cr 2.30 2.70, Mo 0.90 1.20"},
    {"AWS A5.28", "steel/ER100S-1", "memory",
     "C 0 0.08, Si 0.20 0.55, Mn 1.25 1.80, Cr 0 0.30, Ni 1.40 2.10, Mo 0.25 0.55"},
    {"AWS A5.28", "steel/ER110S-1", "memory",
     "C 0 0.09, Si 0.20 0.55, Mn 1.40 1.80, Cr 0 0.50, Ni 1.90 2.60, Mo 0.25 0.55"},
    {"AWS A5.28", "steel/E80C-Ni1-H4", "memory", "C 0 0.12, Si 0 0.90, Mn 0 1.50, Ni 0.80 1.10, Mo 0 0.30"},
    {"EN ISO 14341", "steel/G 4Si1", "memory", "C 0.06 0.14, Si 0.80 1.20, Mn 1.60 1.90"},
    {"EN ISO 16834", "steel/G Mn3Ni1Mo", "memory",
     "C 0 0.12, Si 0.40 0.80, Mn 1.30 1.90, Ni 0.80 1.30, Mo 0.25 0.65"},
    {"EN ISO 16834", "steel/G Mn3Ni1CrMo", "memory",
     "C 0 0.12, Si 0.40 0.70, Mn 1.30 1.80, Cr 0.15 0.40, Ni 1.20 1.60, Mo 0.20 0.30"},
    {"EN ISO 16834", "steel/G Mn4Ni2CrMo", "memory",
     "C 0 0.12, Si 0.60 0.90, Mn 1.60 2.10, Cr 0.20 0.45, Ni 1.80 2.30, Mo 0.45 0.70"},
    {"AWS A5.20", "steel/E71T-1", "memory", "C 0 0.12, Si 0 0.90, Mn 0 1.75, P 0 0.03, S 0 0.03"},
    {"AWS A5.20", "steel/E70T-5-H4", "memory", "C 0 0.12, Si 0 0.90, Mn 0 1.75"},
    {"AWS A5.20", "steel/E71T-8-H8", "memory", "C 0 0.30, Si 0 0.60, Mn 0 1.75"},
    {"AWS A5.29", "steel/E81T1-Ni1-H4", "memory", "C 0 0.12, Si 0 0.80, Mn 0 1.50, Ni 0.80 1.10, Mo 0 0.35"},
    {"AWS A5.1", "steel/E6013", "memory", "C 0 0.20, Si 0 1.00, Mn 0 1.20"},
    {"AWS A5.1", "steel/E7018-H8", "memory", "C 0 0.15, Si 0 0.75, Mn 0 1.60, P 0 0.035, S 0 0.035"},
    {"AWS A5.5", "steel/E8018-C3-H4", "memory", "C 0 0.12, Si 0 0.80, Mn 0.40 1.25, Ni 0.80 1.10, Mo 0 0.35"},
    {"AWS A5.5", "steel/E11018-M-H4", "memory",
     "C 0 0.10, Si 0 0.60, Mn 1.30 1.80, Cr 0 0.40, Ni 1.25 2.50, Mo 0.25 0.50"},
    {"AWS A5.9", "stainless/ER308L", "memory",
     "C 0 0.03, Si 0.30 0.65, Mn 1.0 2.5, P 0 0.03, S 0 0.03, Cr 19.5 22.0, Ni 9.0 11.0, Mo 0 0.75, Cu 0 "
     "0.75, N 0 "
     "0.10"},
    {"AWS A5.9", "stainless/ER309L", "memory",
     "C 0 0.03, Si 0.30 0.65, Mn 1.0 2.5, P 0 0.03, S 0 0.03, Cr 23.0 25.0, Ni 12.0 14.0, Mo 0 0.75, Cu 0 "
     "0.75, N 0 "
     "0.10"},
    {"AWS A5.9", "stainless/ER316L", "memory",
     "C 0 0.03, Si 0.30 0.65, Mn 1.0 2.5, Cr 18.0 20.0, Ni 11.0 14.0, Mo 2.0 3.0, Cu 0 0.75, N 0 0.10"},
    {"AWS A5.9", "stainless/ER347", "memory",
     "C 0 0.08, Si 0.30 0.65, Mn 1.0 2.5, Cr 19.0 21.5, Ni 9.0 11.0, Mo 0 0.75, Cu 0 0.75, Nb 0 1.0, N 0 "
     "0.10"},
    {"AWS A5.9", "stainless/ER309LMo", "memory",
     "C 0 0.03, Si 0.30 0.65, Mn 1.0 2.5, Cr 23.0 25.0, Ni 12.0 14.0, Mo 2.0 3.0, Cu 0 0.75, N 0 0.10"},
    {"AWS A5.9", "stainless/ER312", "memory",
     "C 0 0.15, Si 0.30 0.65, Mn 1.0 2.5, Cr 28.0 32.0, Ni 8.0 10.5, Mo 0 0.75, Cu 0 0.75, N 0 0.10"},
    {"AWS A5.9", "stainless/ER410", "memory", "C 0 0.12, Mn 0 0.6, Cr 11.5 13.5, Mo 0 0.75"},
    {"AWS A5.9", "stainless/ER410NiMo", "memory", "C 0 0.06, Mn 0 0.6, Cr 11.0 12.5, Ni 4.0 5.0, Mo 0.4 0.7"},
    {"EN ISO 14343", "stainless/18 8 Mn", "memory",
     "C 0 0.20, Si 0 1.2, Mn 5.0 8.0, Cr 17.0 20.0, Ni 7.0 10.0"},
    {"AWS A5.22", "stainless/E309LT1-1", "memory",
     "C 0 0.04, Si 0 1.0, Mn 0.5 2.5, Cr 22.0 25.0, Ni 12.0 14.0, Mo 0 0.75, Cu 0 0.75"},
    {"AWS A5.4", "stainless/E309L-16", "memory",
     "C 0 0.04, Si 0 1.0, Mn 0.5 2.5, Cr 22.0 25.0, Ni 12.0 14.0, Mo 0 0.75, Cu 0 0.75"},
    {"AWS A5.13", "manganese_steel/EFeMn-A", "memory", "C 0.5 1.0, Mn 12 16, Cr 0 0.5, Ni 2.75 6.0"},
    {"AWS A5.13", "manganese_steel/EFeMnCr", "memory",
     "C 0.25 0.75, Mn 12 18, Cr 13 17, Ni 0.5 2.0, Mo 0 2.0"},
    {"AWS A5.21", "manganese_steel/ERCFeMn-C", "memory", "C 0.5 1.0, Mn 12 16, Cr 2.5 5.0, Ni 2.5 5.0"},
    {"AWS A5.21", "manganese_steel/ERCFeMnCr", "memory", "C 0.25 0.75, Mn 12 18, Cr 11 17, Ni 0 2.0"},
    {"AWS A5.15", "cast_iron/ERNi-CI", "memory", "C 0 1.0, Ni 90 100"},
    {"AWS A5.15", "cast_iron/ERNiFeMn-CI", "memory", "C 0 0.50, Mn 10 14, Ni 35 45"},
    {"AWS A5.15", "cast_iron/ENiFeT3-CI", "memory", "C 0 2.0, Mn 3.0 5.0, Ni 45 60"},
    {"AWS A5.15", "cast_iron/ENi-CI", "memory", "C 0 2.0, Mn 0 2.5, Ni 85 100"},
    {"AWS A5.15", "cast_iron/ENiFe-CI", "memory", "C 0 2.0, Ni 45 60"},
    {"AWS A5.15", "cast_iron/RCI", "memory", "C 3.2 3.5, Si 2.7 3.0, Mn 0.60 0.75"},
    {"AWS A5.14", "nickel/ERNi-1", "memory", "C 0 0.15, Ti 2.0 3.5, Ni 93 100"},
    {"AWS A5.14", "nickel/ERNiCu-7", "memory", "C 0 0.15, Mn 0 4.0, Ni 62 69, Cu 20 40"},
    {"AWS A5.14", "nickel/ERNiCr-3", "memory", "C 0 0.10, Mn 2.5 3.5, Cr 18 22, Nb 2.0 3.0, Ni 67 100"},
    {"AWS A5.14", "nickel/ERNiCrMo-3", "memory", "C 0 0.10, Cr 20 23, Mo 8 10, Nb 3.15 4.15, Ni 58 100"},
    {"AWS A5.11", "nickel/ENiCrFe-3", "memory", "C 0 0.10, Mn 5.0 9.5, Cr 13 17, Ni 59 100"},
    {"AWS A5.7", "bronze/ERCuAl-A1", "restated", "Al 6.0 8.5, Si 0 0.10, Mn 0 0.50, Zn 0 0.20, Pb 0 0.02"},
    {"AWS A5.7", "bronze/ERCuAl-A2", "memory", "Al 8.5 11.0, Fe 0.5 1.5"},
    {"AWS A5.7", "bronze/ERCuNiAl", "memory", "Al 8.50 9.50, Fe 3.0 5.0, Ni 4.0 5.5, Mn 0.60 3.50"},
    {"AWS A5.7", "bronze/ERCuSi-A", "memory", "Si 2.8 4.0, Mn 0 1.5, Zn 0 1.0, Sn 0 1.0"},
    {"AWS A5.6", "bronze/ECuAl-A2", "memory", "Al 6.5 9.5, Fe 0.5 5.0"},
    {"AWS A5.6", "bronze/ECuSn-C", "memory", "Sn 7.0 9.0, P 0.05 0.35"},
};

/// EN 14700, table of alloy groups.
constexpr LimitRow groups[] = {
    {"EN 14700", "hardfacing/T Fe1", "memory", "C 0 0.4, Mn 0.5 3, Cr 0 3.5, Mo 0 1"},
    {"EN 14700", "hardfacing/E Fe1", "memory", "C 0 0.4, Mn 0.5 3, Cr 0 3.5, Mo 0 1"},
    {"EN 14700", "hardfacing/T Fe2", "memory", "C 0.4 1.2, Mn 0.5 3, Cr 0 7, Mo 0 1"},
    {"EN 14700", "hardfacing/S Fe2", "memory", "C 0.4 1.2, Mn 0.5 3, Cr 0 7, Mo 0 1"},
    {"EN 14700", "hardfacing/T Fe3", "memory", "C 0.2 0.5, Mn 0 3, Cr 1 8, Mo 0 4.5, W 0 10"},
    {"EN 14700", "hardfacing/T Fe7", "memory", "C 0 0.2, Mn 0 3, Cr 4 30, Ni 0 6, Mo 0 2"},
    {"EN 14700", "hardfacing/S Fe8", "memory", "C 0.2 2, Si 0 4, Mn 0.3 3, Cr 5 18"},
    {"EN 14700", "hardfacing/T Fe9", "memory", "C 0.3 1.2, Mn 11 18, Cr 0 19"},
    {"EN 14700", "hardfacing/T Fe10", "memory", "C 0 0.25, Mn 3 8, Cr 17 22, Ni 7 11"},
    {"EN 14700", "hardfacing/T Fe14", "memory", "C 1.5 4.5, Mn 0.5 3, Cr 25 40"},
    {"EN 14700", "hardfacing/E Co2", "memory", "C 0.6 3, Cr 20 35, W 4 10"},
    {"EN 14700", "hardfacing/R Co2", "memory", "C 0.6 3, Cr 20 35, W 4 10"},
};

} // namespace

std::vector<GradeLimits> filler_limits() {
    return limits_of(rows);
}

std::vector<GradeLimits> hardfacing_limits() {
    return limits_of(groups);
}

} // namespace ringfill::testing
