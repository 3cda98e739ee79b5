#pragma once

#include <string_view>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// What a cut of the bar is for. The skim comes before the weld; skin is the first cut after it, which goes
/// under the scale; the spring pass runs with the bit as it stands.
enum class CutKind { skim, skin, rough, semi_finish, finish, spring };

std::string_view name_of(CutKind kind);

/// One cut along the bore.
struct Cut {
    CutKind kind = CutKind::rough;
    Length depth; ///< per side
    Length from;  ///< diameter before it
    Length to;    ///< diameter after it
    Length way;   ///< along the bore
    Time time;
};

/// How deep the cuts are, per side.
struct CutDepths {
    Length rough; ///< at most
    Length semi_finish;
    Length finish;
};

/// More cuts of a bore than this are refused: the rough cut is far too shallow for the stock.
inline constexpr int most_cuts = 100;

/// How many rough cuts take a stock, ⌈stock/rough − 1e-9⌉; 0 for no stock. More than `most_cuts` come back as
/// `most_cuts` + 1.
int rough_cuts(Length stock, Length rough_cut);

/// The skim from the smallest worn radius to r_s, section 2: the fewest rough cuts, all alike. The surface is
/// uneven, so each depth is the most the bit meets.
std::vector<Cut> skim_cuts(Length smallest_radius, Length skim_radius, Length rough_cut);

/// The cuts after the weld, section 11, from the crowns of the last layer to the final radius: finish and
/// semi-finish cut first have their share of the stock, the rest is rough cuts of at most the depth given,
/// the first of which (under the skin) takes the remainder, so that all add up to the stock, or shares it
/// with the second where it is less than the semi-finish depth and would only rub; last the spring pass.
std::vector<Cut> bore_cuts(Length crown_radius, Length final_radius, const CutDepths& depths);

} // namespace ringfill
