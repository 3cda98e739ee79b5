#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include <ringfill/boring/cuts.hpp>
#include <ringfill/boring/size_limits.hpp>
#include <ringfill/survey/skim.hpp>
#include <ringfill/units/quantity.hpp>
#include <ringfill/weld/bore_weld.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// More set-ups of the bar for one bore than this are refused: the stroke cannot be meant.
inline constexpr int most_set_ups = 100;

/// Set-ups that a welded length needs with the stroke of the bar, ⌈L_w/stroke − 1e-9⌉; 1 where the job gives
/// no stroke. More than `most_set_ups` come back as `most_set_ups` + 1.
int set_ups(Length welded_length, std::optional<Length> stroke);

/// Work of the hands beside the chips, some pieces of one kind.
struct Standing {
    std::string_view step; ///< as the table names it
    int count = 0;
    StandingTime each;

    Time time() const { return static_cast<double>(count) * each.usual.value; }
};

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
    std::vector<Standing> standing; ///< without the kinds of which there is none
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

/// Plans the boring of a bore. Throws Faulty (Origin::job): a size class or size that is not known, a rough
/// cut, stroke or edge life that cannot be meant.
/// @param expansion α of the base metal, with its source [1/K]; nothing: that of the table counts.
BoringPlan bore_boring(const WornBore& bore, const BoreWeld& weld, const BarSettings& settings,
                       const std::optional<Sourced<double>>& expansion, const std::vector<SizeStep>& steps);

/// What is out of the usual in the boring of a bore: speeds, feeds or sizes that portable bars do not have, a
/// first cut that stays in the skin, more than one set-up, limits closer than the bit can be set.
std::vector<std::string> boring_notes(const WornBore& bore, const BoringPlan& boring, UnitSystem units);

/// How the figures of a bore's boring were reached (boring.*).
std::vector<Working> boring_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan);

} // namespace ringfill
