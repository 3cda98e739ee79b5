// How hot cast iron is welded, by the filler that the job takes.

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

#include "advice.hpp"
#include "practice.hpp"

namespace {

using namespace ringfill::family;
using namespace ringfill::cast_iron;

constexpr double kelvin = 273.15;       // 0 degC in K
constexpr double cold_most_degC = 60;   // of 60 to 70, the lower: what a hand bears
constexpr double warm_least_degC = 170; // of 150 to 170, the upper
constexpr double warm_most_degC = 320;
constexpr double hot_least_degC = 500; // the practice is a window: no colder than 500, no hotter than 650
constexpr double hot_most_degC = 650;

Figure in_degC(std::string name, double degC, std::string source) {
    Figure figure;
    figure.name = std::move(name);
    figure.number = degC + kelvin;
    figure.source = std::move(source);
    return figure;
}

void no_hotter_than(const Sink& sink, double degC) {
    sink.value(in_degC("interpass_max_K", degC, "cast-iron-practice"));
}

void cold(const Sink& sink, bool nodular) {
    Figure method;
    method.name = "cast iron welded cold";
    method.source = "cast-iron-practice";
    method.flags = nodular ? RF_NOT_USABLE : RF_NONE_NEEDED;
    method.note =
        nodular ? "a boss of nodular iron is not welded cold" : "metal of so much nickel is laid cold";
    sink.method(method);
    no_hotter_than(sink, nodular ? warm_most_degC : cold_most_degC);
}

void heated(const Sink& sink, Practice practice) {
    const bool hot = practice == Practice::hot;
    Figure method = hot ? in_degC("cast iron welded hot", hot_least_degC, "cast-iron-practice")
                        : in_degC("cast iron welded warm", warm_least_degC, "iron-core-electrodes");
    method.note = hot ? "the filler is cast iron" : "the filler is steel";
    sink.method(method);
    no_hotter_than(sink, hot ? hot_most_degC : warm_most_degC);
}

void without_practice(const Sink& sink, bool nodular) {
    Figure method;
    method.name = "practice for cast iron";
    method.source = "practice";
    method.flags = RF_NO_FIGURE;
    method.note = "none is known for this filler: nickel is laid cold, iron hot, steel warm";
    sink.method(method);
    if (nodular)
        no_hotter_than(sink, warm_most_degC);
}

rf_status preheat(const Sink& sink, const rf_question& question) {
    switch (const Practice practice = practice_for(question)) {
    case Practice::cold:
        cold(sink, is_nodular(question));
        break;
    case Practice::warm:
    case Practice::hot:
        // Nodular iron goes by its own row, and never hot.
        heated(sink, is_nodular(question) ? Practice::warm : practice);
        break;
    case Practice::none:
        without_practice(sink, is_nodular(question));
        break;
    }
    return RF_DONE;
}

} // namespace

extern "C" rf_status cast_iron_answer(const rf_sink* sink, const rf_question* question) noexcept {
    return guarded(sink, question, [](const Sink& to, const rf_question& asked) -> rf_status {
        if (view_of(asked.topic) == "preheat")
            return preheat(to, asked);
        if (view_of(asked.topic) == "advice")
            return advise(to, practice_for(asked), is_nodular(asked));
        return RF_UNSUPPORTED;
    });
}
