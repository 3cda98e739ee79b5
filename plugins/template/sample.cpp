// The rule of the family "sample", as small as a rule can be: metal over 25 mm thick is heated to 100 degC.
// Copy this folder, rename "sample" throughout, and put your own rule in place of this one.

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

namespace {

using namespace ringfill::family;

constexpr double thin_mm = 25;
constexpr double hot_degC = 100;
constexpr double kelvin = 273.15; // 0 degC in K

rf_status preheat(const Sink& sink, const rf_question& question) {
    // What is not known is absent. Then the worst case is taken, here the thick wall, and the note says so.
    const auto wall_m = number_of(question, "wall_m");
    const bool thick = !wall_m || *wall_m * 1000 > thin_mm;

    Figure method;
    method.name = "sample rule";
    method.source = "sample-rule"; // a key of the table's own sources
    if (thick) {
        method.number = hot_degC + kelvin; // every figure crosses in the unit abi.h states, here K
        method.formula = "T";              // in degC, with what it is made of
        method.inputs = {{"T", hot_degC, "degC"}};
    } else {
        method.flags = RF_NONE_NEEDED;
    }
    if (!wall_m)
        method.note = "the wall is not known, so it is taken as thick";
    sink.method(method);
    return RF_DONE;
}

} // namespace

// The one function the program calls. `guarded` turns whatever is thrown into a fault, since nothing may be
// thrown across the interface.
extern "C" rf_status sample_answer(const rf_sink* sink, const rf_question* question) noexcept {
    return guarded(sink, question, [](const Sink& to, const rf_question& asked) -> rf_status {
        if (view_of(asked.topic) == "preheat")
            return preheat(to, asked);
        return RF_UNSUPPORTED; // a topic this family has no rule for, also one not thought of yet
    });
}
