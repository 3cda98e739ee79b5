#include <ringfill/say/heat_limits.hpp>

#include <utility>
#include <vector>

#include <fmt/format.h>

#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// Texts with the bores they hold for, in the order of the bores.
using ByText = std::vector<std::pair<std::string, std::string>>;

void put(ByText& texts, const std::string& text, const std::string& bore) {
    for (auto& [known, bores] : texts)
        if (known == text) {
            bores += ", " + bore;
            return;
        }
    texts.emplace_back(text, bore);
}

/// The figures of the limits of every bore that has this one.
std::vector<std::string> figures_of(const Plan& plan, const std::string& limit) {
    std::vector<std::string> figures;
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        if (heat_limits(plan.bores[i].heat, plan.units) == limit)
            for (const std::string& figure : limit_figures(plan.bores[i].heat))
                figures.push_back(fmt::format("bores[{}].{}", i, figure));
    return figures;
}

std::string stop_of(const BoreHeat& heat, UnitSystem units) {
    if (heat.preheat.doubt)
        return "STOP: identify the metal before any heat";
    if (is_heated_against_its_rules(heat))
        return fmt::format("STOP: {}, ask the author of the approved procedure",
                           never_heated_words(heat, units));
    if (heat.preheat.state == PreheatState::contradictory)
        return heat.preheat.approved.empty()
                   ? "STOP: contradictory, needs an approved procedure"
                   : "STOP: contradictory, ask the author of the approved procedure";
    return {};
}

bool is_approved(const std::optional<AskedTemperature>& asked) {
    return asked && asked->source == "approved";
}

bool approved_gives(const Preheat& preheat) {
    return is_approved(preheat.minimum) || is_approved(preheat.interpass_max);
}

/// Beside a preheat that nobody knows a maximum would read as leave to weld under it.
bool tells_maximum(const Preheat& preheat) {
    return preheat.interpass_max &&
           (preheat.asked != PreheatState::needed_without_figure || is_approved(preheat.interpass_max));
}

/// "at least 300 °C", and of what range where the filler's own metal is laid in one that goes over it.
std::string least_text(const Preheat& preheat, const ShownLimits& shown, UnitSystem units) {
    if (!preheat.filler_range || is_approved(preheat.minimum))
        return fmt::format("at least {}", shown.minimum);
    return fmt::format("at least {} (its filler is laid at {} to {}, an approved procedure settles it)",
                       shown.minimum, show_exact(preheat.filler_range->low, units),
                       show_exact(preheat.filler_range->high, units));
}

} // namespace

ShownLimits shown_limits(const Preheat& preheat, UnitSystem units) {
    const Temperature least = *preheat.least();
    if (!preheat.interpass_max)
        return {show_minimum(least, units), {}, false};
    const Temperature most = preheat.interpass_max->value;
    if (rounding_crosses(least, most, units))
        return {show_exact(least, units), show_exact(most, units), true};
    return {show_minimum(least, units), show_maximum(most, units), false};
}

bool tells_minimum(const Preheat& preheat) {
    return preheat.asked == PreheatState::figure;
}

std::vector<std::string> limit_figures(const BoreHeat& heat) {
    const Preheat& preheat = heat.preheat;
    if (preheat.state == PreheatState::not_known)
        return {};
    std::vector<std::string> figures;
    if (tells_minimum(preheat))
        figures.emplace_back("heat.preheat_min_degC");
    if (tells_maximum(preheat))
        figures.emplace_back("heat.interpass_max_degC");
    return figures;
}

std::string heat_limits(const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    if (preheat.state == PreheatState::not_known)
        return preheat.doubt ? "no figure before the metal is known"
                             : "no figure can be given: take it from an approved procedure";
    const ShownLimits shown = shown_limits(preheat, units);
    if (rings_are_heated_against_its_rules(heat))
        return fmt::format(
            "none before its author confirms it; the approved procedure says at least {}, no ring "
            "over {}",
            shown.minimum, shown.maximum);
    std::string text = preheat.asked == PreheatState::none ? "none, dry and hand-warm"
                       : preheat.asked == PreheatState::needed_without_figure
                           ? "needed, no figure known"
                           : least_text(preheat, shown, units);
    if (tells_maximum(preheat))
        text += fmt::format("; no ring begins over {}{}", shown.maximum,
                            shown.exact ? " (exact: closer than the usual rounding)" : "");
    return text;
}

Sentences head_sentences(const Plan& plan) {
    ByText stops;
    ByText approved;
    ByText silent;
    ByText waiting;
    ByText limits;
    for (const BorePlan& bore : plan.bores) {
        const std::string name = printable(bore.name, 60);
        if (const std::string stop = stop_of(bore.heat, plan.units); !stop.empty())
            put(stops, stop, name);
        if (!bore.heat.preheat.approved.empty())
            put(bore.heat.preheat.doubt             ? waiting
                : approved_gives(bore.heat.preheat) ? approved
                                                    : silent,
                printable(bore.heat.preheat.approved, 80), name);
        put(limits, heat_limits(bore.heat, plan.units), name);
    }
    Sentences sentences;
    for (const auto& [stop, bores] : stops)
        sentences.push_back({fmt::format("{}: {}.", stop, bores), Stands::stop});
    for (const auto& [reference, bores] : approved)
        sentences.push_back(
            {fmt::format("Approved procedure {} rules: {}.", reference, bores), Stands::head});
    for (const auto& [reference, bores] : silent)
        sentences.push_back(
            {fmt::format("Approved procedure {} gives no preheat and no interpass maximum to this job; "
                         "these are published ones: {}.",
                         reference, bores),
             Stands::head});
    for (const auto& [reference, bores] : waiting)
        sentences.push_back(
            {fmt::format("Approved procedure {} waits until the metal is known: {}.", reference, bores),
             Stands::head});
    for (const auto& [limit, bores] : limits)
        sentences.push_back(
            {fmt::format("Preheat {}: {}.", limit, bores), Stands::head, figures_of(plan, limit)});
    return sentences;
}

} // namespace ringfill
