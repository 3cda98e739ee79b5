#include <ringfill/material/answer_sink.hpp>

#include <algorithm>
#include <cstddef>
#include <new>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_methods = 64;
constexpr std::size_t most_advice = 64;

template <class Figure>
void refuse_twin(const std::vector<Figure>& said, const std::string& name, std::string_view kind) {
    if (std::any_of(said.begin(), said.end(), [&](const Figure& other) { return other.name == name; }))
        throw Breach{fmt::format("gave the {} {} twice", kind, in_quotes(name)), "give each once"};
}

} // namespace

template <class Take>
void AnswerSink::safely(void* context, const Take& take) noexcept {
    if (!context)
        return; // nowhere to tell it; what was said is missing then, and a missing answer is a breach
    auto& sink = *static_cast<AnswerSink*>(context);
    try {
        if (!sink.breach_ && !sink.out_of_memory_)
            take(sink);
    } catch (Breach& breach) {
        sink.breach_ = std::move(breach);
    } catch (...) { // only std::bad_alloc can come from copying
        sink.out_of_memory_ = true;
    }
}

rf_sink AnswerSink::interface() noexcept {
    rf_sink sink = {};
    sink.size = sizeof sink;
    sink.context = this;
    sink.value = [](void* context, const rf_figure* figure) noexcept {
        safely(context, [&](AnswerSink& to) { to.take_value(figure); });
    };
    sink.method = [](void* context, const rf_figure* figure) noexcept {
        safely(context, [&](AnswerSink& to) { to.take_method(figure); });
    };
    sink.advice = [](void* context, rf_text kind, rf_text text, rf_text source) noexcept {
        safely(context, [&](AnswerSink& to) { to.take_advice(kind, text, source); });
    };
    sink.fault = [](void* context, rf_text where, rf_text what) noexcept {
        safely(context, [&](AnswerSink& to) { to.take_fault(where, what); });
    };
    return sink;
}

void AnswerSink::take_value(const rf_figure* figure) {
    AnsweredFigure value = checked_value(figure, sources_);
    refuse_twin(answer_.values, value.name,
                "value"); // which bounds their number too: the names are a closed list
    answer_.values.push_back(std::move(value));
}

void AnswerSink::take_method(const rf_figure* figure) {
    AnsweredMethod method = checked_method(figure, sources_);
    refuse_twin(answer_.methods, method.name, "method");
    if (answer_.methods.size() == most_methods)
        throw Breach{fmt::format("gave more than {} methods", most_methods), "give fewer"};
    answer_.methods.push_back(std::move(method));
}

void AnswerSink::take_advice(const rf_text& kind, const rf_text& text, const rf_text& source) {
    Advice advice = checked_advice(kind, text, source, sources_);
    if (answer_.advice.size() == most_advice)
        throw Breach{fmt::format("gave more than {} advices", most_advice), "give fewer"};
    answer_.advice.push_back(std::move(advice));
}

void AnswerSink::take_fault(const rf_text& where, const rf_text& what) {
    const std::string place = checked_text(where, "the place of a fault");
    const std::string reason = checked_name(what, "the text of a fault");
    if (!fault_)
        fault_ = place.empty() ? reason : fmt::format("{}: {}", place, reason);
}

AnswerSink::Outcome AnswerSink::outcome(rf_status status, const std::string& topic) {
    if (out_of_memory_)
        throw std::bad_alloc();
    const bool said_something =
        !answer_.values.empty() || !answer_.methods.empty() || !answer_.advice.empty();
    const auto breaks = [&](std::string what, std::string remedy) {
        if (!breach_)
            breach_ = Breach{std::move(what), std::move(remedy)};
    };
    if (status != RF_DONE && status != RF_REFUSED && status != RF_UNSUPPORTED)
        breaks(fmt::format("returned the status {}, which there is not", status),
               "return RF_DONE, RF_REFUSED or RF_UNSUPPORTED");
    if (status == RF_REFUSED && !fault_)
        breaks("refused without saying why", "give the reason to the sink's fault");
    if (status != RF_REFUSED && fault_)
        breaks(fmt::format("gave the fault {} and did not refuse", in_quotes(*fault_)),
               "return RF_REFUSED with it");
    if (status == RF_UNSUPPORTED && said_something)
        breaks("gave an answer and called the question unsupported", "return RF_DONE with an answer");
    if (status == RF_DONE && topic == "preheat" && answer_.methods.empty())
        breaks("answered without any method",
               "give a method, flagged RF_NOT_USABLE with the reason if there is no figure");
    Outcome outcome;
    outcome.breach = breach_;
    if (!breach_ && status == RF_REFUSED)
        outcome.refusal = fault_;
    if (!breach_ && status == RF_DONE) {
        outcome.answer = std::move(answer_);
        outcome.answer.supported = true;
    }
    return outcome;
}

} // namespace ringfill
