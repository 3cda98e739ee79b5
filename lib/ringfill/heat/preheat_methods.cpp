#include <ringfill/heat/preheat_methods.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/identity.hpp>
#include <ringfill/material/answer.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// The methods so far, and what they leave open.
struct Gathering {
    GatheredMethods found;
    bool practice_rules = false;    ///< the grade's own row holds in every respect
    bool has_row = false;           ///< some table lists the grade
    bool wants_unknown_row = false; ///< knowledge is missing: the row for unknown metal counts too
};

PreheatMethod row_method(const PreheatGroup& group, const RowAnswer& row) {
    PreheatMethod method;
    method.name = group.name;
    method.asks = Asks::minimum;
    method.minimum = row.minimum.value;
    method.maximum = row.maximum;
    method.range_from = row.range_from;
    method.applies = true;
    method.source = row.minimum.source;
    if (row.for_the_worst)
        method.note = "the worst row that may fit, for what the job does not say";
    return method;
}

/// What a table asks for at most.
RowAnswer hottest_row(const PreheatGroup& group) {
    const auto hottest =
        std::max_element(group.rows.begin(), group.rows.end(), [](const PreheatRow& a, const PreheatRow& b) {
            return a.minimum.value < b.minimum.value;
        });
    return {hottest->minimum, hottest->maximum, false, hottest->range_from};
}

/// A list that ends with a wall says nothing of a thicker one, nor of one that is not known.
bool may_end_before(const PreheatGroup& group, const HeatCase& what) {
    return !what.wall && group.rows.back().up_to;
}

/// Why a row, which still counts, does not hold in every respect; empty when it does.
std::string why_not_whole(const PreheatGroup& group, const HeatCase& what) {
    if (what.not_the_grade)
        return fmt::format("the mill certificate is of another steel: {}", *what.not_the_grade);
    if (!holds_for_hydrogen(group, preheat_case(what).hydrogen_ml_100g))
        return fmt::format("made for hydrogen up to {:.3g} ml/100 g", group.hydrogen_up_to->value);
    return {};
}

void add_practice(Gathering& gathering, const HeatCase& what) {
    const auto& practice = what.base->practice;
    if (!practice)
        return;
    const auto row = look_up(*practice, preheat_case(what));
    PreheatMethod method = row_method(*practice, row ? *row : hottest_row(*practice));
    const bool ends = !row || may_end_before(*practice, what);
    const std::string why = ends ? "it ends before this wall, or may, so its hottest row is taken"
                                 : why_not_whole(*practice, what);
    method.in_range = why.empty();
    if (!why.empty())
        method.note = why;
    gathering.practice_rules = why.empty();
    gathering.wants_unknown_row = ends;
    gathering.has_row = !what.not_the_grade;
    gathering.found.methods.push_back(std::move(method));
}

bool is_for_filler(const PreheatGroup& group, const HeatCase& what) {
    return group.fillers.empty() || ranges::find(group.fillers, what.filler_name) != group.fillers.end();
}

/// A table made for less hydrogen, or for the grade that the certificate denies, still counts as a least
/// figure; it lists the grade no more. One for more hydrogen than there is says nothing.
void add_groups(Gathering& gathering, const HeatCase& what) {
    const auto hydrogen = preheat_case(what).hydrogen_ml_100g;
    for (const std::string& name : what.base->preheat_groups)
        for (const PreheatGroup& group : what.family->preheat_groups) {
            if (group.name != name || !is_for_filler(group, what) ||
                (group.hydrogen_over && !holds_for_hydrogen(group, hydrogen)))
                continue;
            const auto row = look_up(group, preheat_case(what));
            PreheatMethod method = row_method(group, row ? *row : hottest_row(group));
            const std::string why = row && !may_end_before(group, what)
                                        ? why_not_whole(group, what)
                                        : "it ends before this wall, or may, so its hottest row is taken";
            method.in_range = why.empty();
            if (!why.empty())
                method.note = why;
            gathering.has_row = gathering.has_row || why.empty();
            gathering.found.methods.push_back(std::move(method));
        }
}

/// Of a range that goes far over what counts, no more than that, with the whole of it told.
void keep_to_what_counts(PreheatMethod& method, const RowAnswer& row, Gathering& gathering) {
    if (!hotter_than_counts(row))
        return;
    const FillerRange range{*row.range_from, row.minimum.value, counted_of_filler(row), row.minimum.source};
    method.minimum = range.counted;
    method.formula = "max(T_low, min(T_high, T_most))";
    method.inputs = {{"T_low", deg_c(range.low), "°C"},
                     {"T_high", deg_c(range.high), "°C"},
                     {"T_most", deg_c(most_of_a_filler), "°C"}};
    method.note =
        fmt::format("of its {:.0f} to {:.0f} °C no more counts here", deg_c(range.low), deg_c(range.high));
    if (method.applies)
        gathering.found.filler_range = range;
}

/// What the filler's own metal asks for, whatever it is laid on. Metal that goes by its own practice alone is
/// spared it, and told.
void add_filler_practice(Gathering& gathering, const HeatCase& what) {
    const auto& practice = what.filler->practice;
    if (!practice)
        return;
    const auto row = look_up(*practice, preheat_case(what));
    const RowAnswer asked = row ? *row : hottest_row(*practice);
    PreheatMethod method = row_method(*practice, asked);
    method.applies = std::any_of(gathering.found.methods.begin(), gathering.found.methods.end(),
                                 [](const PreheatMethod& one) { return one.applies; });
    if (const std::string_view why = why_not_for_filler(what.base->structure); !why.empty()) {
        method.applies = false;
        method.note = why;
    } else {
        keep_to_what_counts(method, asked, gathering);
    }
    gathering.found.methods.push_back(std::move(method));
}

PreheatMethod answered(const AnsweredMethod& answer) {
    PreheatMethod method;
    method.name = answer.name;
    method.asks = answer.is(RF_NOT_USABLE)    ? Asks::unknown
                  : answer.is(RF_NONE_NEEDED) ? Asks::none
                  : answer.is(RF_NO_FIGURE)   ? Asks::unnamed
                                              : Asks::minimum;
    if (method.asks == Asks::minimum)
        method.minimum = in_si<Temperature>(answer.number);
    method.in_range = !answer.is(RF_OUT_OF_COMPOSITION | RF_OUT_OF_THICKNESS | RF_AT_EDGE | RF_NOT_USABLE);
    method.formula = method.asks == Asks::minimum ? answer.formula : std::string();
    method.inputs = answer.inputs;
    method.source = answer.source;
    method.note = answer.note;
    return method;
}

/// A thin wall taken at the thinnest of a method's range is asked for more than it needs, so nothing else has
/// to join; a thick one at the thickest is not.
bool only_too_thin(const AnsweredMethod& answer, const HeatCase& what) {
    return answer.is(RF_OUT_OF_THICKNESS) && !answer.is(RF_OUT_OF_COMPOSITION) && what.wall &&
           *what.wall < rigid_wall;
}

void add_rules(Gathering& gathering, const HeatCase& what) {
    if (!what.family->plugin)
        return;
    if (!what.wall && !gathering.has_row)
        gathering.wants_unknown_row = true; // it may be thicker than any method was made for
    const FamilyAnswer answer = ask(*what.family->plugin, question_on("preheat", what), what.family->sources);
    for (const AnsweredMethod& one : answer.methods) {
        if (one.is(RF_OUT_OF_COMPOSITION) && one.is(RF_AT_EDGE) && gathering.practice_rules)
            continue; // the grade's own row rules; the method as it stands is told as information
        PreheatMethod method = answered(one);
        method.applies = !one.is(RF_SECOND_OPINION | RF_NOT_USABLE) &&
                         (!one.is(RF_OUT_OF_COMPOSITION | RF_OUT_OF_THICKNESS) || one.is(RF_AT_EDGE));
        if (one.is(RF_AT_EDGE) && !gathering.has_row && !only_too_thin(one, what))
            gathering.wants_unknown_row = true;
        gathering.found.methods.push_back(std::move(method));
    }
    gathering.found.values = answer.values;
}

void add_unknown_row(Gathering& gathering, const HeatCase& what) {
    const bool nothing_applies = std::none_of(gathering.found.methods.begin(), gathering.found.methods.end(),
                                              [](const PreheatMethod& method) { return method.applies; });
    if (what.is_unknown_metal() || !(gathering.wants_unknown_row || what.not_the_grade || nothing_applies))
        return;
    for (const Base& base : what.family->bases)
        if (base.name == unknown_metal && base.practice && base.structure == what.base->structure)
            if (const auto row = look_up(*base.practice, preheat_case(what))) {
                PreheatMethod method = row_method(*base.practice, *row);
                method.note = "taken because the other methods do not reach this metal or wall";
                gathering.found.methods.push_back(std::move(method));
            }
}

} // namespace

GatheredMethods gather_methods(const HeatCase& what) {
    Gathering gathering;
    add_practice(gathering, what);
    add_groups(gathering, what);
    add_rules(gathering, what);
    add_unknown_row(gathering, what);
    add_filler_practice(gathering, what);
    return std::move(gathering.found);
}

} // namespace ringfill
