#include <ringfill/heat/preheat_methods.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/max_element.hpp>
#include <range/v3/algorithm/none_of.hpp>

#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/preheat_rows.hpp>
#include <ringfill/material/answer.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// The methods so far, and what they leave open.
struct Gathering {
    Preheat& found;
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
    return {*ranges::max_element(group.rows, {}, [](const PreheatRow& row) { return row.minimum.value; })};
}

/// Why a row, which still counts, does not hold in every respect; empty when it does.
std::string why_not_whole(const PreheatGroup& group, const HeatCase& heat_case) {
    if (heat_case.not_the_grade)
        return fmt::format("the mill certificate is of another steel: {}", *heat_case.not_the_grade);
    if (!holds_for_hydrogen(group, heat_case))
        return fmt::format("made for hydrogen up to {:.3g} ml/100 g", group.hydrogen_up_to->value);
    return {};
}

/// A table that lists the grade. One that ends with a wall says nothing of a thicker one, nor of one that is
/// not known: then its hottest row is taken. True where it may so end.
bool add_table(Gathering& gathering, const PreheatGroup& group, const HeatCase& heat_case) {
    const auto row = look_up(group, heat_case);
    const bool may_end_before = !row || (!heat_case.wall && group.rows.back().up_to);
    PreheatMethod method = row_method(group, row ? *row : hottest_row(group));
    const std::string why = may_end_before ? "it ends before this wall, or may, so its hottest row is taken"
                                           : why_not_whole(group, heat_case);
    method.in_range = why.empty();
    if (!why.empty())
        method.note = why;
    gathering.found.methods.push_back(std::move(method));
    return may_end_before;
}

void add_practice(Gathering& gathering, const HeatCase& heat_case) {
    if (!heat_case.base->practice)
        return;
    gathering.wants_unknown_row = add_table(gathering, *heat_case.base->practice, heat_case);
    gathering.practice_rules = gathering.found.methods.back().in_range;
    gathering.has_row = !heat_case.not_the_grade;
}

/// A table made for less hydrogen, or for the grade that the certificate denies, still counts as a least
/// figure; it lists the grade no more. One for more hydrogen than there is says nothing.
void add_groups(Gathering& gathering, const HeatCase& heat_case) {
    for (const std::string& name : heat_case.base->preheat_groups)
        for (const PreheatGroup& group : heat_case.family->preheat_groups) {
            const bool is_for_filler =
                group.fillers.empty() || ranges::contains(group.fillers, heat_case.filler_name);
            if (group.name != name || !is_for_filler ||
                (group.hydrogen_over && !holds_for_hydrogen(group, heat_case)))
                continue;
            add_table(gathering, group, heat_case);
            gathering.has_row = gathering.has_row || gathering.found.methods.back().in_range;
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
void add_filler_practice(Gathering& gathering, const HeatCase& heat_case) {
    const auto& practice = heat_case.filler->practice;
    if (!practice)
        return;
    const auto row = look_up(*practice, heat_case);
    const RowAnswer asked = row ? *row : hottest_row(*practice);
    PreheatMethod method = row_method(*practice, asked);
    method.applies = ranges::any_of(gathering.found.methods, &PreheatMethod::applies);
    if (const std::string_view why = why_not_for_filler(heat_case.base->structure); !why.empty()) {
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
bool only_too_thin(const AnsweredMethod& answer, const HeatCase& heat_case) {
    return answer.is(RF_OUT_OF_THICKNESS) && !answer.is(RF_OUT_OF_COMPOSITION) && heat_case.wall &&
           *heat_case.wall < rigid_wall;
}

void add_rules(Gathering& gathering, const HeatCase& heat_case) {
    if (!heat_case.family->plugin)
        return;
    if (!heat_case.wall && !gathering.has_row)
        gathering.wants_unknown_row = true; // it may be thicker than any method was made for
    const FamilyAnswer answer =
        ask(*heat_case.family->plugin, question_on("preheat", heat_case), heat_case.family->sources);
    for (const AnsweredMethod& one : answer.methods) {
        if (one.is(RF_OUT_OF_COMPOSITION) && one.is(RF_AT_EDGE) && gathering.practice_rules)
            continue; // the grade's own row rules; the method as it stands is told as information
        PreheatMethod method = answered(one);
        method.applies = !one.is(RF_SECOND_OPINION | RF_NOT_USABLE) &&
                         (!one.is(RF_OUT_OF_COMPOSITION | RF_OUT_OF_THICKNESS) || one.is(RF_AT_EDGE));
        if (one.is(RF_AT_EDGE) && !gathering.has_row && !only_too_thin(one, heat_case))
            gathering.wants_unknown_row = true;
        gathering.found.methods.push_back(std::move(method));
    }
    gathering.found.values = answer.values;
}

void add_unknown_row(Gathering& gathering, const HeatCase& heat_case) {
    const bool nothing_applies = ranges::none_of(gathering.found.methods, &PreheatMethod::applies);
    if (heat_case.is_unknown_metal() ||
        !(gathering.wants_unknown_row || heat_case.not_the_grade || nothing_applies))
        return;
    for (const Base& base : heat_case.family->bases)
        if (base.name == unknown_metal && base.practice && base.structure == heat_case.base->structure)
            if (const auto row = look_up(*base.practice, heat_case)) {
                PreheatMethod method = row_method(*base.practice, *row);
                method.note = "taken because the other methods do not reach this metal or wall";
                gathering.found.methods.push_back(std::move(method));
            }
}

} // namespace

void gather_methods(Preheat& found, const HeatCase& heat_case) {
    Gathering gathering{found};
    add_practice(gathering, heat_case);
    add_groups(gathering, heat_case);
    add_rules(gathering, heat_case);
    add_unknown_row(gathering, heat_case);
    add_filler_practice(gathering, heat_case);
}

} // namespace ringfill
