#include <ringfill/table/cautions.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/document/described.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/braces.hpp>
#include <ringfill/table/describe_cautions.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

std::vector<std::string> circumstance_names() {
    return circumstance_words() |
           ranges::views::transform([](const CircumstanceWord& word) { return std::string(word.name); }) |
           ranges::to<std::vector>();
}

/// Whether some figure can lie within the limits, and some outside them.
void check_limits(const Trigger& trigger, const CircumstanceWord& word, const Entry& entry) {
    const auto refuse = [&](const char* reason, std::string remedy) {
        entry.refuse(entry.value(), entry.path(), reason, std::move(remedy));
    };
    if (!word.is_figure) {
        if (trigger.from || trigger.under)
            refuse("is so or not and has no limits", "leave them out");
        return;
    }
    if (!trigger.from && !trigger.under)
        return refuse("has no limit, so it would always apply", "write \"from\" or \"under\"");
    const double low = trigger.from ? trigger.from->value : word.low;
    const double high = trigger.under ? trigger.under->value : word.high;
    if (low >= high || high <= word.low || low > word.high)
        refuse("can never apply",
               fmt::format("let \"from\" be less than \"under\", within {} to {}", word.low, word.high));
    else if (low <= word.low && (!trigger.under || high > word.high))
        refuse("would always apply", fmt::format("set a limit within {} to {}", word.low, word.high));
}

std::vector<Trigger> read_triggers(const Entry& row, const Bibliography& sources) {
    std::vector<Trigger> triggers;
    const auto found = row.named_objects("if");
    for (const auto& [name, entry] : found) {
        const CircumstanceWord* word = find_circumstance(name);
        if (!word) {
            entry.refuse(entry.value(), entry.path(), "is no circumstance that ringfill knows",
                         suggest(name, circumstance_names()));
            continue;
        }
        const SourcedReader reader(entry, sources);
        Trigger trigger{word->id, reader.number("from"), reader.number("under")};
        check_limits(trigger, *word, entry);
        if (word->id == Circumstance::always && found.size() > 1)
            entry.refuse(entry.value(), entry.path(), "makes the others beside it idle", "leave one of them");
        triggers.push_back(std::move(trigger));
    }
    if (found.empty() && row.find("if") && row.find("if")->object())
        row.refuse("if", "names nothing, so the caution can never apply",
                   "name a circumstance, or \"always\"");
    return triggers;
}

std::vector<ExposureLimit> read_limits(const Entry& row, const Bibliography& sources) {
    std::vector<ExposureLimit> limits;
    for (const Entry& entry : row.objects("limits"))
        limits.push_back({entry.text("agency").value_or(""), entry.text("year").value_or(""),
                          SourcedReader(entry, sources).number("mg_m3").value_or(Sourced<double>{}),
                          entry.text("as").value_or("")});
    return limits;
}

CautionRow read_row(const std::string& name, const Entry& entry, const Bibliography& sources) {
    CautionRow row;
    row.name = name;
    row.when = entry.word("when").value_or("");
    row.triggers = read_triggers(entry, sources);
    row.check = entry.text("check").value_or("");
    row.text = entry.text("text").value_or("");
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch})
        row.told[units] = with_measures(row.text, units);
    row.limits = read_limits(entry, sources);
    row.source = SourcedReader(entry, sources).source_key("source");
    row.second_source = SourcedReader(entry, sources).source_key("second_source");
    if (const auto wrong = wrong_brace(row.text))
        entry.refuse("text", fmt::format("has \"{}\" in braces, which is no measure or known word", *wrong),
                     "write a measure such as {35 ft}, {clear} or {watch}");
    const bool may_be_unknown =
        std::any_of(row.triggers.begin(), row.triggers.end(),
                    [](const Trigger& trigger) { return !word_of(trigger.circumstance).field.empty(); });
    if (may_be_unknown && row.check.empty())
        entry.refuse("check", "is missing, yet a job may not say whether the caution applies",
                     "write in a few words what to look for");
    return row;
}

FireRule read_rule(const std::string& name, const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    FireRule rule{name, reader.quantity<Time>("after_min", factor::minute).value_or(Sourced<Time>{}),
                  reader.quantity<Length>("clear_m", 1).value_or(Sourced<Length>{}),
                  reader.quantity<Time>("checks_for_min", factor::minute),
                  reader.quantity<Time>("checks_every_min", factor::minute)};
    if (rule.checks_for.has_value() != rule.checks_every.has_value())
        entry.refuse(entry.value(), entry.path(), "has one of checks_for_min and checks_every_min",
                     "write both or none");
    if (name == longest_fire_rule)
        entry.refuse(entry.value(), entry.path(), "is the word for the longest of all",
                     "name the document it comes from");
    return rule;
}

bool is_for_every_job(const CautionRow& row) {
    return !row.triggers.empty() && row.triggers.front().circumstance == Circumstance::always;
}

/// What a later file puts in the place of a row is told; what guards every job stays for every job.
void put_caution(CautionTable& table, CautionRow row, const Entry& entry, const std::string& file) {
    for (const CautionRow& known : table.rows)
        if (known.name == row.name) {
            if (is_for_every_job(known) && !is_for_every_job(row))
                entry.refuse("if", "takes a caution away that is for every job",
                             "leave it \"always\", or write a caution of your own name");
            table.replaced.push_back({row.name, file});
        }
    put_row(table.rows, std::move(row));
}

/// A document asks for what it asks: a shorter rule needs a name of its own.
void put_rule(CautionTable& table, FireRule rule, const Entry& entry) {
    const auto longer = [](const std::optional<Sourced<Time>>& one,
                           const std::optional<Sourced<Time>>& than) {
        return one && (!than || one->value > than->value);
    };
    for (const FireRule& known : table.fire_rules)
        if (known.name == rule.name &&
            (known.after.value > rule.after.value || known.clear.value > rule.clear.value ||
             longer(known.checks_for, rule.checks_for) || longer(rule.checks_every, known.checks_every)))
            entry.refuse(entry.value(), entry.path(), "asks for less than the document of that name",
                         "give your rule a name of its own");
    put_row(table.fire_rules, std::move(rule));
}

} // namespace

CautionTable read_cautions(const std::vector<Document>& files, const Bibliography& sources) {
    CautionTable table{{}, {}, {}, sources};
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, cautions_record, "");
        if (has_signature(entry)) {
            add_sources(table.sources, entry);
            for (const auto& [name, row] : entry.named_objects("fire_rules"))
                put_rule(table, read_rule(name, row, table.sources), row);
            for (const auto& [name, row] : entry.named_objects("cautions"))
                put_caution(table, read_row(name, row, table.sources), row, file.file);
            if (&file == &files.back() && table.fire_rules.empty() && reading.faults.empty())
                entry.refuse(entry.value(), "fire_rules", "is missing: no rule of the fire watch is known",
                             "write one with its source");
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    return table;
}

} // namespace ringfill
