// Limits of the standards of ferritic base metals, typed here apart from the tables. "read" and "restated"
// ones were seen in the standard, or in a document that quotes it; "memory" ones are from knowledge of the
// standard and guard against slips of the pen, no more.

#include "published/composition_limits.hpp"

namespace ringfill::testing {
namespace {

constexpr LimitRow rows[] = {
    {"EN 10025-2", "steel/S235JR", "memory", "C 0 0.20, Mn 0 1.40, P 0 0.035, S 0 0.035, Cu 0 0.55"},
    {"EN 10025-2", "steel/S275JR", "memory", "C 0 0.22, Mn 0 1.50, P 0 0.035, S 0 0.035, Cu 0 0.55"},
    {"EN 10025-2", "steel/S355JR", "read", "C 0 0.24, Si 0 0.55, Mn 0 1.60, P 0 0.035, S 0 0.035, Cu 0 0.55"},
    {"EN 10025-2", "steel/S355J2", "read", "C 0 0.22, Si 0 0.55, Mn 0 1.60, P 0 0.025, S 0 0.025, Cu 0 0.55"},
    {"EN 10025-6", "steel/S690QL", "memory",
     "C 0 0.20, Si 0 0.80, Mn 0 1.70, P 0 0.020, S 0 0.010, Cr 0 1.50, Ni 0 2.0, Mo 0 0.70, V 0 0.12, Cu 0 "
     "0.50, "
     "Nb 0 0.06, B 0 0.0050"},
    {"EN ISO 683-1", "steel/C45", "memory",
     "C 0.42 0.50, Si 0 0.40, Mn 0.50 0.80, P 0 0.045, S 0 0.045, Cr 0 0.40, Ni 0 0.40, Mo 0 0.10"},
    {"EN ISO 683-2", "steel/42CrMo4", "memory",
     "C 0.38 0.45, Si 0 0.40, Mn 0.60 0.90, P 0 0.025, S 0 0.035, Cr 0.90 1.20, Mo 0.15 0.30"},
    {"EN ISO 683-2", "steel/34CrNiMo6", "memory",
     "C 0.30 0.38, Si 0 0.40, Mn 0.50 0.80, P 0 0.025, S 0 0.035, Cr 1.30 1.70, Ni 1.30 1.70, Mo 0.15 0.30"},
    {"EN 10293", "steel/G20Mn5", "memory",
     "C 0.17 0.23, Si 0 0.60, Mn 1.00 1.60, P 0 0.020, S 0 0.020, Ni 0 0.80"},
    {"EN 10028-2", "steel/16Mo3", "memory",
     "C 0.12 0.20, Si 0 0.35, Mn 0.40 0.90, P 0 0.025, S 0 0.010, Cr 0 0.30, Ni 0 0.30, Mo 0.25 0.35, Cu 0 "
     "0.30"},
    {"EN 10028-2", "steel/13CrMo4-5", "memory",
     "C 0.08 0.18, Si 0 0.35, Mn 0.40 1.00, P 0 0.025, S 0 0.010, Cr 0.70 1.15, Mo 0.40 0.60, Cu 0 0.30"},
    {"EN 10028-2", "steel/10CrMo9-10", "memory",
     "C 0.08 0.14, Si 0 0.50, Mn 0.40 0.80, P 0 0.020, S 0 0.010, Cr 2.00 2.50, Mo 0.90 1.10, Cu 0 0.30"},
    {"EN 10216-2", "steel/X10CrMoVNb9-1", "memory",
     "C 0.08 0.12, Si 0.20 0.50, Mn 0.30 0.60, P 0 0.020, S 0 0.010, Cr 8.00 9.50, Ni 0 0.40, Mo 0.85 1.05, "
     "V 0.18 "
     "0.25, Cu 0 0.30, Nb 0.06 0.10"},
    {"EN 10028-4", "steel/12Ni14", "memory",
     "C 0 0.15, Si 0 0.35, Mn 0.30 0.80, P 0 0.020, S 0 0.005, Ni 3.25 3.75, V 0 0.05"},
    {"EN 10028-4", "steel/X12Ni5", "memory",
     "C 0 0.15, Si 0 0.35, Mn 0.30 0.80, P 0 0.020, S 0 0.005, Ni 4.75 5.25, V 0 0.05"},
    {"ASTM A36", "steel/A36", "memory", "C 0 0.25, Si 0 0.40, Mn 0.80 1.20, P 0 0.040, S 0 0.050"},
    {"ASTM A572", "steel/A572-50", "memory",
     "C 0 0.23, Si 0 0.40, Mn 0 1.35, P 0 0.040, S 0 0.050, V 0.01 0.15, Nb 0.005 0.05"},
    {"ASTM A572", "steel/A572-60", "memory",
     "C 0 0.26, Si 0 0.40, Mn 0 1.35, P 0 0.040, S 0 0.050, V 0.01 0.15, Nb 0.005 0.05"},
    {"ASTM A913", "steel/A913-65", "memory",
     "C 0 0.16, Si 0 0.40, Mn 0 1.60, P 0 0.030, S 0 0.030, Cr 0 0.25, Ni 0 0.25, Mo 0 0.07, V 0 0.06, Cu 0 "
     "0.45, Nb "
     "0 0.05"},
    {"ASTM A514", "steel/A514-B", "memory",
     "C 0.12 0.21, Si 0.20 0.35, Mn 0.70 1.00, P 0 0.030, S 0 0.030, Cr 0.40 0.65, Mo 0.15 0.25, V 0.03 "
     "0.08, B "
     "0.0005 0.005"},
    {"ASTM A514", "steel/A514-F", "memory",
     "C 0.10 0.20, Si 0.15 0.35, Mn 0.60 1.00, P 0 0.030, S 0 0.030, Cr 0.40 0.65, Ni 0.70 1.00, Mo 0.40 "
     "0.60, V 0.03 "
     "0.08, Cu 0.15 0.50, B 0.0005 0.006"},
    {"ASTM A514", "steel/A514-Q", "memory",
     "C 0.14 0.21, Si 0.15 0.35, Mn 0.95 1.30, P 0 0.030, S 0 0.030, Cr 1.00 1.50, Ni 1.20 1.50, Mo 0.40 "
     "0.60, V 0.03 "
     "0.08"},
    // Manganese up to 1.00 (70-40: 1.40) where carbon is lower: 0.04 % for each 0.01 % [notes to its table
    // 1].
    {"ASTM A27", "steel/A27 70-36", "read", "C 0 0.35, Si 0 0.80, Mn 0 1.00, P 0 0.05, S 0 0.06"},
    {"ASTM A27", "steel/A27 70-40", "read", "C 0 0.25, Si 0 0.80, Mn 0 1.40, P 0 0.05, S 0 0.06"},
    {"ASTM A27", "steel/A27 65-35", "read", "C 0 0.30, Si 0 0.80, Mn 0 1.00, P 0 0.05, S 0 0.06"},
    {"ASTM A29", "steel/1018", "read", "C 0.15 0.20, Si 0.15 0.35, Mn 0.60 0.90, P 0 0.040, S 0 0.050"},
    {"ASTM A29", "steel/1045", "read", "C 0.43 0.50, Si 0.15 0.35, Mn 0.60 0.90, P 0 0.040, S 0 0.050"},
    {"FAA ANM-112N-14-02", "steel/4130", "read",
     "C 0.28 0.33, Si 0.15 0.35, Mn 0.40 0.60, P 0 0.035, S 0 0.040, Cr 0.80 1.10, Ni 0 0.25, Mo 0.15 0.25, "
     "Cu 0 "
     "0.35"},
    {"ASTM A29", "steel/4140", "read",
     "C 0.38 0.43, Si 0.15 0.35, Mn 0.75 1.00, P 0 0.035, S 0 0.040, Cr 0.80 1.10, Mo 0.15 0.25"},
    {"ASTM A29", "steel/unknown", "read",
     "C 0.38 0.43, Si 0.15 0.35, Mn 0.75 1.00, P 0 0.035, S 0 0.040, Cr 0.80 1.10, Mo 0.15 0.25"},
    {"ASTM A304", "steel/4140H", "read",
     "C 0.37 0.44, Si 0.15 0.30, Mn 0.65 1.10, P 0 0.035, S 0 0.040, Cr 0.75 1.20, Mo 0.15 0.30"},
    {"ASTM A29", "steel/4340", "read",
     "C 0.38 0.43, Si 0.15 0.35, Mn 0.60 0.80, P 0 0.035, S 0 0.040, Cr 0.70 0.90, Ni 1.65 2.00, Mo 0.20 "
     "0.30"},
    {"ASTM A29", "steel/8620", "memory",
     "C 0.18 0.23, Si 0.15 0.35, Mn 0.70 0.90, P 0 0.035, S 0 0.040, Cr 0.40 0.60, Ni 0.40 0.70, Mo 0.15 "
     "0.25"},
    // The standard leaves the rest to the maker: the usual 8630 type, common practice.
    {"ASTM A148", "steel/A148 105-85", "restated",
     "C 0 0.35, Si 0 0.80, Mn 0 1.0, P 0 0.05, S 0 0.06, Cr 0 0.7, Ni 0 0.8, Mo 0 0.3"},
    {"ASTM A958", "steel/A958 SC 4330", "restated",
     "C 0.28 0.33, Si 0.30 0.60, Mn 0.60 0.90, P 0 0.035, S 0 0.040, Cr 0.70 0.90, Ni 1.65 2.00, Mo 0.20 "
     "0.30"},
    {"ASTM A958", "steel/A958 SC 4340", "restated",
     "C 0.38 0.43, Si 0.30 0.60, Mn 0.60 0.90, P 0 0.035, S 0 0.040, Cr 0.70 0.90, Ni 1.65 2.00, Mo 0.20 "
     "0.30"},
    // No standard: the class of wear plate of 400 HB as makers print it.
    {"wear plate of 400 HB", "steel/400HB", "memory",
     "C 0.12 0.30, Si 0 0.70, Mn 0 1.60, P 0 0.025, S 0 0.010, Cr 0 1.50, Ni 0 1.0, Mo 0 0.60, B 0 0.005"},
};

} // namespace

std::vector<GradeLimits> steel_limits() {
    return limits_of(rows);
}

} // namespace ringfill::testing
