#include <ringfill/caution/table_cautions.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/caution/judged.hpp>
#include <ringfill/table/braces.hpp>

namespace ringfill {
namespace {

/// "60 min after the last heat (preheat, arc, grinding and hold all count), then a look every 20 min …"
std::string watched_until(const FireWatch& watch) {
    std::string text = fmt::format("{} after the last heat: preheat, arc, grinding and post-heat all count",
                                   show(watch.after.value));
    if (watch.checks_for)
        text += fmt::format("; then a look at least every {} for {} more", show(watch.checks_every->value),
                            show(watch.checks_for->value));
    return text;
}

/// A job that names a shorter rule set than the longest known is told so.
std::string rule_of(const FireWatch& watch) {
    const std::string sets = fmt::format("{}", fmt::join(watch.rules, ", "));
    if (watch.longest)
        return fmt::format("the longest of the rule sets known: {}", sets);
    if (watch.after.value < watch.longest_known)
        return fmt::format("the job asks for {}; others ask for {}", sets, show(watch.longest_known));
    return fmt::format("the job asks for {}", sets);
}

std::string limits_of(const CautionRow& row) {
    std::string text;
    for (const ExposureLimit& limit : row.limits)
        text += fmt::format("{}{:g} mg/m³ {} ({} {})", text.empty() ? " Limits: " : "; ", limit.mg_m3.value,
                            limit.as, limit.agency, limit.year);
    return text.empty() ? text : text + ". Check the current values.";
}

std::string text_of(const CautionRow& row, const WorkFacts& facts, const FireWatch& watch) {
    return filled_in(row.text, facts.units,
                     [&](std::string_view word) {
                         return word == "clear" ? show_clear(watch.clear.value, facts.units)
                                                : watched_until(watch);
                     }) +
           limits_of(row);
}

/// What makes a row apply, or leaves it open: the first trigger of its strongest answer.
struct RowAnswer {
    Judged judged;
    const Trigger* trigger = nullptr;
};

RowAnswer answer_of(const CautionRow& row, const WorkFacts& facts) {
    RowAnswer strongest;
    for (const Trigger& trigger : row.triggers) {
        Judged one = judged(trigger, facts);
        if (!strongest.trigger || one.answer > strongest.judged.answer)
            strongest = {std::move(one), &trigger};
    }
    return strongest;
}

} // namespace

std::vector<Caution> table_cautions(const CautionTable& table, const WorkFacts& facts,
                                    const FireWatch& watch) {
    std::vector<Caution> cautions;
    for (const CautionRow& row : table.rows) {
        const RowAnswer answer = answer_of(row, facts);
        if (answer.judged.answer == Answer::no)
            continue;
        const bool applies = answer.judged.answer == Answer::yes;
        const bool tells_watch = row.text.find("{watch}") != std::string::npos;
        Caution caution;
        caution.about = answer.judged.about.empty() ? std::string("the job")
                                                    : fmt::format("{}", fmt::join(answer.judged.about, ", "));
        caution.when = row.when;
        caution.applies = applies ? "yes" : "unknown";
        caution.text = text_of(row, facts, watch);
        caution.because = tells_watch ? rule_of(watch) : answer.judged.because;
        caution.source = tells_watch ? watch.after.source : row.source;
        if (!applies) {
            caution.check = row.check;
            caution.field = std::string(word_of(answer.trigger->circumstance).field);
        }
        for (const ExposureLimit& limit : row.limits)
            caution.more_sources.push_back(limit.mg_m3.source);
        if (tells_watch) {
            caution.more_sources.push_back(row.source);
            if (watch.checks_for)
                caution.more_sources.push_back(watch.checks_for->source);
        }
        cautions.push_back(std::move(caution));
    }
    return cautions;
}

} // namespace ringfill
