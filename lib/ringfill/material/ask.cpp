#include <ringfill/material/answer.hpp>

#include <cmath>
#include <mutex>
#include <stdexcept>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/answer_sink.hpp>
#include <ringfill/material/guard.hpp>

namespace ringfill {
namespace {

rf_text as_text(const std::string& text) {
    return {text.data(), text.size()};
}

std::vector<rf_number> as_numbers(const Question& question) {
    std::vector<rf_number> numbers;
    for (const auto& [name, value] : question.numbers) {
        if (!std::isfinite(value))
            throw std::logic_error(fmt::format("a family is asked with {} as {}", name, value));
        numbers.push_back({as_text(name), value});
    }
    return numbers;
}

/// "preheat of steel/C45".
std::string about(const Plugin& plugin, const Question& question) {
    return fmt::format("{} of {}/{}", question.topic, plugin.family, question.grade);
}

[[noreturn]] void refuse(const Plugin& plugin, std::string reason, std::string remedy) {
    throw Faulty(Origin::table, fault_in_file(plugin.file, std::move(reason), std::move(remedy)));
}

[[noreturn]] void refuse_breach(const Plugin& plugin, const Question& question, const Breach& breach) {
    refuse(plugin, fmt::format("{} ({})", breach.what, about(plugin, question)), breach.remedy);
}

/// What a plugin threw, as text: nothing of the plugin's is kept.
struct Thrown {
    std::string words;
};

/// The interface promises that no two calls of `answer` run at once, however many threads plan.
std::mutex& turn_of_plugins() {
    static std::mutex turn;
    return turn;
}

/// Calls the plugin, and keeps what it throws and how it leaves the arithmetic.
rf_status call(const Plugin& plugin, const rf_sink& sink, const rf_question& question,
               std::optional<Thrown>& thrown, bool& arithmetic_changed) {
    rf_status status = RF_REFUSED;
    const std::lock_guard turn(turn_of_plugins());
    ArithmeticGuard guard;
    try {
        status = plugin.answer(&sink, &question);
    } catch (const std::exception& error) {
        arithmetic_changed = guard.put_back();
        thrown = Thrown{printable(error.what())};
    } catch (...) {
        arithmetic_changed = guard.put_back();
        thrown = Thrown{"something that is no std::exception"};
    }
    arithmetic_changed = guard.put_back() || arithmetic_changed;
    return status;
}

} // namespace

FamilyAnswer ask(const Plugin& plugin, const Question& question, const Bibliography& sources) {
    if (!plugin.answer)
        return {};
    const std::vector<rf_number> numbers = as_numbers(question);
    rf_question asked = {};
    asked.size = sizeof asked;
    asked.topic = as_text(question.topic);
    asked.grade = as_text(question.grade);
    asked.filler = as_text(question.filler);
    asked.numbers = numbers.data();
    asked.number_count = numbers.size();

    AnswerSink collected(sources);
    const rf_sink sink = collected.interface();
    std::optional<Thrown> thrown;
    bool arithmetic_changed = false;
    const rf_status status = call(plugin, sink, asked, thrown, arithmetic_changed);
    if (collected.breach())
        refuse_breach(plugin, question, *collected.breach());
    if (thrown)
        refuse(plugin,
               fmt::format("threw across the interface ({}): {}", about(plugin, question), thrown->words),
               "catch it in the plugin and give it to the sink's fault");
    if (arithmetic_changed)
        refuse_breach(
            plugin, question,
            {"changed the floating-point mode", "leave rounding, traps and small numbers as they are"});
    AnswerSink::Outcome outcome = collected.outcome(status, question.topic);
    if (outcome.breach)
        refuse_breach(plugin, question, *outcome.breach);
    if (outcome.refusal)
        refuse(plugin, fmt::format("cannot answer ({}): {}", about(plugin, question), *outcome.refusal), {});
    return std::move(outcome.answer);
}

} // namespace ringfill
