// How nickel and its alloys are kept clean and cool. Their figures stand in their table whole.

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

namespace {

using namespace ringfill::family;

constexpr double nickel_metal = 5; // as abi.h numbers structures

rf_status keep_clean(const Sink& sink) {
    sink.advice(
        "technique",
        "Clean bright and free of grease, paint, crayon and marking ink, a hand's breadth to each side: "
        "sulphur, lead and phosphorus crack hot nickel.",
        "practice");
    sink.advice(
        "technique",
        "Lay narrow beads that stand a little proud and fill every crater: flat and hollow ones crack.",
        "practice");
    sink.advice("slow_cooling", "Let it cool in the open, without a blanket.", "practice");
    return RF_DONE;
}

} // namespace

extern "C" rf_status nickel_answer(const rf_sink* sink, const rf_question* question) noexcept {
    return guarded(sink, question, [](const Sink& to, const rf_question& asked) -> rf_status {
        if (view_of(asked.topic) != "advice" || number_of(asked, "structure") != nickel_metal)
            return RF_UNSUPPORTED;
        return keep_clean(to);
    });
}
