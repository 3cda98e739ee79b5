#pragma once

#include <string>
#include <vector>

#include <fmt/format.h>

#include <ringfill/document/whole_file.hpp>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// A job of one bore in steel.
inline std::string odd_job(const std::string& bore, const std::string& units = "mm",
                           const std::string& wire = R"("wire": "1.0 mm", "wire_feed": "6.5 m/min",
                              "current": "150 A", "voltage": "18.5 V", "travel": "320 mm/min")") {
    return fmt::format(R"({{ "format": "ringfill-job/1", "title": "Odd", "units": "{}",
        "site": {{ "ambient": "4 degC" }},
        "procedures": {{ "main": {{ "filler": "steel/ER70S-6", "gas": "M21", {} }} }},
        "bores": [ {{ "name": "pin", "base": "steel/C45", {} }} ] }})",
                       units, wire, bore);
}

/// Thin layers, 1.7 mm each.
inline std::string layered_job(double worn_mm, double length_mm = 100, double boss_mm = 400) {
    return odd_job(fmt::format(R"("finish_diameter": 100, "length": {}, "boss_diameter": {},
                                  "worn": {{ "diameter": {}, "offset": 1, "offset_clock": "135 deg" }})",
                               length_mm, boss_mm, worn_mm),
                   "mm", R"("wire": "0.8 mm", "wire_feed": "5 m/min", "travel": "400 mm/min")");
}

struct OddJob {
    std::string name;
    std::string text;
};

/// Jobs at the ends of what a drawing meets.
inline std::vector<OddJob> odd_jobs() {
    return {
        {"thin wall", odd_job(R"("finish_diameter": 90, "length": 100, "boss_diameter": 97,
            "worn": { "diameter": 93.4, "offset": 0.4, "offset_clock": "60 deg" })")},
        {"tiny",
         odd_job(R"("finish_diameter": 18, "length": 12, "boss_diameter": 40, "worn": { "diameter": 19 },
            "skim": 0.2, "stock": 1, "overhang": 1)")},
        {"tiny in a large boss", odd_job(R"("finish_diameter": 18, "length": 12, "boss_diameter": 900,
            "worn": { "diameter": 19 }, "skim": 0.2, "stock": 1, "overhang": 1)")},
        {"huge", odd_job(R"("finish_diameter": 1200, "length": 150, "boss_diameter": 1500,
            "worn": { "diameter": 1206, "offset": 2 })")},
        {"long",
         odd_job(R"("finish_diameter": 90, "length": 900, "boss_diameter": 180, "worn": { "diameter": 93.4 },
            "holes": [ { "diameter": 10, "depth": 100, "clock": "0 deg", "other_end": "open" },
                       { "diameter": 10, "depth": 111, "clock": "1 deg", "other_end": "blind" },
                       { "diameter": 10, "depth": 300, "clock": "90 deg", "other_end": "fitting" },
                       { "diameter": 10, "depth": 400, "clock": "120 deg" },
                       { "diameter": 10, "depth": 500, "clock": "180 deg" },
                       { "diameter": 10, "depth": 600, "clock": "270 deg" },
                       { "diameter": 10, "depth": 700, "clock": "359 deg" },
                       { "diameter": 10, "depth": 895, "clock": "45 deg" } ])")},
        {"boss not given", odd_job(R"("finish_diameter": 90, "length": 100, "worn": { "diameter": 93.4 },
            "holes": [ { "diameter": 60, "depth": 30, "clock": "90 deg" } ])")},
        {"short with wide faces",
         odd_job(R"("finish_diameter": 90, "length": 8, "boss_diameter": 600, "overhang": 0,
            "worn": { "diameter": 93.4 },
            "faces": [ { "inner": 100, "outer": 500, "build": 3 }, { "inner": 110, "outer": 700, "build": 9 } ],
            "grooves": [ { "diameter": 99, "width": 3 }, { "diameter": 94, "width": 2 } ])")},
        {"welded as it is",
         odd_job(R"("finish_diameter": 90, "length": 100, "boss_diameter": 180, "skim": "none",
            "worn": { "stations": [ { "depth": 0, "radii": [48, 47, 46.5, 49, 52, 51, 50, 49] },
                                    { "depth": 100, "radii": [47, 47, 46.5, 47, 49, 51, 48, 47] } ] })")},
        {"long overhang, inches",
         odd_job(R"("finish_diameter": 1, "length": 0.4, "boss_diameter": 3, "overhang": 2,
            "worn": { "diameter": 1.0625, "offset": "15 thou" }, "skim": "1/32 in", "stock": "1/16 in")",
                 "inch")},
        {"large pad at a short bore", odd_job(R"("finish_diameter": 90, "length": 10, "boss_diameter": 180,
            "overhang": 1, "stock": 20, "worn": { "diameter": 93.4 },
            "faces": [ { "inner": 100, "outer": 150, "build": 30 } ])")},
        {"two layers", layered_job(99)},
        {"ten layers", layered_job(125)},
        {"forty layers", layered_job(230, 360)},
    };
}

inline std::string demo_text(const std::string& name) {
    return read_whole(std::string(RINGFILL_ROOT) + "/cli/demo/" + name, 1'000'000);
}

inline const std::vector<std::string>& demos() {
    static const std::vector<std::string> names = {"barge-winch-frame.json", "dredger-pivots.json",
                                                   "every-field.json", "ferry-ramp-hinges.json",
                                                   "sluice-gate-lugs.json"};
    return names;
}

/// The odd jobs and those that the program shows.
inline std::vector<OddJob> drawn_jobs() {
    auto jobs = odd_jobs();
    for (const std::string& name : demos())
        jobs.push_back({name, demo_text(name)});
    return jobs;
}

} // namespace ringfill::testing
