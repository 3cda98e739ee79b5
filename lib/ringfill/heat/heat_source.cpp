#include <ringfill/heat/heat_source.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {

std::optional<HeatSource> heat_source(const std::optional<Heater>& heater, const Fuels& fuels) {
    const std::string kind = heater ? heater->kind : std::string(usual_heater);
    const auto known = ranges::find(fuels.heaters, kind, &HeaterKind::name);
    if (known == fuels.heaters.end())
        return std::nullopt;
    HeatSource source{kind, known->power.value, known->efficiency.value, known->fuel};
    source.stays = heater && heater->stays ? *heater->stays : source.fuel.empty();
    source.skin = heater ? heater->skin : std::nullopt;
    source.start_delay = heater ? heater->start_delay.value_or(usual_start_delay) : usual_start_delay;
    if (!heater)
        source.assumed.push_back({"heater.kind", kind, "practice"});
    if (heater && heater->power)
        source.power = *heater->power;
    else
        source.assumed.push_back(
            {"heater.power", fmt::format("{:.3g} kW", source.power.value() / 1e3), known->power.source});
    if (heater && heater->efficiency)
        source.efficiency = *heater->efficiency;
    else
        source.assumed.push_back(
            {"heater.efficiency", fmt::format("{:.3g}", source.efficiency), known->efficiency.source});
    return source;
}

} // namespace ringfill
