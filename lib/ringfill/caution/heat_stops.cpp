#include <fmt/format.h>

#include <ringfill/caution/preheat_rules.hpp>

namespace ringfill {
namespace {

Caution before(const WornBore& bore, std::string text, std::string because, std::string source) {
    return {bore.name, "before", "yes", std::move(text), std::move(because), std::move(source)};
}

Caution identify(const WornBore& bore, const std::string& doubt) {
    return before(bore,
                  "Stop and identify the metal before any heat. Austenitic manganese steel is ruined by "
                  "preheat, cast iron cracks without its own care. No preheat figure is given.",
                  fmt::format("the job calls it {}, yet {}", bore.base, doubt), "practice");
}

Caution never_heated(const WornBore& bore, const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    std::string asked;
    const auto add = [&](const std::string& part) { asked += (asked.empty() ? "" : ", ") + part; };
    if (preheat.minimum->value > chill_off)
        add(fmt::format("a preheat of {}", show_exact(preheat.minimum->value, units)));
    if (preheat.overruled.interpass_max)
        add(fmt::format("rings that begin at up to {}", show_exact(preheat.interpass_max->value, units)));
    if (preheat.post_heat)
        add(fmt::format("a hold at {} after welding",
                        show_exact(preheat.post_heat->temperature.value, units)));
    return before(
        bore,
        fmt::format("Stop: manganese steel is not heated, yet the approved procedure {} asks for {}. "
                    "Ask its author before any flame and any arc; nothing to heat it with is counted.",
                    preheat.approved, asked),
        "hot for long it turns brittle, and no later heat mends that", "A128-practice");
}

Caution contradiction(const WornBore& bore, const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    return before(
        bore,
        preheat.approved.empty()
            ? fmt::format("Contradictory: needs an approved procedure. Neither figure is changed.{}",
                          layer_by_layer(heat))
            : fmt::format("Contradictory: ask the author of the approved procedure {} before the "
                          "first arc. Neither figure is changed.",
                          preheat.approved),
        fmt::format("at least {} by {} [{}], at most {} by {} [{}]",
                    show_minimum(preheat.minimum->value, units), preheat.minimum->by, preheat.minimum->source,
                    show_maximum(preheat.interpass_max->value, units), preheat.interpass_max->by,
                    preheat.interpass_max->source),
        "practice");
}

} // namespace

std::string layer_by_layer(const BoreHeat& heat) {
    if (!heat.stainless_on_steel && !heat.nickel_on_steel)
        return {};
    return " A layer of such a filler is as a rule qualified with the preheat of the metal under it for the "
           "first "
           "layer, by some 50 K less at most and never without, and with the interpass maximum from the "
           "second "
           "layer on.";
}

std::vector<Caution> heat_stops(const WornBore& bore, const BoreHeat& heat, UnitSystem units) {
    if (heat.doubt)
        return {identify(bore, *heat.doubt)};
    if (is_heated_against_its_rules(heat))
        return {never_heated(bore, heat, units)};
    if (heat.preheat.contradictory)
        return {contradiction(bore, heat, units)};
    if (!heat.preheat.minimum)
        return {before(bore, "Take preheat from an approved procedure: no figure can be given here.",
                       fmt::format("no table and no rule of its family covers {}", bore.base), "practice")};
    return {};
}

} // namespace ringfill
