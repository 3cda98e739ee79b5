#include <ringfill/table/cautions.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/braces.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr std::string_view matters[] = {"life",     "fire",    "burns_poison",
                                        "cracking", "quality", "schedule"}; // as Matter

constexpr Span any_figure{-1'000, 1e8};
constexpr Span watch_minutes{0, 10'080, true}; // a week

constexpr auto trigger_record =
    table_record<Trigger>("a circumstance", field<&Trigger::from>("from", any_figure, R"([160, "key"])"),
                          field<&Trigger::under>("under", any_figure, R"([250, "key"])"));

/// Whether some figure can lie within the limits, and some outside them.
void check_limits(const Trigger& trigger, const Circumstance& word, const Entry& entry) {
    if (!word.is_figure()) {
        if (trigger.from || trigger.under)
            entry.refuse("is so or not and has no limits", "leave them out");
        return;
    }
    if (!trigger.from && !trigger.under)
        return entry.refuse("has no limit, so it would always apply", "write \"from\" or \"under\"");
    const double low = trigger.from ? trigger.from->value : word.low;
    const double high = trigger.under ? trigger.under->value : word.high;
    if (low >= high || high <= word.low || low > word.high)
        entry.refuse("can never apply", fmt::format("let \"from\" be less than \"under\", within {} to {}",
                                                    word.low, word.high));
    else if (low <= word.low && (!trigger.under || high > word.high))
        entry.refuse("would always apply", fmt::format("set a limit within {} to {}", word.low, word.high));
}

void read_triggers(CautionRow& row, const Entry& caution, const Field& field) {
    const auto found = caution.objects(field);
    for (const Entry& entry : found) {
        const Circumstance* word = find_circumstance(entry.name());
        if (!word) {
            entry.refuse("is no circumstance that ringfill knows",
                         suggest(entry.name(), circumstances | ranges::views::transform(&Circumstance::name) |
                                                   ranges::to<std::vector<std::string>>()));
            continue;
        }
        Trigger trigger = read_record<Trigger>(entry);
        trigger.circumstance = word;
        check_limits(trigger, *word, entry);
        if (word == circumstance("always") && found.size() > 1)
            entry.refuse("makes the others beside it idle", "leave one of them");
        row.triggers.push_back(std::move(trigger));
    }
    if (const Value* value = caution.find(field); found.empty() && value && value->object())
        caution.refuse("if", "names nothing, so the caution can never apply",
                       "name a circumstance, or \"always\"");
}

constexpr auto limit_record = table_record<ExposureLimit>(
    "an exposure limit", must<&ExposureLimit::agency>("agency", table_words, R"("OSHA")"),
    must<&ExposureLimit::year>("year", table_words, R"("2006")"),
    must<&ExposureLimit::mg_m3>("mg_m3", Span{0, 1'000, true}, R"([0.005, "key"])"),
    must<&ExposureLimit::as>("as", table_words, R"("mean of 8 h")"));

void check_caution(CautionRow& row, const Entry& entry) {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch})
        row.told[units] = with_measures(row.text, units);
    if (const auto wrong = wrong_brace(row.text))
        entry.refuse("text", fmt::format("has \"{}\" in braces, which is no measure or known word", *wrong),
                     "write a measure such as {35 ft}, {clear} or {watch}");
    const bool may_be_unknown =
        std::any_of(row.triggers.begin(), row.triggers.end(),
                    [](const Trigger& trigger) { return !trigger.circumstance->field.empty(); });
    if (may_be_unknown && row.check.empty())
        entry.refuse("check", "is missing, yet a job may not say whether the caution applies",
                     "write in a few words what to look for");
}

constexpr auto caution_record = table_record<CautionRow, check_caution>(
    "a caution", must<&CautionRow::when>("when", enum_words<When>, R"("before")"),
    field<&CautionRow::matter>("matter", matters, R"("life")"),
    must<&read_triggers>("if", trigger_record, R"({ "wet": {} })").holds(Kind::object, Shape::named),
    field<&CautionRow::check>("check", table_words, R"("rain or wet metal")"),
    must<&CautionRow::text>("text", table_words, R"("Keep the rain off.")"),
    field<&CautionRow::limits>("limits", list_of(limit_record, 1, 20)),
    source_field<&CautionRow::source>("source", R"("practice")").required(),
    source_field<&CautionRow::second_source>("second_source"));

void check_rule(FireRule& rule, const Entry& entry) {
    if (rule.checks_for.has_value() != rule.checks_every.has_value())
        entry.refuse("has one of checks_for_min and checks_every_min", "write both or none");
    if (rule.name == longest_fire_rule)
        entry.refuse("is the word for the longest of all", "name the document it comes from");
}

constexpr auto rule_record = table_record<FireRule, check_rule>(
    "a rule of the fire watch", must<&FireRule::after>("after_min", watch_minutes, R"([60, "key"])"),
    must<&FireRule::clear>("clear_m", Span{0, 1'000, true}, R"([10, "key"])"),
    field<&FireRule::checks_for>("checks_for_min", watch_minutes, R"([60, "key"])"),
    field<&FireRule::checks_every>("checks_every_min", watch_minutes, R"([20, "key"])"));

bool is_for_every_job(const CautionRow& row) {
    return !row.triggers.empty() && row.triggers.front().circumstance == circumstance("always");
}

/// What guards every job stays for every job.
void read_cautions_of(CautionTable& table, const Entry& file, const Field& field) {
    for (const Entry& entry : file.objects(field)) {
        auto row = read_record<CautionRow>(entry);
        if (const auto known = ranges::find(table.rows, row.name, &CautionRow::name);
            known != table.rows.end() && is_for_every_job(*known) && !is_for_every_job(row))
            entry.refuse("if", "takes a caution away that is for every job",
                         "leave it \"always\", or write a caution of your own name");
        put_row(table.rows, std::move(row));
    }
}

/// A document asks for what it asks: a shorter rule needs a name of its own.
void read_rules_of(CautionTable& table, const Entry& file, const Field& field) {
    const auto is_longer = [](const std::optional<Sourced<Time>>& one,
                              const std::optional<Sourced<Time>>& than) {
        return one && (!than || one->value > than->value);
    };
    for (const Entry& entry : file.objects(field)) {
        auto rule = read_record<FireRule>(entry);
        const auto known = ranges::find(table.fire_rules, rule.name, &FireRule::name);
        if (known != table.fire_rules.end() &&
            (known->after.value > rule.after.value || known->clear.value > rule.clear.value ||
             is_longer(known->checks_for, rule.checks_for) ||
             is_longer(rule.checks_every, known->checks_every)))
            entry.refuse("asks for less than the document of that name", "give your rule a name of its own");
        put_row(table.fire_rules, std::move(rule));
    }
}

void check_table(const CautionTable& table, const Entry& last) {
    if (table.fire_rules.empty())
        last.refuse(last.value(), "fire_rules", "is missing: no rule of the fire watch is known",
                    "write one with its source");
}

} // namespace

CautionTable read_cautions(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<CautionTable, R"("ringfill-cautions/1")", nullptr, check_table>(
        files, sources, "the table of cautions",
        field<&read_rules_of>("fire_rules", rule_record, "{ ... }").holds(Kind::object, Shape::named),
        field<&read_cautions_of>("cautions", caution_record, "{ ... }").holds(Kind::object, Shape::named));
}

} // namespace ringfill
