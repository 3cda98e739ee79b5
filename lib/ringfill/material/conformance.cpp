#include <ringfill/material/conformance.hpp>

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <string_view>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/guard.hpp>
#include <ringfill/material/image.hpp>
#include <ringfill/material/trial.hpp>

namespace ringfill {
namespace {

/// A plugin on trial: what has been learnt of it so far.
struct Trial {
    Plugin plugin;
    Family family;
    std::vector<Question> middles;            ///< one on each pair of metals
    std::chrono::duration<double> longest{0}; ///< that it took for one answer
    std::string longest_on = {};              ///< the metals of that question
};

/// For one answer: a plan asks some dozens of times. Common practice, no source.
constexpr std::chrono::seconds patience{2};

/// The rules as they are tried, each told as it begins and ends.
struct Rules {
    const ConformanceWatch& watch;
    std::vector<RuleKept> all = {};

    /// Tries one rule: `attempt` returns how it was broken, or nothing. A refusal of the plugin breaks it
    /// too.
    bool keeps(const std::string& rule, const std::function<std::string()>& attempt) {
        watch.begins(rule);
        RuleKept told{rule, {}};
        try {
            told.broken = attempt();
        } catch (const Faulty& faulty) {
            Fault fault = faulty.faults().front(); // as one line; the plugin's own file is known
            fault.excerpt.clear();
            if (fault.place.line == 0)
                fault.place = {};
            told.broken = to_string(fault);
        }
        watch.ends(told);
        all.push_back(told);
        return told.broken.empty();
    }
};

std::string broken_exports(const std::string& file) {
    std::vector<std::string> names = exported_names(file);
    std::erase(names, RF_SYMBOL);
    return names.empty() ? std::string() : fmt::format("exports {} too", printable(listed(names, ", ")));
}

/// What would run when the program ends: exit handlers, and destructors of static objects, which are handed
/// to the system by the same function.
std::string broken_end(const std::string& file) {
    constexpr std::string_view registering[] = {"__cxa_at_quick_exit", "__cxa_atexit", "atexit", "on_exit"};
    for (const std::string& name : imported_names(file))
        if (ranges::contains(registering, name))
            return "registers a function that runs then, with atexit or as the destructor of a static object";
    return {};
}

/// The pair of metals in words: "steel/C45 with steel/ER70S-6".
std::string metals_of(const Trial& trial, const Question& question) {
    return fmt::format("{}/{} with {}", trial.family.name, question.grade, question.filler);
}

FamilyAnswer answer_to(Trial& trial, const Question& question) {
    using Clock = std::chrono::steady_clock;
    const auto begin = Clock::now();
    FamilyAnswer answer = ask(trial.plugin, question, trial.family.sources);
    if (const auto took = Clock::now() - begin; took > trial.longest) {
        trial.longest = took;
        trial.longest_on = metals_of(trial, question);
    }
    return answer;
}

std::string broken_patience(const Trial& trial) {
    return trial.longest <= patience
               ? std::string()
               : fmt::format("took {:.1f} s on {}", trial.longest.count(), trial.longest_on);
}

/// All answers on a pair of metals, in the order of the questions, whichever is asked first.
std::vector<FamilyAnswer> answers_on(Trial& trial, const Question& middle, bool backwards = false) {
    const std::vector<Question> questions = all_questions(middle);
    std::vector<FamilyAnswer> answers(questions.size());
    for (std::size_t k = 0; k < questions.size(); ++k) {
        const std::size_t i = backwards ? questions.size() - 1 - k : k;
        answers[i] = answer_to(trial, questions[i]);
    }
    return answers;
}

/// Answers to the bit, as one number: a plugin may give many.
std::size_t print_of(const std::vector<FamilyAnswer>& answers) {
    std::string text;
    for (const FamilyAnswer& answer : answers)
        text += to_the_bit(answer);
    return std::hash<std::string>{}(text);
}

/// Asks all again and compares; how the first difference shows, or nothing.
std::string broken_repetition(Trial& trial, const std::vector<std::size_t>& first, bool backwards) {
    for (std::size_t k = 0; k < first.size(); ++k) {
        const std::size_t i = backwards ? first.size() - 1 - k : k;
        if (print_of(answers_on(trial, trial.middles[i], backwards)) != first[i])
            return fmt::format("the answer on {} was another one", metals_of(trial, trial.middles[i]));
    }
    return {};
}

/// Numbers may come in any order, and with them numbers that a plugin does not know.
std::string broken_by_names(Trial& trial) {
    for (const Question& middle : trial.middles) {
        Question question = middle;
        std::reverse(question.numbers.begin(), question.numbers.end());
        question.numbers.insert(question.numbers.begin(), {"magnetic_field_T", 0.5});
        if (to_the_bit(answer_to(trial, middle)) != to_the_bit(answer_to(trial, question)))
            return fmt::format(
                "the answer on {} changed with the order of the numbers or with one it cannot know",
                metals_of(trial, middle));
    }
    return {};
}

std::string broken_by_other_topic(Trial& trial) {
    for (Question question : trial.middles) {
        question.topic = "a topic of later days";
        if (answer_to(trial, question).supported)
            return fmt::format("it answered one on {}", metals_of(trial, question));
    }
    return {};
}

void try_answers(Rules& rules, Trial& trial) {
    std::vector<std::size_t> first;
    Lowered lowered;
    if (!rules.keeps("answers every question on the metals of its table", [&] {
            for (const Question& middle : trial.middles) {
                const std::vector<FamilyAnswer> all = answers_on(trial, middle);
                first.push_back(print_of(all));
                look_for_lowered(all, metals_of(trial, middle), lowered);
            }
            return std::string();
        }))
        return;
    rules.keeps("gives the same answer to the same question",
                [&] { return broken_repetition(trial, first, false); });
    rules.keeps("gives the same answers when asked in reverse order",
                [&] { return broken_repetition(trial, first, true); });
    rules.keeps("goes by the names of numbers and skips those it does not know",
                [&] { return broken_by_names(trial); });
    rules.keeps("calls a topic it does not know unsupported", [&] { return broken_by_other_topic(trial); });
    rules.keeps("asks no less of a thicker wall", [&] { return lowered.by_wall; });
    rules.keeps("asks no less for more hydrogen", [&] { return lowered.by_hydrogen; });
    rules.keeps(fmt::format("answers each question within {} seconds", patience.count()),
                [&] { return broken_patience(trial); });
}

} // namespace

std::vector<RuleKept> conformance(const std::string& path, const Bibliography& sources,
                                  const ConformanceWatch& watch) {
    Rules rules{watch};
    const Surroundings before = surroundings();
    Trial trial;
    if (!rules.keeps("loads", [&] {
            trial.plugin = load_plugin(path);
            return std::string();
        }))
        return rules.all;
    rules.keeps("exports " RF_SYMBOL " only", [&] { return broken_exports(trial.plugin.file); });
    rules.keeps("leaves nothing to run at the end of the program",
                [&] { return broken_end(trial.plugin.file); });
    const bool reads = rules.keeps("brings a table that can be read", [&] {
        trial.family = read_family(trial.plugin.family,
                                   {parse("its table", trial.plugin.table, Origin::table)}, sources);
        return std::string();
    });
    trial.middles = middle_questions(trial.family);
    if (reads && trial.plugin.answer)
        try_answers(rules, trial);
    const Surroundings after = surroundings();
    for (std::size_t i = 0; i < before.size(); ++i)
        rules.keeps(fmt::format("leaves {} alone", before[i].first), [&] {
            return before[i].second == after[i].second
                       ? std::string()
                       : fmt::format("was {} and became {}", printable(before[i].second, 300),
                                     printable(after[i].second, 300));
        });
    return rules.all;
}

} // namespace ringfill
