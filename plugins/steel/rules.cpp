#include "rules.hpp"

#include "advice.hpp"
#include "carbon_equivalent.hpp"
#include "hydrogen_annex.hpp"
#include "method_b.hpp"
#include "question.hpp"
#include "seferian.hpp"
#include "table_c1.hpp"

namespace ringfill::steel {
namespace {

rf_status answer_preheat(const family::Sink& sink, const Asked& asked) {
    if (why_not_usable(asked.base).empty())
        for (const Figure& value : carbon_equivalents(asked))
            sink.value(value);
    sink.method(method_b(asked));
    sink.method(table_c1(asked));
    sink.method(hydrogen_annex(asked));
    sink.method(seferian(asked));
    return RF_DONE;
}

rf_status answer_advice(const family::Sink& sink, const Asked& asked) {
    if (!why_no_ferritic_steel(asked.base).empty())
        return RF_UNSUPPORTED;
    const Advised told = advice(asked);
    for (const Figure& value : told.values)
        sink.value(value);
    for (const Advice& advice : told.advice)
        sink.advice(advice.kind, advice.text, advice.source);
    return RF_DONE;
}

rf_status answer(const family::Sink& sink, const rf_question& question) {
    constexpr double ferritic_metal = 1;
    if (family::number_of(question, "structure").value_or(ferritic_metal) != ferritic_metal)
        return RF_UNSUPPORTED; // no carbon equivalent says anything of another structure
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
    return ringfill::family::guarded(sink, question, ringfill::steel::answer);
}
