#pragma once

#include <algorithm>
#include <string>

#include <fmt/format.h>

#include <ringfill/say/sentence.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// A bore of 90 mm in a wall of 43 mm at 15 degC, with further members of procedure and bore.
inline Plan pair(const std::string& base, const std::string& filler, const std::string& procedure,
                 const std::string& bore = {}) {
    return plan(job_from(fmt::format(
                    R"({{ "format": "ringfill-job/1", "title": "pair", "units": "mm",
"site": {{ "ambient": "15 degC" }}, "heater": {{ "kind": "propane" }},
"procedures": {{ "p": {{ "filler": "{}", {}, "voltage": "22 V", "travel": "250 mm/min" }} }},
"bores": [ {{ "name": "b", "base": "{}", {} "finish_diameter": "90 mm", "length": "60 mm",
             "boss_diameter": "178 mm", "worn": {{ "diameter": "92 mm" }}, "procedure": "p" }} ] }})",
                    filler, procedure, base, bore)),
                shop());
}

inline const std::string stick = R"("wire": "3.2 mm", "current": "120 A")";
inline const std::string cored = R"("wire": "1.2 mm", "current": "180 A", "wire_feed": "6 m/min")";
inline const std::string metal_cored = R"("gas": "M21", )" + cored;
inline const std::string solid = R"("gas": "M12", )" + cored;
inline const std::string argon = R"("gas": "I1", )" + cored;

inline const Preheat& preheat_of(const Plan& plan) {
    return plan.bores.at(0).heat.preheat;
}

inline double minimum(const Plan& plan) {
    return deg_c(preheat_of(plan).minimum.value().value);
}
inline double most(const Plan& plan) {
    return deg_c(preheat_of(plan).interpass_max.value().value);
}

inline bool warns(const Plan& plan, const std::string& words) {
    return std::any_of(plan.cautions.begin(), plan.cautions.end(),
                       [&](const Caution& caution) { return caution.text.find(words) != std::string::npos; });
}

inline bool takes(const Plan& plan, const std::string& item) {
    return std::any_of(plan.take.begin(), plan.take.end(), [&](const Need& line) {
        return item_text(line, plan.units).find(item) != std::string::npos;
    });
}

inline std::string joined(const Sentences& sentences) {
    std::string text;
    for (const Sentence& sentence : sentences)
        text += sentence.text + "\n";
    return text;
}

} // namespace ringfill::testing
