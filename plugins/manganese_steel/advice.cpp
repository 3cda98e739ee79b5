// How austenitic manganese steel is kept cold. Its figures stand in its table whole; no carbon equivalent is
// ever worked out for it, and nothing here asks for preheat, slow cooling or a hold.

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

namespace {

using namespace ringfill::family;

constexpr double austenitic_metal = 3; // as abi.h numbers structures

rf_status keep_cold(const Sink& sink) {
    sink.advice(
        "interpass",
        "Take off chill and damp, no more. A finger's breadth (13 mm, 1/2 in) beside the weld it stays "
        "under its maximum at all times: hot for long it turns brittle, and no later heat mends that.",
        "A128-practice");
    sink.advice("technique",
                "Lay short beads, skip from place to place, peen each while it is hot and let it cool before "
                "the next; with the arc off, water on the bead is allowed.",
                "A128-practice");
    sink.advice("technique",
                "The rings counted here are whole: laid in short pieces they take more starts and more time.",
                "practice");
    sink.advice("technique",
                "Cut or grind away the skin that wear has hardened, and any crack in it, before the first "
                "bead.",
                "practice");
    sink.advice("slow_cooling",
                "Cool it fast, in the open or with water: no blanket, no furnace, no hold after the weld.",
                "A128-practice");
    return RF_DONE;
}

} // namespace

extern "C" rf_status manganese_steel_answer(const rf_sink* sink, const rf_question* question) noexcept {
    return guarded(sink, question, [](const Sink& to, const rf_question& asked) -> rf_status {
        if (view_of(asked.topic) != "advice" || number_of(asked, "structure") != austenitic_metal)
            return RF_UNSUPPORTED;
        return keep_cold(to);
    });
}
