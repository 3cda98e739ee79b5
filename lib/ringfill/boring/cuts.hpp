#pragma once

#include <optional>
#include <vector>

#include <ringfill/boring/bar.hpp>
#include <ringfill/document/word_of.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/units/quantity.hpp>
#include <ringfill/weld/faces_and_grooves.hpp>

namespace ringfill {

/// What a cut of the bar is for. The skim comes before the weld; skin is the first cut after it, which goes
/// under the scale; the spring pass runs with the bit as it stands.
enum class CutKind { skim, skin, rough, semi_finish, finish, spring };

template <>
inline constexpr std::string_view enum_words<CutKind>[] = {"skim",        "skin",   "rough",
                                                           "semi_finish", "finish", "spring"};

/// Whether a cut is one of the last two, which have an edge of their own.
inline bool is_last(CutKind kind) {
    return kind == CutKind::finish || kind == CutKind::spring;
}

/// One cut along the bore.
struct Cut {
    CutKind kind = CutKind::rough;
    Length depth = {}; ///< per side
    Length from = {};  ///< diameter before it
    Length to = {};    ///< diameter after it
    BarSpeed bar = {}; ///< slower where it is interrupted or under the skin
    Time time = {};
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
/// with the second where it is less than the semi-finish depth and would only rub; last the spring pass. A
/// deposit that hardens under the edge has no spring pass, and what is too little for a cut of its own goes
/// with the next one, as far as a rough cut goes.
std::vector<Cut> bore_cuts(Length crown_radius, Length final_radius, const BarSettings& settings);

/// A built-up boss face cut flat with a facing head.
struct Facing {
    Length depth; ///< from the crowns to the finished face
    int cuts = 0;
    BarSpeed bar;
    Length feed; ///< per revolution
    Time time;   ///< of all cuts
};

/// Faces a pad from its inner to its outer edge, past both by the overhang: the stock, what was built over
/// it, and the crowns, at most the valley depth over the layer. The speed is that of the outer edge.
Facing facing(const Face& face, const FacePad& pad, const WornBore& bore, const BarSettings& settings);

/// A retaining groove cut again after boring.
struct GrooveCut {
    std::size_t groove; ///< which of the bore's, from 0
    Length depth;       ///< of its floor under the finished bore
    Length weld_left;   ///< under its floor: finished weld − depth; less than nothing: parent metal is met
};

/// The grooves of a bore that are deeper than its finish; a shallower one is none.
/// @param finish_radius r_f. @param finished_weld weld per side left after boring, on the thinnest side.
std::vector<GrooveCut> groove_cuts(const std::vector<Groove>& grooves, Length finish_radius,
                                   Length finished_weld);

/// Cutting edges that one bore uses up.
struct Edges {
    int rough = 0;  ///< skim, rough and semi-finish cuts, facing
    int finish = 0; ///< the finish cut has a fresh one, which runs the spring pass too
    Time rough_time;
    Time finish_time;
    Time life; ///< cutting time of one edge
};

/// More edges of one kind a bore than this are refused: the life of an edge cannot be meant.
inline constexpr int most_edges = 10'000;

/// The edges of one bore, rough and finish apart, ⌈cutting time/life − 1e-9⌉ each, and at least one for the
/// finish cut; more than `most_edges` of a kind come back as `most_edges` + 1.
Edges edges(Time rough_time, Time finish_time, Time life);

/// Roughness that feed and nose radius leave by geometry alone; a real surface is rougher.
struct Roughness {
    Length peak_to_valley; ///< Rt = f²/(8 r)
    Length mean;           ///< Ra ≈ f²/(32 r)
};

/// The theoretical roughness of a turned or bored surface; holds while the feed is well under the nose
/// radius [machine shop books].
Roughness roughness(Length feed, Length nose_radius);

} // namespace ringfill
