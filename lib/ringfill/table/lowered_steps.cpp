#include <array>
#include <cmath>
#include <initializer_list>
#include <limits>
#include <set>

#include <ringfill/table/lowered.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr std::string_view step_limits[] = {"up_to_mm", "carbon_up_to_pct", "tensile_up_to_MPa"};
constexpr double past_all = std::numeric_limits<double>::infinity();
using Point = std::array<double, std::size(step_limits)>;

/// A figure of a list of steps, of which the first that fits a point holds.
struct SteppedFigure {
    std::string_view words;
    std::string_view unit;
    Safer safer;
    std::optional<double> (*of_row)(const Value& row);
    bool last_goes_on = false; ///< past the last limit the most careful row holds
};

std::optional<double> value_of_row(const Value& row) {
    return number_of(row.find("value"));
}

std::optional<double> in_celsius(const Value& row, std::string_view celsius, std::string_view fahrenheit) {
    if (const auto printed = number_of(row.find(celsius)))
        return printed;
    const auto other = number_of(row.find(fahrenheit));
    return other ? std::optional((*other - 32) * factor::kelvin_per_fahrenheit) : std::nullopt;
}

std::optional<double> least_of_row(const Value& row) {
    const auto minimum = in_celsius(row, "minimum_degC", "minimum_degF");
    const auto practice = number_of(row.find("practice_degC"));
    return minimum && practice ? std::max(minimum, practice) : minimum ? minimum : practice;
}

std::optional<double> most_of_row(const Value& row) {
    return in_celsius(row, "maximum_degC", "maximum_degF");
}

std::string_view document_of(const Value& row) {
    const Value* document = row.find("document");
    return document && document->text() ? std::string_view(*document->text()) : std::string_view();
}

std::optional<double> figure_at(const Value::List& rows, const SteppedFigure& figure, const Point& point,
                                std::string_view document) {
    constexpr double last_digit = 1 + 1e-9;
    std::optional<double> most;
    for (const Value& row : rows) {
        if (!document_of(row).empty() && document_of(row) != document)
            continue;
        bool fits = true;
        for (std::size_t i = 0; i < point.size(); ++i)
            if (const auto limit = number_of(row.find(step_limits[i])))
                fits = fits && point[i] <= *limit * last_digit;
        const auto here = figure.of_row(row);
        if (fits)
            return here;
        if (here && (!most || *here > *most))
            most = here;
    }
    return figure.last_goes_on ? most : std::nullopt;
}

/// Every limit of both lists, and past them all.
std::set<double> limits_of(std::string_view name, std::initializer_list<const Value::List*> lists) {
    std::set<double> limits{past_all};
    for (const Value::List* rows : lists)
        for (const Value& row : *rows)
            if (const auto limit = number_of(row.find(name)))
                limits.insert(*limit);
    return limits;
}

/// Compares two lists of steps at each point where they may differ; the greatest difference is told.
void compare_lists(const Comparison& at, const SteppedFigure& figure, const Value::List& ours,
                   const Value::List& theirs) {
    std::set<std::string_view> documents{""};
    for (const Value::List* rows : {&ours, &theirs})
        for (const Value& row : *rows)
            documents.insert(document_of(row));
    std::optional<LoweredFigure> worst;
    double furthest = -1;
    const auto judge = [&](const Point& point) {
        for (const std::string_view document : documents) {
            const auto own = figure_at(ours, figure, point, document);
            const auto their = figure_at(theirs, figure, point, document);
            if (!is_less_careful(own, their, figure.safer, false))
                continue;
            const double apart = own && their ? std::abs(*own - *their) : past_all;
            if (apart > furthest)
                worst = LoweredFigure{at.path, figure.words, figure.unit, as_value(own), as_value(their)};
            furthest = std::max(furthest, apart);
        }
    };
    for (const double wall : limits_of(step_limits[0], {&ours, &theirs}))
        for (const double carbon : limits_of(step_limits[1], {&ours, &theirs}))
            for (const double strength : limits_of(step_limits[2], {&ours, &theirs}))
                judge({wall, carbon, strength});
    if (worst)
        at.found->push_back(*worst);
}

constexpr SteppedFigure preheat_figures[] = {{"preheat", "degC", Safer::high, least_of_row, true},
                                             {maximum_words, "degC", Safer::low, most_of_row}};
constexpr SteppedFigure between_rings{maximum_words, "degC", Safer::low, value_of_row};
constexpr SteppedFigure by_equivalent{"carbon equivalent that it may have", "%", Safer::high, value_of_row};

} // namespace

bool compare_steps(const Comparison& at, std::string_view name, const Value* ours, const Value* theirs) {
    static const Value::List none;
    const auto rows_of = [](const Value* value) -> const Value::List* {
        const Value::List* list = value ? value->list() : nullptr;
        return list && !list->empty() && list->front().object() ? list : nullptr;
    };
    const Value::List* own = rows_of(ours);
    const Value::List* their = rows_of(theirs);
    if (!own && !their)
        return false;
    own = own ? own : &none;
    their = their ? their : &none;
    if (name == "rows")
        for (const SteppedFigure& figure : preheat_figures)
            compare_lists(at, figure, *own, *their);
    else if (name == "interpass_max_degC")
        compare_lists(at, between_rings, *own, *their);
    else if (name == "cev_max" || name == "typical_cet")
        compare_lists(at, by_equivalent, *own, *their);
    else
        return false;
    return true;
}

} // namespace ringfill
