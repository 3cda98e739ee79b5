#include <ringfill/say/heat_limits.hpp>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/find_if.hpp>
#include <range/v3/algorithm/stable_sort.hpp>

#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// The kinds of sentences at the head, in their order.
enum class HeadKind { stop, approved, silent, waiting, limits };

/// What a sentence says, the bores it holds for in their order, and the figures of the result that it tells.
struct HeadText {
    HeadKind kind;
    std::string text;
    std::string bores;
    std::vector<std::string> figures = {};
};

/// The approved figures as they are typed, where they leave no window.
std::string approved_window(const Preheat& preheat, UnitSystem units) {
    const auto approved = [](const std::optional<AskedTemperature>& asked) {
        return asked && asked->source == "approved";
    };
    std::string text;
    if (approved(preheat.minimum))
        text += fmt::format("approved at least {}, ", show_exact(preheat.minimum->value, units));
    if (approved(preheat.interpass_max))
        text += fmt::format("approved no ring over {}, ", show_exact(preheat.interpass_max->value, units));
    return text;
}

std::string stop_of(const BoreHeat& heat, UnitSystem units) {
    if (heat.preheat.doubt)
        return "STOP: identify the metal before any heat";
    if (is_heated_against_its_rules(heat))
        return "STOP: " + never_heated(heat, units).words + ", ask the author of the approved procedure";
    return heat.preheat.closed ? fmt::format("STOP: contradictory, {}{}",
                                             approved_window(heat.preheat, units), who_settles(heat.preheat))
                               : "";
}

bool is_approved(const std::optional<AskedTemperature>& asked) {
    return asked && asked->source == "approved";
}

HeadText approved_text(const Preheat& preheat, const std::string& bore) {
    const std::string procedure = "Approved procedure " + printable(preheat.approved, 80);
    if (preheat.doubt)
        return {HeadKind::waiting, procedure + " waits until the metal is known", bore};
    if (is_approved(preheat.minimum) || is_approved(preheat.interpass_max))
        return {HeadKind::approved, procedure + " rules", bore};
    return {HeadKind::silent,
            procedure + " gives no preheat and no interpass maximum to this job; these are published ones",
            bore};
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

std::string_view who_settles(const Preheat& contradictory) {
    return contradictory.approved.empty() ? "needs an approved procedure"
                                          : "ask the author of the approved procedure";
}

ShownLimits shown_limits(const Preheat& preheat, UnitSystem units) {
    const Temperature least = *preheat.least();
    return {show_exact(least, units),
            preheat.interpass_max ? show_exact(preheat.interpass_max->value, units) : std::string()};
}

Sentence heat_limits(const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    if (preheat.state == PreheatState::not_known)
        return {preheat.doubt ? "no figure before the metal is known"
                              : "no figure can be given: take it from an approved procedure"};
    if (preheat.closed)
        return {"no figure before the two limits are settled"};
    const ShownLimits shown = shown_limits(preheat, units);
    if (preheat.state == PreheatState::contradictory)
        return {fmt::format("none before its author confirms it; the approved procedure says at least {}{}",
                            shown.minimum, preheat.interpass_max ? ", no ring over " + shown.maximum : "")};
    const bool has_figure = preheat.asked == PreheatState::figure;
    const bool lacks_figure = preheat.asked == PreheatState::needed_without_figure;
    Sentence limits{has_figure     ? least_text(preheat, shown, units)
                    : lacks_figure ? "needed, no figure known"
                                   : "none, dry and hand-warm"};
    if (has_figure)
        limits.figures.emplace_back("heat.preheat_min_degC");
    // Beside a preheat that nobody knows a maximum would read as leave to weld under it.
    if (preheat.interpass_max && (!lacks_figure || is_approved(preheat.interpass_max))) {
        limits.text += fmt::format("; no ring begins over {}", shown.maximum);
        limits.figures.emplace_back("heat.interpass_max_degC");
    }
    if (preheat.later && has_figure)
        limits.text += fmt::format("; from the second layer on at least {}, no ring over {}",
                                   show_exact(preheat.later->minimum.value, units),
                                   show_exact(preheat.later->maximum.value, units));
    return limits;
}

std::vector<std::string> replaced_in_words(const std::vector<ReplacedRow>& tables) {
    std::vector<std::string> all;
    const ReplacedRow* before = nullptr;
    for (const ReplacedRow& one : tables) {
        std::string row = in_quotes(one.row);
        if (one.fields != std::vector{one.row})
            row += fmt::format(" ({})", printable(listed(one.fields, ", ")));
        if (before && before->file == one.file && before->table == one.table)
            all.back() += ", " + row;
        else
            all.push_back(fmt::format("TABLE {} replaces in {}: {}", printable(one.file), one.table, row));
        before = &one;
    }
    for (std::string& line : all)
        line += '.';
    return all;
}

Sentences doubt_sentences(const Plan& plan) {
    Sentences doubted;
    for (const Doubt& doubt : plan.doubts)
        doubted.push_back({"DOUBT " + to_string(doubt), {}, Stands::stop});
    for (const std::string& replaced : replaced_in_words(plan.tables))
        doubted.push_back({replaced, {}, Stands::head});
    return doubted;
}

Sentences head_sentences(const Plan& plan) {
    const Sentences doubted = doubt_sentences(plan);
    std::vector<HeadText> all;
    const auto put = [&](const HeadText& next) {
        const auto known = ranges::find(all, next.text, &HeadText::text);
        if (known == all.end())
            return all.push_back(next);
        known->bores += ", " + next.bores;
        ranges::push_back(known->figures, next.figures);
    };
    for (std::size_t i = 0; i < plan.bores.size(); ++i) {
        const BoreHeat& heat = plan.bores[i].heat;
        const std::string name = printable(plan.bores[i].name, 60);
        if (const std::string stop = stop_of(heat, plan.units); !stop.empty())
            put({HeadKind::stop, stop, name});
        if (!heat.preheat.approved.empty())
            put(approved_text(heat.preheat, name));
        const Sentence told = heat_limits(heat, plan.units);
        HeadText limits{HeadKind::limits, "Preheat " + told.text, name};
        for (const std::string& figure : told.figures)
            limits.figures.push_back(fmt::format("bores[{}].{}", i, figure));
        put(limits);
    }
    ranges::stable_sort(all, {}, &HeadText::kind);
    Sentences sentences;
    for (const auto& [kind, text, bores, figures] : all)
        sentences.push_back({fmt::format("{}: {}.", text, bores), figures,
                             kind == HeadKind::stop ? Stands::stop : Stands::head});
    const auto after_stops =
        ranges::find_if(sentences, [](const Sentence& one) { return one.stands != Stands::stop; });
    sentences.insert(after_stops, doubted.begin(), doubted.end());
    return sentences;
}

} // namespace ringfill
