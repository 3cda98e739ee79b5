#pragma once

#include <optional>
#include <vector>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/caution/caution.hpp>
#include <ringfill/survey/skim.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/deposition.hpp>
#include <ringfill/weld/faces_and_grooves.hpp>
#include <ringfill/weld/layers.hpp>

namespace ringfill {

/// Of the survey and the skim: too few readings to see the wear, readings that may be mistyped, a finished
/// weld so thin that the tool works in the fused line, an uncleaned surface, a thin wall, a groove deeper
/// than the weld.
std::vector<Caution> survey_cautions(const WornBore& bore, const Survey& survey, const Build& build,
                                     UnitSystem units);

/// The least stock that must stay over the deepest valley between beads, 0.5 mm [common practice, no source].
inline const Length least_clean_up = millimetres(0.5);

/// Extra stock per side that is worth a caution, over 1 mm [common practice, no source].
inline const Length much_extra_stock = millimetres(1);

/// Wire feed at which the layers would come out even at the fastest travel, f κ*² v_max/v₀ [m/s].
Speed even_wire_feed(const Deposition& deposition, const Layering& layering, const Bead& as_laid);

/// Of the layers: valleys that the boring may not clean up, and much extra stock because the travel could not
/// be faster.
std::vector<Caution> weld_cautions(const WornBore& bore, const Build& build, const Bead& as_laid,
                                   const Layering& layering, const Deposition& deposition, UnitSystem units);

/// The largest bead section that holds overhead, 20 mm² [common practice, no source].
inline const Area largest_overhead_bead = in_si<Area>(20e-6);

/// Of a horizontal axis, where every turn of the torch passes overhead: a bead too large to hold there, and
/// spray transfer.
std::vector<Caution> position_cautions(const WornBore& bore, const Procedure& procedure, const Bead& as_laid,
                                       UnitSystem units);

/// Of the faces: a pad that does not lie on the boss, and much built over what was asked.
std::vector<Caution> face_cautions(const WornBore& bore, const std::vector<FacePad>& pads, UnitSystem units);

/// A pass laid so fast that its heat input falls under three quarters of that at the travel as set: fusion is
/// in doubt (section 9 of the computation). One caution a bore, for its fastest pass.
std::vector<Caution> fusion_cautions(const WornBore& bore, Speed travel_set, const Bead& as_laid,
                                     const std::vector<FacePad>& faces);

/// Of the boring: the bar's lowest speed is too fast, valleys of the weld stand past the finish, little weld
/// is left under a groove.
std::vector<Caution> boring_cautions(const WornBore& bore, const Build& build, const BoringPlan& boring,
                                     UnitSystem units);

/// How a bore grows while it is hot.
struct HotBore {
    std::string name;
    const BoringPlan* boring;
};

/// The caution of the whole job not to finish or measure while hot, with the bore that grows most; none
/// without bores.
std::vector<Caution> hot_finish_cautions(const std::vector<HotBore>& bores, const Cutting& cutting,
                                         UnitSystem units);

} // namespace ringfill
