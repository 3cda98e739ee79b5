#include <ringfill/heat/preheat_rows.hpp>

#include <range/v3/algorithm/contains.hpp>

namespace ringfill {
namespace {

/// A limit of 38.1 mm includes a wall of 1.5 in, whose last digit may differ.
constexpr double last_digit = 1 + 1e-9;

enum class Fits { yes, no, perhaps };

template <class T>
Fits within(const std::optional<Sourced<T>>& limit, const std::optional<T>& value) {
    if (!limit)
        return Fits::yes;
    if (!value)
        return Fits::perhaps;
    return *value <= limit->value * last_digit ? Fits::yes : Fits::no;
}

Fits fits(const PreheatRow& row, const HeatCase& heat_case) {
    const double* carbon = value_named(heat_case.composition, "C");
    const auto& tensile = heat_case.base->tensile_MPa;
    const Fits limits[] = {within(row.up_to, heat_case.wall),
                           within(row.carbon_up_to_pct, carbon ? std::optional(*carbon) : std::nullopt),
                           within(row.tensile_up_to_MPa, tensile && !heat_case.not_the_grade
                                                             ? std::optional(tensile->value)
                                                             : std::nullopt)};
    return ranges::contains(limits, Fits::no)        ? Fits::no
           : ranges::contains(limits, Fits::perhaps) ? Fits::perhaps
                                                     : Fits::yes;
}

void take_worse(RowAnswer& answer, const PreheatRow& row) {
    if (row.minimum.value > answer.minimum.value) {
        answer.minimum = row.minimum;
        answer.range_from = row.range_from;
        answer.printed_degC = row.printed_degC;
        answer.printed_degF = row.printed_degF;
    }
    if (row.maximum && (!answer.maximum || row.maximum->value < answer.maximum->value)) {
        answer.maximum = row.maximum;
        answer.printed_maximum_degC = row.printed_maximum_degC;
        answer.printed_maximum_degF = row.printed_maximum_degF;
    }
}

} // namespace

bool holds_for_hydrogen(const PreheatGroup& group, const HeatCase& heat_case) {
    const auto& hydrogen = heat_case.hydrogen_ml_100g;
    if (group.hydrogen_up_to && !(hydrogen && hydrogen->value <= group.hydrogen_up_to->value))
        return false;
    return !group.hydrogen_over || !hydrogen || hydrogen->value > group.hydrogen_over->value;
}

std::optional<RowAnswer> look_up(const PreheatGroup& group, const HeatCase& heat_case) {
    std::optional<RowAnswer> answer;
    for (const PreheatRow& row : group.rows) {
        const Fits row_fits = fits(row, heat_case);
        if (row_fits == Fits::no)
            continue;
        if (answer)
            take_worse(*answer, row);
        else
            answer = RowAnswer{row};
        answer->for_the_worst = answer->for_the_worst || row_fits == Fits::perhaps;
        if (row_fits == Fits::yes)
            break;
    }
    return answer;
}

} // namespace ringfill
