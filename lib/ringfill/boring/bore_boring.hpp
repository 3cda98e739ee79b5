#pragma once

#include <optional>
#include <vector>

#include <ringfill/boring/bar_settings.hpp>
#include <ringfill/boring/bar_speed.hpp>
#include <ringfill/boring/cuts.hpp>
#include <ringfill/boring/edges.hpp>
#include <ringfill/boring/facing.hpp>
#include <ringfill/boring/groove_cut.hpp>
#include <ringfill/boring/growth.hpp>
#include <ringfill/boring/roughness.hpp>
#include <ringfill/boring/size_limits.hpp>
#include <ringfill/boring/standing.hpp>
#include <ringfill/survey/skim.hpp>
#include <ringfill/weld/layers.hpp>

namespace ringfill {

/// How one bore is cut: the skim before the weld, and back to size after it (section 11).
struct BoringPlan {
    BarSettings settings;
    BarSpeed bar;
    int set_ups = 1;
    Length crown_radius;              ///< r_end − δ, the least the weld can leave
    Length valley_radius;             ///< r_end + δ, the most
    std::optional<SizeLimits> limits; ///< nothing: the job gives neither class nor limits
    Length final_diameter;            ///< bored to: the finish diameter, or the nearer limit
    std::vector<Cut> cuts;            ///< skim, then the cuts after the weld
    std::vector<Facing> facing;       ///< beside the bore's faces
    std::vector<GrooveCut> grooves;
    std::vector<Standing> standing;
    Edges edges;
    Roughness roughness;
    Sourced<double> expansion;         ///< α [1/K]
    bool expansion_is_general = false; ///< the table's, for want of one of the base metal
    std::vector<GaugeReading> gauge;   ///< at the temperatures up to which one may finish, and rough
    Time skim_time;                    ///< of the cuts before the weld
    Time cutting_time;                 ///< of all cuts and facing
    Time standing_time;

    Time time() const { return cutting_time + standing_time; }
};

/// What is known of a bore before it is cut back to size.
struct WeldedBore {
    const WornBore& bore;
    const Survey& survey;
    const Build& build;
    Length end_radius; ///< r_end
    Length valley;     ///< δ, as laid
    const std::vector<FacePad>& faces;
};

/// Plans the boring of a bore. Throws Faulty (Origin::job): a size class or size that is not known, a rough
/// cut, stroke or edge life that cannot be meant.
/// @param expansion α of the base metal, with its source [1/K]; nothing: that of the table counts.
BoringPlan bore_boring(const WeldedBore& welded, const BarSettings& settings, const Cutting& cutting,
                       const std::optional<Sourced<double>>& expansion, const std::vector<SizeStep>& steps);

} // namespace ringfill
