#pragma once

#include <optional>
#include <span>
#include <string_view>

#include <ringfill/weld/dilution.hpp>

namespace ringfill {

/// How much an element counts in an index.
struct IndexWeight {
    std::string_view element;
    double weight;
};

/// A sum of weights times percent by mass [%].
using LinearIndex = std::span<const IndexWeight>;

/// CE(IIW) = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15 [International Institute of Welding, 1967]. Its order
/// is that in which elements of one rank are filled.
inline constexpr IndexWeight ce_iiw_index[] = {{"C", 1},         {"Cu", 1.0 / 15}, {"Mn", 1.0 / 6},
                                               {"Ni", 1.0 / 15}, {"Mo", 1.0 / 5},  {"V", 1.0 / 5},
                                               {"Cr", 1.0 / 5}};
/// CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40 [EN 1011-2:2001 C.3; memory].
inline constexpr IndexWeight cet_index[] = {{"C", 1},         {"Mn", 1.0 / 10}, {"Mo", 1.0 / 10},
                                            {"Cr", 1.0 / 20}, {"Cu", 1.0 / 20}, {"Ni", 1.0 / 40}};
/// Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B [Ito and Bessyo 1968; memory].
inline constexpr IndexWeight pcm_index[] = {{"C", 1},         {"Si", 1.0 / 30}, {"Mn", 1.0 / 20},
                                            {"Cu", 1.0 / 20}, {"Cr", 1.0 / 20}, {"Ni", 1.0 / 60},
                                            {"Mo", 1.0 / 15}, {"V", 1.0 / 10},  {"B", 5}};
/// Chemical carbon C + (Mn + Cr)/9 + Ni/18 + 7 Mo/90 [Séférian 1959; memory].
inline constexpr IndexWeight chemical_carbon_index[] = {
    {"C", 1}, {"Mn", 1.0 / 9}, {"Cr", 1.0 / 9}, {"Ni", 1.0 / 18}, {"Mo", 7.0 / 90}};

/// What a base metal may hold.
struct CompositionLimits {
    Shares certified;              ///< by the mill certificate
    Shares least;                  ///< of the others, by the standard
    Shares most;                   ///< likewise
    std::optional<double> cap_pct; ///< most CE(IIW) of the whole
};

/// The index of a composition [%]; an element that is not listed counts 0.
double index_of(LinearIndex index, const Shares& shares);

/// Of the compositions within the limits the one with the largest index. What is certified counts first, even
/// past the cap, then the least that the standard asks for; the room that is left under the cap is filled in
/// the order of weight in the index over weight in CE(IIW). Elements without weight there stand at their
/// most, and so does everything without a cap.
Shares reaching(LinearIndex index, const CompositionLimits& limits);

} // namespace ringfill
