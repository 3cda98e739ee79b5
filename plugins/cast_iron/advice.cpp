#include "advice.hpp"

namespace ringfill::cast_iron {
namespace {

void cold(const family::Sink& sink) {
    sink.advice(
        "technique",
        "Lay beads of 25 to 50 mm (1 to 2 in), peen each at once, skip to another place, and go on only "
        "when a hand can rest beside the weld.",
        "cast-iron-practice");
    sink.advice("interpass",
                "Keep it cold or heat it whole, never between: between 200 and 450 °C (390 and 840 °F), and "
                "hotter in one place than in another, it cracks.",
                "cast-iron-practice");
    sink.advice("slow_cooling", "Let it cool by itself, out of the draught: no water, no hold.",
                "cast-iron-practice");
}

/// Neither cold nor hot is said, since nobody knows which it is to be.
void without_practice(const family::Sink& sink) {
    sink.advice(
        "soak",
        "Take from an approved procedure whether it is welded cold or hot. Where it is heated, heat the "
        "whole part evenly and slowly, not the boss alone.",
        "practice");
    sink.advice("interpass",
                "Keep it cold or heat it whole, never between: between 200 and 450 °C (390 and 840 °F), and "
                "hotter in one place than in another, it cracks.",
                "cast-iron-practice");
}

void even_heat(const family::Sink& sink) {
    sink.advice("soak",
                "Heat the whole part evenly and slowly, not the boss alone, and hold it so through the whole "
                "weld.",
                "cast-iron-practice");
}

} // namespace

rf_status advise(const family::Sink& sink, Practice practice, bool nodular) {
    sink.advice(
        "technique",
        "Cut the casting skin, oil and old cracks out to bright metal, drill the end of each crack, and "
        "drive oil out of the pores with a small flame before the first bead.",
        "practice");
    if (practice == Practice::cold && !nodular) {
        cold(sink);
        return RF_DONE;
    }
    if (practice == Practice::none && !nodular)
        without_practice(sink);
    else
        even_heat(sink);
    if (nodular)
        sink.advice(
            "post_heat",
            "Where the part must be free of stress, relieve it at 600 to 620 °C (1,110 to 1,150 °F) as an "
            "approved procedure says and cool it slowly.",
            "nodular-iron-answer");
    sink.advice(
        "slow_cooling",
        practice == Practice::hot
            ? "Cool it in the furnace or buried in dry sand or lime, no faster than 40 K/h down to 150 °C "
              "(300 °F), and let it lie until it is cold to the hand."
            : "Cover it with a dry insulating blanket at once after the last bead: no faster than 40 K/h "
              "down "
              "to 150 °C (300 °F).",
        "cast-iron-practice");
    return RF_DONE;
}

} // namespace ringfill::cast_iron
