#pragma once

#include <string_view>

#include <ringfill/heat/heat_run.hpp>

namespace ringfill {

/// The name of a stage in the result and in the timeline of a person.
constexpr std::string_view step_name(HeatStage stage) {
    switch (stage) {
    case HeatStage::warm_up:
        return "warm-up";
    case HeatStage::weld:
        return "weld";
    case HeatStage::stop:
        return "stop";
    case HeatStage::reheat:
        return "reheat";
    case HeatStage::post_heat:
        return "post-heat";
    case HeatStage::cool_to_rough:
        return "cool to rough";
    case HeatStage::cool_to_finish:
        break;
    }
    return "cool to finish";
}

} // namespace ringfill
