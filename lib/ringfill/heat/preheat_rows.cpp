#include <ringfill/heat/preheat_rows.hpp>

#include <algorithm>

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

Fits fits(const PreheatRow& row, const PreheatCase& what) {
    const Fits limits[] = {within(row.up_to, what.wall), within(row.carbon_up_to_pct, what.carbon_pct),
                           within(row.tensile_up_to_MPa, what.tensile_MPa)};
    if (std::find(std::begin(limits), std::end(limits), Fits::no) != std::end(limits))
        return Fits::no;
    return std::find(std::begin(limits), std::end(limits), Fits::perhaps) != std::end(limits) ? Fits::perhaps
                                                                                              : Fits::yes;
}

void take_worse(RowAnswer& answer, const PreheatRow& row) {
    if (row.minimum.value > answer.minimum.value) {
        answer.minimum = row.minimum;
        answer.range_from = row.range_from;
    }
    if (row.maximum && (!answer.maximum || row.maximum->value < answer.maximum->value))
        answer.maximum = row.maximum;
}

} // namespace

bool holds_for_hydrogen(const PreheatGroup& group, std::optional<double> hydrogen_ml_100g) {
    if (group.hydrogen_up_to && !(hydrogen_ml_100g && *hydrogen_ml_100g <= group.hydrogen_up_to->value))
        return false;
    return !group.hydrogen_over || !hydrogen_ml_100g || *hydrogen_ml_100g > group.hydrogen_over->value;
}

std::optional<RowAnswer> look_up(const PreheatGroup& group, const PreheatCase& what) {
    std::optional<RowAnswer> answer;
    for (const PreheatRow& row : group.rows) {
        const Fits row_fits = fits(row, what);
        if (row_fits == Fits::no)
            continue;
        if (answer)
            take_worse(*answer, row);
        else
            answer = RowAnswer{row.minimum, row.maximum, false, row.range_from};
        answer->for_the_worst = answer->for_the_worst || row_fits == Fits::perhaps;
        if (row_fits == Fits::yes)
            break;
    }
    return answer;
}

} // namespace ringfill
