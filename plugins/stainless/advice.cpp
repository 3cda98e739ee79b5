// What stainless steel asks for after the weld. Its preheat stands in its table whole.

#include <optional>

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

namespace {

using namespace ringfill::family;

constexpr double martensitic_metal = 2; // as abi.h numbers structures
constexpr double austenitic_metal = 3;
constexpr double crack_test_hours = 48;

rf_status austenitic(const Sink& sink) {
    sink.advice(
        "interpass",
        "Do not preheat it beyond dry, and let every ring cool under its maximum: held hot it cracks and "
        "loses its resistance to rust.",
        "practice");
    sink.advice("slow_cooling", "Let it cool in the open, without a blanket.", "practice");
    return RF_DONE;
}

rf_status martensitic(const Sink& sink) {
    sink.advice(
        "soak",
        "Heat until the face away from the flame is at the preheat and stays there, and hold it through "
        "the whole weld: it hardens in air.",
        "ISO13916");
    sink.advice("crack_test",
                "Wait 48 h from cold before the crack test, because cracks by hydrogen come late.", "D10.10");
    Figure wait;
    wait.name = "crack_test_wait_s";
    wait.number = crack_test_hours * 3600;
    wait.formula = "48*3600";
    wait.source = "D10.10";
    sink.value(wait);
    return RF_DONE;
}

} // namespace

extern "C" rf_status stainless_answer(const rf_sink* sink, const rf_question* question) noexcept {
    return guarded(sink, question, [](const Sink& to, const rf_question& asked) -> rf_status {
        if (view_of(asked.topic) != "advice")
            return RF_UNSUPPORTED;
        const auto structure = number_of(asked, "structure");
        return structure == austenitic_metal    ? austenitic(to)
               : structure == martensitic_metal ? martensitic(to)
                                                : RF_UNSUPPORTED;
    });
}
