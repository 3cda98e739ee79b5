// How bronze is welded. Its figures stand in its table whole.

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

namespace {

using namespace ringfill::family;

constexpr double copper_metal = 6; // as abi.h numbers structures

rf_status keep_sound(const Sink& sink) {
    sink.advice(
        "technique",
        "Take every trace of bearing metal, solder, zinc, cadmium and lead off first: they crack bronze "
        "and their fume is poison.",
        "copper-practice");
    sink.advice("technique",
                "Brush the oxide off each bead with stainless wire: the next one does not wet it.",
                "practice");
    sink.advice("interpass", "Let every ring cool under its maximum: held hot, bronze tears as it shrinks.",
                "copper-practice");
    sink.advice("slow_cooling", "Let it cool in the open, without a blanket.", "practice");
    return RF_DONE;
}

} // namespace

extern "C" rf_status bronze_answer(const rf_sink* sink, const rf_question* question) noexcept {
    return guarded(sink, question, [](const Sink& to, const rf_question& asked) -> rf_status {
        if (view_of(asked.topic) != "advice" || number_of(asked, "structure") != copper_metal)
            return RF_UNSUPPORTED;
        return keep_sound(to);
    });
}
