#pragma once

#include <numbers>

#include <fmt/format.h>

#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// A job of one bore under an approved procedure, which gives both limits.
struct BalanceJob {
    double length = 100; ///< mm
    double boss = 180;   ///< mm
    double worn = 93.4;  ///< mm, skimmed by 0.5 mm a side
    double ambient = 4;  ///< °C
    double minimum = 180;
    double maximum = 300;
    double heater_kW = 30;
    double travel = 320; ///< mm/min
    std::string sink = R"("carry_off": "2 W/K",)";
    std::string bore;      ///< more fields
    std::string procedure; ///< likewise
    std::string approved;  ///< likewise
    bool with_boss = true;
    bool with_voltage = true;

    std::string text() const {
        return fmt::format(
            R"({{ "format": "ringfill-job/1", "title": "Pivots", "units": "mm", "site": {{ "ambient": "{} degC" }},
            "procedures": {{ "main": {{ "filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "M21",
              "wire_feed": "6.5 m/min", "current": "150 A", {} "travel": "{} mm/min", "travel_max": "{} mm/min",
              {} "approved": {{ "reference": "P-1", "preheat_min": "{} degC", "interpass_max": "{} degC"{} }} }} }},
            "heater": {{ "kind": "propane", "power": "{} kW", "efficiency": 0.25 }},
            "bores": [ {{ "name": "eye", "base": "steel/A36", "finish_diameter": {}, "length": {}, {} {} {}
              "worn": {{ "diameter": {} }}, "skim": "0.5 mm", "overhang": 0 }} ] }})",
            ambient, with_voltage ? "\"voltage\": \"18.5 V\"," : "", travel, 1.3 * travel, procedure, minimum,
            maximum, approved, heater_kW, worn - 3.4, length,
            with_boss ? fmt::format("\"boss_diameter\": {},", boss) : "", sink, bore, worn);
    }

    Plan plan() const { return ringfill::plan(job_from(text()), shop()); }
};

/// Arc time of every ring of the layers of a planned bore, by hand: each layer's time in equal parts.
inline std::vector<RingPass> rings_by_hand(const BorePlan& bore, Length length) {
    std::vector<RingPass> passes;
    for (const Layer& layer : bore.layers)
        passes.push_back({"bore", static_cast<int>(passes.size() + 1),
                          std::vector<Time>(static_cast<std::size_t>(layer.rings),
                                            layer.arc / static_cast<double>(layer.rings)),
                          Length(), length});
    return passes;
}

} // namespace ringfill::testing
