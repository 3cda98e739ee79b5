#include <ringfill/caution/judged.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A figure as people measure it. @param name of the circumstance, which ends in the unit of the figure.
std::string figure_text(std::string_view name, double figure, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    if (name.ends_with("_degC"))
        return show_exact(celsius(figure), units);
    if (name.ends_with("_A"))
        return fmt::format("{:.4g} A", figure);
    if (name.ends_with("_pct"))
        return fmt::format("{:.3g} %", figure);
    if (name.ends_with("_m3"))
        return metric ? fmt::format("{:.0f} m³", figure)
                      : fmt::format("{:.0f} ft³", figure / factor::cubic_foot);
    return metric ? fmt::format("{:.3g} m", figure) : fmt::format("{:.3g} ft", figure / factor::foot);
}

/// "the arc has 150 A, from 60 A to under 160 A"
std::string compared(const Trigger& trigger, const Fact& fact, UnitSystem units) {
    const auto in_words = [&](double figure) {
        return figure_text(trigger.circumstance->name, figure, units);
    };
    std::string text = fmt::format("{} {}", fact.words, in_words(*fact.figure));
    if (trigger.from)
        text += fmt::format(", {} {}", trigger.under ? "from" : "at least", in_words(trigger.from->value));
    if (trigger.under)
        text += fmt::format("{} under {}", trigger.from ? " to" : ",", in_words(trigger.under->value));
    return text;
}

} // namespace

Judged judged(const Trigger& trigger, const WorkFacts& facts) {
    const Circumstance& word = *trigger.circumstance;
    static const std::vector<Fact> none;
    const auto known = facts.known.find(trigger.circumstance);
    Judged found;
    const Fact* most = nullptr; // of those that hold
    std::string unknown = fmt::format("the job does not say: {}", word.field);
    for (const Fact& fact : known != facts.known.end() ? known->second : none) {
        const bool holds = fact.figure && (word.is_figure() ? trigger.holds(*fact.figure) : *fact.figure > 0);
        if (!holds && fact.figure && !fact.may_be_more)
            continue;
        found.answer = std::max(found.answer, holds ? Answer::yes : Answer::unknown);
        if (fact.about)
            (holds ? found.about : found.open).push_back(*fact.about);
        if (holds && (!most || *fact.figure > *most->figure))
            most = &fact;
        if (!holds && !word.is_figure() && !fact.words.empty())
            unknown = fact.words;
    }
    if (most)
        found.because = word.is_figure() ? compared(trigger, *most, facts.units) : most->words;
    else if (found.answer == Answer::unknown)
        found = {Answer::unknown, std::move(found.open), std::move(unknown)};
    if (trigger.circumstance == circumstance("plugged_passage"))
        found.open.clear(); // one hole that is shut is enough to look at all
    if (found.answer == Answer::unknown || !found.open.empty())
        found.field = word.field;
    if (!found.about.empty() &&
        found.about.size() == (found.about[0].kind == Concern::bore ? facts.bores : facts.procedures))
        found.about.clear();
    return found;
}

} // namespace ringfill
