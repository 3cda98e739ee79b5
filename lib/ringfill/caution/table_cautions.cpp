#include <ringfill/caution/table_cautions.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/max.hpp>

#include <ringfill/table/braces.hpp>

namespace ringfill {
namespace {

/// "60 min after the last heat (preheat, arc, grinding and hold all count), then a look every 20 min …"
std::string watched_until(const WatchRule& watch) {
    std::string text = fmt::format("{} after the last heat: preheat, arc, grinding and post-heat all count",
                                   show(watch.after.value));
    if (watch.checks_for)
        text += fmt::format("; then a look at least every {} for {} more", show(watch.checks_every->value),
                            show(watch.checks_for->value));
    return text;
}

std::string limits_of(const CautionRow& row) {
    std::string text;
    for (const ExposureLimit& limit : row.limits)
        text += fmt::format("{}{:g} mg/m³ {} ({} {})", text.empty() ? " Limits: " : "; ", limit.mg_m3.value,
                            limit.as, limit.agency, limit.year);
    return text.empty() ? text : text + ". Check the current values.";
}

std::string text_of(const CautionRow& row, const WorkFacts& facts, const WatchRule& watch) {
    return with_words(row.told.at(facts.units),
                      [&](std::string_view word) {
                          return word == "clear" ? show_clear(watch.clear.value, facts.units)
                                                 : watched_until(watch);
                      }) +
           limits_of(row);
}

void add_new(std::vector<Subject>& subjects, const std::vector<Subject>& more) {
    for (const Subject& one : more)
        if (!ranges::contains(subjects, one))
            subjects.push_back(one);
}

/// What a row's triggers say together. A bore or procedure that one of them holds for is not open any more.
Judged answer_of(const CautionRow& row, const WorkFacts& facts) {
    std::vector<Judged> answers;
    for (const Trigger& trigger : row.triggers)
        answers.push_back(judged(trigger, facts));
    Judged all{ranges::max(answers, {}, &Judged::answer).answer};
    bool of_job = false;
    for (const Judged& one : answers) {
        if (one.answer == Answer::no)
            continue;
        if (one.answer == all.answer) {
            all.because = all.because.empty() ? one.because : all.because;
            of_job = of_job || one.about.empty();
            add_new(all.about, one.about);
        }
        add_new(all.open, one.answer == Answer::yes ? one.open : one.about);
        all.field = one.field.empty() ? all.field : one.field;
    }
    if (of_job)
        all.about.clear();
    if (all.answer != Answer::yes || of_job)
        all.open.clear();
    std::erase_if(all.open, [&](const Subject& one) { return ranges::contains(all.about, one); });
    return all;
}

Caution caution_of(const CautionRow& row, const Judged& answer, const WorkFacts& facts,
                   const WatchRule& watch) {
    Caution caution{answer.about,   row.when,  row.matter, Applies::yes, text_of(row, facts, watch),
                    answer.because, row.source};
    if (!row.second_source.empty())
        caution.more_sources.push_back(row.second_source);
    for (const ExposureLimit& limit : row.limits)
        caution.more_sources.push_back(limit.mg_m3.source);
    return caution;
}

/// The row that tells the watch says by whose rule, and that is its source.
void tell_rule(Caution& caution, const WatchRule& watch) {
    caution.because = fire_rule_in_words(watch);
    caution.more_sources.push_back(caution.source);
    caution.source = watch.after.source;
    if (watch.checks_for)
        caution.more_sources.push_back(watch.checks_for->source);
}

} // namespace

std::vector<Caution> table_cautions(const CautionTable& table, const WorkFacts& facts,
                                    const WatchRule& watch) {
    std::vector<Caution> cautions;
    for (const CautionRow& row : table.rows) {
        const Judged answer = answer_of(row, facts);
        if (answer.answer == Answer::no)
            continue;
        Caution caution = caution_of(row, answer, facts, watch);
        if (answer.answer == Answer::yes) {
            cautions.push_back(caution);
            if (row.text.find("{watch}") != std::string::npos)
                tell_rule(cautions.back(), watch);
            if (answer.open.empty())
                continue;
            caution.about = answer.open;
            caution.because = fmt::format("the job does not say: {}", answer.field);
        }
        caution.applies = Applies::unknown;
        caution.check = row.check;
        caution.field = answer.field;
        cautions.push_back(std::move(caution));
    }
    return cautions;
}

} // namespace ringfill
