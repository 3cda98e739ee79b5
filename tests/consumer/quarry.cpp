// The rule of the family "quarry": its metal is heated to 140 degC, over 30 mm or where the wall is not known
// to 190 degC.
#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

using namespace ringfill::family;

extern "C" rf_status quarry_answer(const rf_sink* sink, const rf_question* question) noexcept {
    return guarded(sink, question, [](const Sink& to, const rf_question& asked) -> rf_status {
        if (view_of(asked.topic) != "preheat")
            return RF_UNSUPPORTED;
        const auto wall_m = number_of(asked, "wall_m");
        const double degC = !wall_m || *wall_m > 0.030 ? 190 : 140;
        Figure method;
        method.name = "quarry rule";
        method.number = degC + 273.15;
        method.formula = "T";
        method.inputs = {{"T", degC, "degC"}};
        method.source = "quarry-rule";
        to.method(method);
        return RF_DONE;
    });
}
