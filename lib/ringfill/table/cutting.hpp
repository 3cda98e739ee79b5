#pragma once

#include <array>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/word_of.hpp>
#include <ringfill/table/cutting_tool.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// How long the hands take for something beside the chips, and from how long to how long that is.
struct StandingTime {
    Sourced<Time> usual;
    SourcedRange<Time> range;
};

/// What a weld deposit is to the tool that cuts it.
enum class DepositGroup { mild, low_alloy, hardened, austenitic, manganese, nickel, bronze, cast_iron };

template <>
inline constexpr std::string_view enum_words<DepositGroup>[] = {
    "mild", "low_alloy", "hardened", "austenitic", "manganese", "nickel", "bronze", "cast_iron"};

/// How one tool cuts the deposits of one group.
struct ToolFigures {
    Sourced<Speed> cutting_speed;
    SourcedRange<Speed> speed_range;
    Sourced<Speed>
        skin_speed;       ///< interrupted, or in scale and skin: the skim and the first cut after the weld
    Sourced<Length> feed; ///< per revolution
    SourcedRange<Length> feed_range;
    Sourced<Time> edge_life; ///< cutting time of one edge
    SourcedRange<Time> life_range;
};

/// How a portable boring bar is run where the job does not say, and what such bars do.
struct Cutting {
    std::array<ToolFigures, std::size(enum_words<DepositGroup>)> carbide; ///< as DepositGroup
    std::array<ToolFigures, std::size(enum_words<DepositGroup>)> hss;     ///< likewise
    /// Fillers by the group that rules know them by, or as family/name; of two alike the later counts.
    std::vector<std::pair<std::string, DepositGroup>> deposits;
    Sourced<double> hardened_over_HV; ///< from here on a deposit counts as hardened
    Sourced<double> bored_up_to_HV;   ///< a harder one is ground
    Sourced<Length> least_last_cut;   ///< of a deposit that hardens under the edge, per side
    Sourced<Length> least_feed;       ///< of such a one, per revolution

    Sourced<Length> facing_feed;     ///< of the facing head, per revolution
    Sourced<Length> rough_cut;       ///< deepest, per side
    Sourced<Length> semi_finish_cut; ///< per side
    Sourced<Length> finish_cut;      ///< per side
    Sourced<Length> nose_radius;     ///< of the tool bit
    Sourced<double> expansion;       ///< of a metal whose family gives none [1/K]
    Sourced<Temperature> rough_below;
    Sourced<Temperature> finish_below; ///< also for measuring

    SourcedRange<Turning> small_bar; ///< electric
    SourcedRange<Turning> large_bar; ///< hydraulic
    SourcedRange<Speed> axial_feed;
    SourcedRange<Length> bores; ///< diameters that portable bars serve
    Sourced<Power> bar_drive;   ///< what a usual drive draws
    Sourced<Length> bit_step;   ///< the tool bit is set in such steps, on the radius

    StandingTime tool_set;    ///< the bit set and the bar run back, before each cut
    StandingTime trim;        ///< the weld past one face taken off flush
    StandingTime facing_head; ///< put on for one face
    StandingTime groove;      ///< one retaining groove cut again
    StandingTime hole;        ///< one plugged hole reopened
    StandingTime chamfer;     ///< one lead-in chamfer
    StandingTime bar_move;    ///< the bar set and aligned again for the next stroke

    const ToolFigures& of(CuttingTool tool, DepositGroup group) const {
        return (tool == CuttingTool::hss ? hss : carbide)[static_cast<std::size_t>(group)];
    }
};

/// Reads cutting.json, file after file; a later file corrects figure by figure. Throws Faulty
/// (Origin::table), also when a figure is in none of the files.
Cutting read_cutting(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
