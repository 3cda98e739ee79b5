#pragma once

#include <algorithm>
#include <map>
#include <string>

#include <fmt/format.h>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// The fields of a job that cautions hang on, each as JSON; an empty text leaves the field out.
using Fields = std::map<std::string, std::string>;

inline std::string members(const Fields& fields, std::string_view group) {
    std::string text;
    for (const auto& [name, value] : fields)
        if (name.starts_with(group) && !value.empty())
            text += fmt::format("{}\"{}\": {}", text.empty() ? "" : ", ", name.substr(group.size()), value);
    return text;
}

/// A job that states everything the cautions ask for, so that the answer to each is yes or no.
inline Fields stated() {
    return {{"site.ambient", "\"15 degC\""},
            {"site.wet", "false"},
            {"site.indoors", "true"},
            {"site.enclosed", "false"},
            {"site.room_volume", "\"1000 m3\""},
            {"site.ceiling", "\"8 m\""},
            {"site.near", "[]"},
            {"site.coating", "\"none\""},
            {"site.residue", "[]"},
            {"site.crew", "[]"},
            {"procedure.filler", "\"steel/ER70S-6\""},
            {"procedure.wire", "\"1.0 mm\""},
            {"procedure.gas", "\"M21\""},
            {"procedure.wire_feed", "\"6.5 m/min\""},
            {"procedure.current", "\"150 A\""},
            {"procedure.voltage", "\"18.5 V\""},
            {"procedure.travel", "\"320 mm/min\""},
            {"bore.name", "\"lug\""},
            {"bore.axis", "\"horizontal\""},
            {"bore.base", "\"steel/S355J2\""},
            {"bore.finish_diameter", "90"},
            {"bore.length", "100"},
            {"bore.boss_diameter", "180"},
            {"bore.worn", R"({ "diameter": 93 })"},
            {"bore.procedure", "\"main\""},
            {"heater.kind", "\"propane\""},
            {"heater.power", "\"30 kW\""}};
}

/// The product's tables, and a metal and wires that hold nothing the fume rows look for.
inline const Shop& shop_of_tests() {
    static const Shop ready =
        read_shop(Shelf{{RINGFILL_TABLES, std::string(RINGFILL_ROOT) + "/tests/caution/tables"}},
                  {RINGFILL_PLUGIN_FOLDER});
    return ready;
}

inline Plan planned(const Fields& fields) {
    return plan(job_from(fmt::format(
                    R"({{ "format": "ringfill-job/1", "title": "t", "units": "mm", "site": {{ {} }},
                          "procedures": {{ "main": {{ {} }} }}, "bores": [ {{ {} }} ], "heater": {{ {} }},
                          "torch": {{ "smallest_bore": "20 mm", "reach": "900 mm" }}, "reserve": "10 %" }})",
                    members(fields, "site."), members(fields, "procedure."), members(fields, "bore."),
                    members(fields, "heater."))),
                shop_of_tests());
}

/// How a row of the table stands in a plan: "yes", "unknown", or "no" when it is left out.
inline std::string answer(const Plan& plan, const CautionRow& row) {
    // Rows are told by their texts up to the first brace, which differ from one another.
    const std::string begins = row.text.substr(0, row.text.find('{'));
    std::string found = "no";
    for (const Caution& caution : plan.cautions)
        if (caution.text.starts_with(begins)) {
            CHECK(found == "no");
            found = word_of(caution.applies);
        }
    return found;
}

} // namespace ringfill::testing
