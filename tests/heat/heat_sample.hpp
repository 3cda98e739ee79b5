#pragma once

#include <string>
#include <vector>

#include <ringfill/heat/preheat.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill::testing {

/// A row of preheat in degrees Celsius, up to a wall in millimetres (0: any).
inline PreheatRow row(double up_to_mm, double minimum_degC) {
    PreheatRow made;
    if (up_to_mm > 0)
        made.up_to = Sourced<Length>{millimetres(up_to_mm), "practice"};
    made.minimum = {celsius(minimum_degC), "practice"};
    made.printed_degC = minimum_degC;
    return made;
}

/// A method as a plugin answers with it; the number in degrees Celsius.
struct SaidMethod {
    std::string name;
    double minimum_degC = 0;
    std::uint32_t flags = 0;
};

/// What the plugin below answers with; one test at a time.
inline std::vector<SaidMethod>& said_methods() {
    static std::vector<SaidMethod> said;
    return said;
}

inline rf_text text_of(const std::string& words) {
    return {words.data(), words.size()};
}

inline rf_status say_methods(const rf_sink* sink, const rf_question* question) {
    if (std::string(question->topic.data, question->topic.size) != "preheat")
        return RF_UNSUPPORTED;
    const std::string source = "practice";
    for (const SaidMethod& one : said_methods()) {
        const std::string note = "as it happens";
        const rf_figure figure{sizeof(rf_figure),
                               one.flags,
                               text_of(one.name),
                               one.minimum_degC + 273.15,
                               {nullptr, 0},
                               nullptr,
                               0,
                               text_of(source),
                               text_of(note)};
        sink->method(sink->context, &figure);
    }
    return RF_DONE;
}

/// A family with one grade "G", the row for unknown metal (200 °C, over 25 mm 300 °C) and a wire.
struct HeatSample {
    Family family;
    HeatCase what;

    explicit HeatSample(std::vector<SaidMethod> said = {}) {
        family.name = "alloy";
        family.sources["practice"] = {"common practice", "-", "-", "practice", "memory"};
        Base grade;
        grade.name = "G";
        grade.structure = "ferritic";
        Base unknown = grade;
        unknown.name = std::string(unknown_metal);
        unknown.practice =
            PreheatGroup{"tabulated practice for unknown", {}, {}, {row(25, 200), row(0, 300)}};
        Filler wire;
        wire.name = "W";
        family.bases = {grade, unknown};
        family.fillers = {wire};
        if (!said.empty())
            family.plugin = Plugin{"/alloy.family", "alloy", "1", "", say_methods};
        said_methods() = std::move(said);
        what.filler_name = "alloy/W";
        what.hydrogen_ml_100g = Sourced<double>{5, "practice"};
        wall(20);
    }

    void wall(double millimetres_thick) { what.wall = millimetres(millimetres_thick); }
    Base& grade() { return family.bases[0]; }

    Preheat preheat(const Approved* approved = nullptr) {
        what.family = &family;
        what.base = &grade();
        what.filler = &family.fillers[0];
        return ringfill::preheat(what, approved);
    }

    /// The minimum in degrees Celsius.
    double minimum() { return deg_c(preheat().minimum.value().value); }
};

} // namespace ringfill::testing
