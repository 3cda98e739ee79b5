#pragma once

#include <compare>
#include <string_view>

namespace ringfill {

/// What the hours of a day go into. Waiting: on site, by day. Idle: nobody is there until a morning. Pause:
/// the crew has its break.
enum class Phase { set_up, heating, welding, waiting, boring, clean_up, idle, pause };

/// Whether hands are at work.
constexpr bool is_work(Phase phase) {
    return phase != Phase::waiting && phase != Phase::idle && phase != Phase::pause;
}

/// What is done on a job, or waited for, and what holds for it.
struct Step {
    std::string_view words;
    Phase phase = Phase::set_up;
    std::string_view standing = {}; ///< its name in the table of standing times, where it has one
    bool uses_bar = false;          ///< with its tool or the torch on it
    bool has_fire = false;          ///< flame, arc, sparks, or a pause between them
    bool is_among_rings = false;    ///< between the first and the last ring: people read it as one
    bool can_be_cut = false;        ///< it may be left in the evening and gone on with in the morning

    /// Nobody's hands are needed.
    constexpr bool waits() const { return !is_work(phase); }

    auto operator<=>(const Step&) const = default;
};

/// Every step there is.
namespace steps {
inline constexpr Step unload{"unload and make the place safe", Phase::set_up, "arrive"};
inline constexpr Step set_up_bar{
    "set up and align the bar", Phase::set_up, "align", true, false, false, true};
inline constexpr Step survey{"survey", Phase::set_up, "survey", false, false, false, true};
inline constexpr Step mount_tool{"mount tool", Phase::set_up, "mount tool", true};
inline constexpr Step skim{"skim", Phase::boring, {}, true, false, false, true};
inline constexpr Step check_cracks{"crack check", Phase::set_up, "crack check"};
inline constexpr Step plug_holes{"plug holes", Phase::set_up, "plug a hole"};
inline constexpr Step mount_torch{"mount torch", Phase::set_up, "mount torch", true};
inline constexpr Step rig_burner{"rig the burner", Phase::set_up, "rig burner"};
inline constexpr Step preheat{"preheat", Phase::heating, {}, true, true};
inline constexpr Step soak{"let the heat even out, read it", Phase::heating, {}, true, true};
inline constexpr Step wait_too_hot{"wait: too hot after", Phase::waiting, {}, true, true, true};
inline constexpr Step clean_layer{"clean the layer", Phase::welding, {}, true, true, true};
inline constexpr Step weld{"weld", Phase::welding, {}, true, true, true};
/// On iron that is laid cold: it may be left between two stitches.
inline constexpr Step weld_in_stitches{"weld in stitches", Phase::welding, {}, true, true, true, true};
inline constexpr Step reheat{"reheats between rings", Phase::heating, {}, true, true};
inline constexpr Step hold{"hold hot after the last ring", Phase::heating, {}, true, true};
inline constexpr Step cool_to_rough{"cools for roughing", Phase::waiting};
inline constexpr Step heat_treat{"cools and goes through heat treatment, by others", Phase::waiting,
                                 "heat treatment"};
inline constexpr Step trim{"trim the ends", Phase::boring, {}, true, false, false, true};
inline constexpr Step rough{"rough and semi-finish", Phase::boring, {}, true, false, false, true};
inline constexpr Step cool_to_finish{"cools for finishing", Phase::waiting};
inline constexpr Step finish{"finish and spring pass", Phase::boring, {}, true};
inline constexpr Step face{"face", Phase::boring, {}, true, false, false, true};
inline constexpr Step cut_grooves{"cut grooves", Phase::boring, {}, true, false, false, true};
inline constexpr Step reopen_holes{"reopen holes", Phase::boring, {}, true, false, false, true};
inline constexpr Step chamfer{"chamfer", Phase::boring, {}, true, false, false, true};
inline constexpr Step measure{"measure size", Phase::boring, "measure size"};
inline constexpr Step take_off_bar{"take the bar off", Phase::clean_up, "strip"};
inline constexpr Step pack{"pack and hand over", Phase::clean_up, "leave"};
inline constexpr Step change_over{"change over"};
inline constexpr Step pause{"break", Phase::pause};
inline constexpr Step wait_for_morning{"wait for the morning", Phase::idle};
} // namespace steps

} // namespace ringfill
