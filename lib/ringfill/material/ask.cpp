#include <ringfill/material/answer.hpp>

#include <cmath>
#include <exception>
#include <optional>
#include <stdexcept>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/answer_check.hpp>
#include <ringfill/material/plugin_run.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_of_a_kind = 64; ///< methods, or advices

/// What a plugin says during one call: each thing checked and copied.
struct Said {
    const Bibliography& sources;
    FamilyAnswer answer = {};
    std::optional<std::string> fault = {};
    std::exception_ptr broken = {}; ///< the first breach, or no room to keep what is said
};

template <class Thing>
void keep(std::vector<Thing>& all, Thing one, std::string_view kind) {
    if constexpr (requires { one.name; }) {
        const bool twin = ranges::contains(all, one.name, &Thing::name);
        refuse_if(twin, "give each once", "gave the {} {} twice", kind, Quoted{one.name});
    }
    refuse_if(all.size() == most_of_a_kind, "give fewer", "gave more than {} {}s", most_of_a_kind, kind);
    all.push_back(std::move(one));
}

void take_value(Said& said, const rf_figure* figure) {
    keep(said.answer.values, checked_value(figure, said.sources), "value");
}

void take_method(Said& said, const rf_figure* figure) {
    keep(said.answer.methods, checked_method(figure, said.sources), "method");
}

void take_advice(Said& said, rf_text kind, rf_text text, rf_text source) {
    keep(said.answer.advice, checked_advice(kind, text, source, said.sources), "advice");
}

void take_fault(Said& said, rf_text where, rf_text what) {
    const std::string place = checked_text(where, "the place of a fault");
    const std::string reason = checked_name(what, "the text of a fault");
    if (!said.fault)
        said.fault = place.empty() ? reason : fmt::format("{}: {}", place, reason);
}

/// Takes one thing; nothing is thrown into the plugin.
template <auto Take, class... Parts>
void safely(void* context, Parts... parts) noexcept {
    if (!context)
        return; // nowhere to keep it; what was said is missing then, and a missing answer is a breach
    auto& said = *static_cast<Said*>(context);
    try {
        if (!said.broken)
            Take(said, parts...);
    } catch (...) {
        said.broken = std::current_exception();
    }
}

/// Calls the plugin; throws Breach for what it says, throws or leaves changed.
rf_status call(const Plugin& plugin, const rf_question& question, Said& said) {
    const rf_sink sink = {.size = sizeof sink,
                          .reserved = 0,
                          .context = &said,
                          .value = safely<take_value>,
                          .method = safely<take_method>,
                          .advice = safely<take_advice>,
                          .fault = safely<take_fault>};
    rf_status status = RF_REFUSED;
    std::optional<std::string> thrown; // as text: nothing of the plugin's is kept
    PluginRun run(plugin.file);
    try {
        status = plugin.answer(&sink, &question);
    } catch (const std::exception& error) {
        thrown = printable(error.what());
    } catch (...) {
        thrown = "something that is no std::exception";
    }
    const LeftChanged left = run.end();
    if (said.broken)
        std::rethrow_exception(said.broken);
    if (thrown)
        throw Breach{"threw across the interface", "catch it in the plugin and give it to the sink's fault",
                     *thrown};
    refuse_if(left.arithmetic, "leave rounding, traps and small numbers as they are",
              "changed the floating-point mode");
    refuse_if(!left.stream.empty(), "leave the files of the program alone", "closed or replaced {}",
              left.stream);
    return status;
}

/// Throws Breach unless the status goes with what was said, and for a refusal.
void check_status(rf_status status, const Said& said, std::string_view topic) {
    const FamilyAnswer& answer = said.answer;
    const bool is_empty = answer.values.empty() && answer.methods.empty() && answer.advice.empty();
    refuse_if(status != RF_DONE && status != RF_REFUSED && status != RF_UNSUPPORTED,
              "return RF_DONE, RF_REFUSED or RF_UNSUPPORTED", "returned the status {}, which there is not",
              status);
    refuse_if(status == RF_REFUSED && !said.fault, "give the reason to the sink's fault",
              "refused without saying why");
    refuse_if(status != RF_REFUSED && said.fault, "return RF_REFUSED with it",
              "gave the fault {} and did not refuse", in_quotes(said.fault.value_or("")));
    refuse_if(status == RF_UNSUPPORTED && !is_empty, "return RF_DONE with an answer",
              "gave an answer and called the question unsupported");
    refuse_if(status == RF_DONE && topic == "preheat" && answer.methods.empty(),
              "give a method, flagged RF_NOT_USABLE with the reason if there is no figure",
              "answered without any method");
    if (status == RF_REFUSED)
        throw Breach{"cannot answer", {}, *said.fault};
}

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

} // namespace

FamilyAnswer ask(const Plugin& plugin, const Question& question, const Bibliography& sources) {
    if (!plugin.answer)
        return {};
    const std::vector<rf_number> numbers = as_numbers(question);
    const rf_question asked = {.size = sizeof asked,
                               .reserved = 0,
                               .topic = as_text(question.topic),
                               .grade = as_text(question.grade),
                               .filler = as_text(question.filler),
                               .numbers = numbers.data(),
                               .number_count = numbers.size()};
    Said said{sources};
    try {
        const rf_status status = call(plugin, asked, said);
        check_status(status, said, question.topic);
        said.answer.supported = status == RF_DONE;
    } catch (const Breach& breach) {
        const std::string reason =
            fmt::format("{} ({} of {}/{}){}{}", breach.what, question.topic, plugin.family, question.grade,
                        breach.words.empty() ? "" : ": ", breach.words);
        throw Faulty(Origin::table, fault_in_file(plugin.file, reason, breach.remedy));
    }
    return std::move(said.answer);
}

} // namespace ringfill
