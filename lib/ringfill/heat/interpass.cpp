#include <ringfill/heat/preheat_methods.hpp>

#include <algorithm>

#include <fmt/format.h>

namespace ringfill {
namespace {

void take_lower(std::optional<AskedTemperature>& lowest, AskedTemperature asked) {
    if (!lowest || asked.value < lowest->value)
        lowest = std::move(asked);
}

/// Steel that may have been quenched and tempered: all but the grades whose table says that they never are.
bool may_be_tempered(const HeatCase& heat_case) {
    return heat_case.base->structure == "ferritic" &&
           (!heat_case.base->never_quenched || heat_case.not_the_grade);
}

/// What a filler that is laid hotter than the metal under it bears must not pass.
std::optional<AskedTemperature> softening_limit(const HeatCase& heat_case) {
    if (auto known = softens_over(heat_case))
        return known;
    if (may_be_tempered(heat_case))
        return AskedTemperature{usual_maximum, "the usual limit of quenched and tempered steel", "practice"};
    return std::nullopt;
}

/// The usual maximum over a minimum.
AskedTemperature usual(const HeatCase& heat_case, Temperature minimum) {
    double highest = std::min(minimum.value() + usual_range_K, usual_maximum.value());
    std::string formula = "min(T_min + range, T_most)";
    std::vector<Input> inputs{{"T_min", minimum.value(), "K"},
                              {"range", usual_range_K, "K"},
                              {"T_most", usual_maximum.value(), "K"}};
    if (heat_case.base->softens_over) {
        inputs.emplace_back("T_softens", heat_case.base->softens_over->value.value(), "K");
        highest = std::min(highest, inputs.back().value);
        formula = "min(" + formula + ", T_softens)";
    } else if (heat_case.base->tempering) {
        inputs.emplace_back("T_tempering", heat_case.base->tempering->value.value(), "K");
        highest = std::min(highest, inputs.back().value - below_tempering_K);
        inputs.emplace_back("below", below_tempering_K, "K");
        formula = "min(" + formula + ", T_tempering - below)";
    }
    return {in_si<Temperature>(highest),
            "common practice, no document gives one",
            "practice",
            formula + " - 273.15",
            std::move(inputs),
            true};
}

} // namespace

std::optional<AskedTemperature> softens_over(const HeatCase& heat_case) {
    if (heat_case.base->softens_over)
        return AskedTemperature{heat_case.base->softens_over->value, "what its hardness bears",
                                heat_case.base->softens_over->source};
    if (!heat_case.base->tempering)
        return std::nullopt;
    const auto& [tempering, source] = *heat_case.base->tempering;
    return AskedTemperature{in_si<Temperature>(tempering.value() - below_tempering_K),
                            "what its tempering allows", source};
}

std::optional<AskedTemperature> interpass_maximum(const HeatCase& heat_case, const Preheat& preheat) {
    const auto& minimum = preheat.minimum;
    std::optional<AskedTemperature> lowest;
    if (heat_case.base->interpass_max)
        take_lower(lowest, {heat_case.base->interpass_max->value,
                            fmt::format("the table for {}", heat_case.base->name),
                            heat_case.base->interpass_max->source});
    for (const PreheatMethod& method : preheat.methods)
        if (method.applies && method.maximum)
            take_lower(lowest, {method.maximum->value, method.name, method.maximum->source});
    for (const AnsweredFigure& value : preheat.values)
        if (value.name == "interpass_max_K")
            take_lower(lowest, asked_by_family(value));
    if (heat_case.filler->interpass_max)
        take_lower(lowest, {heat_case.filler->interpass_max->value,
                            fmt::format("the table for {}", heat_case.filler_name),
                            heat_case.filler->interpass_max->source});
    if (heat_case.stainless_on_steel)
        take_lower(lowest, {stainless_maximum, "the stainless filler on steel", "practice"});
    if (lowest && !heat_case.base->interpass_max)
        if (auto limit = softening_limit(heat_case))
            take_lower(lowest, std::move(*limit));
    // So much over a minimum that nobody knows is not known either.
    if (lowest || !minimum || lacks_figure(minimum->value, preheat.methods))
        return lowest;
    return usual(heat_case, minimum->value);
}

} // namespace ringfill
