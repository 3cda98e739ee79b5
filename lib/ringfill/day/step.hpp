#pragma once

#include <string_view>

namespace ringfill {

/// What the hours of a day go into.
enum class Phase { set_up, heating, welding, waiting, boring, clean_up };

/// What is done on a job, or waited for.
enum class Step {
    unload,
    set_up_bar,
    survey,
    mount_tool,
    skim,
    check_cracks,
    plug_holes,
    mount_torch,
    preheat,
    wait_too_hot,
    clean_layer,
    weld,
    reheat,
    hold,
    cool_to_rough,
    trim,
    rough,
    cool_to_finish,
    finish,
    face,
    cut_grooves,
    reopen_holes,
    chamfer,
    measure,
    take_off_bar,
    pack,
    change_over,
    wait_for_morning
};

/// What holds for every step of one kind.
struct StepKind {
    Step step;
    std::string_view words;
    Phase phase = Phase::set_up;
    std::string_view standing = {}; ///< its name in the table of standing times, where it has one
    bool uses_bar = false;          ///< with its tool or the torch on it
    bool has_fire = false;          ///< flame, arc, sparks, or a pause between them
    bool is_among_rings = false;    ///< between the first and the last ring: people read it as one

    /// Nobody's hands are needed.
    constexpr bool waits() const { return phase == Phase::waiting; }
};

const StepKind& kind_of(Step step);

} // namespace ringfill
