#pragma once

#include <string>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// A job of one bore; more fields of the bore and of the job may be put in.
inline std::string small_job(const std::string& bore_fields = "", const std::string& job_fields = "") {
    return R"json({
  "format": "ringfill-job/1", "title": "Stick pins, drainage ship 2", "units": "mm",
  "procedures": { "main": { "filler": "steel/ER70S-6", "wire": "1 mm", "gas": "M21", "wire_feed": "8 m/min",
                            "travel": "350 mm/min" } },
  )json" + job_fields +
           R"json("bores": [{ )json" + bore_fields + R"json(
    "name": "pin left", "base": "steel/C45", "finish_diameter": "90 mm", "length": "100 mm",
    "worn": { "diameter": "93.4 mm" } }]
})json";
}

inline Plan plan_of(const std::string& text) {
    return plan(job_from(text), shop());
}

} // namespace ringfill::testing
