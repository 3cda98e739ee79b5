#include <ringfill/day/step.hpp>

#include <array>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

constexpr auto step_kinds = std::to_array<StepKind>({
    {Step::unload, "unload and make the place safe", Phase::set_up, "arrive"},
    {Step::set_up_bar, "set up and align the bar", Phase::set_up, "align", true},
    {Step::survey, "survey", Phase::set_up, "survey"},
    {Step::mount_tool, "mount tool", Phase::set_up, "mount tool", true},
    {Step::skim, "skim", Phase::boring, {}, true},
    {Step::check_cracks, "crack check", Phase::set_up, "crack check"},
    {Step::plug_holes, "plug holes", Phase::set_up, "plug a hole"},
    {Step::mount_torch, "mount torch", Phase::set_up, "mount torch", true},
    {Step::preheat, "preheat", Phase::heating, {}, true, true},
    {Step::wait_too_hot, "wait: too hot after", Phase::waiting, {}, true, true, true},
    {Step::clean_layer, "clean the layer", Phase::welding, "clean a layer", true, true, true},
    {Step::weld, "weld", Phase::welding, "step a ring", true, true, true},
    {Step::reheat, "reheats between rings", Phase::heating, {}, true, true},
    {Step::hold, "hold hot after the last ring", Phase::heating, {}, true, true},
    {Step::cool_to_rough, "cools for roughing", Phase::waiting},
    {Step::trim, "trim the ends", Phase::boring, {}, true},
    {Step::rough, "rough and semi-finish", Phase::boring, {}, true},
    {Step::cool_to_finish, "cools for finishing", Phase::waiting},
    {Step::finish, "finish and spring pass", Phase::boring, {}, true},
    {Step::face, "face", Phase::boring, {}, true},
    {Step::cut_grooves, "cut grooves", Phase::boring, {}, true},
    {Step::reopen_holes, "reopen holes", Phase::boring, {}, true},
    {Step::chamfer, "chamfer", Phase::boring, {}, true},
    {Step::measure, "measure size", Phase::boring, "measure size"},
    {Step::take_off_bar, "take the bar off", Phase::clean_up, "strip"},
    {Step::pack, "pack and hand over", Phase::clean_up, "leave"},
    {Step::change_over, "change over"},
    {Step::wait_for_morning, "wait for the morning", Phase::waiting},
});

} // namespace

const StepKind& kind_of(Step step) {
    return *ranges::find(step_kinds, step, &StepKind::step);
}

} // namespace ringfill
