#include "rules.hpp"

#include <exception>

#include "advice.hpp"
#include "carbon_equivalent.hpp"
#include "hydrogen_annex.hpp"
#include "method_b.hpp"
#include "question.hpp"
#include "seferian.hpp"
#include "table_c1.hpp"

namespace ringfill::steel {
namespace {

rf_status answer_preheat(const rf_sink& sink, const Asked& asked) {
    if (why_not_usable(asked.base).empty())
        for (const Figure& value : carbon_equivalents(asked.base))
            say_value(sink, value);
    for (const Figure& method : method_b(asked))
        say_method(sink, method);
    say_method(sink, table_c1(asked));
    say_method(sink, hydrogen_annex(asked));
    say_method(sink, seferian(asked));
    return RF_DONE;
}

rf_status answer_advice(const rf_sink& sink, const Asked& asked) {
    if (!why_no_ferritic_steel(asked.base).empty())
        return RF_UNSUPPORTED;
    const Advised told = advice(asked);
    for (const Figure& value : told.values)
        say_value(sink, value);
    for (const Advice& advice : told.advice)
        say_advice(sink, advice.kind, advice.text, advice.source);
    return RF_DONE;
}

rf_status answer(const rf_sink& sink, const rf_question& question) {
    const std::string_view topic = view_of(question.topic);
    if (topic == "preheat")
        return answer_preheat(sink, read_question(question));
    if (topic == "advice")
        return answer_advice(sink, read_question(question));
    return RF_UNSUPPORTED;
}

} // namespace
} // namespace ringfill::steel

extern "C" rf_status steel_answer(const rf_sink* sink, const rf_question* question) noexcept {
    using namespace ringfill::steel;
    try {
        return answer(*sink, *question);
    } catch (const Refusal& refusal) {
        say_fault(*sink, refusal.where(), refusal.what());
    } catch (const std::exception& error) {
        say_fault(*sink, "", error.what());
    } catch (...) {
        say_fault(*sink, "", "the rules of steel failed for an unknown reason");
    }
    return RF_REFUSED;
}
