#include <ringfill/heat/maximum_between_rings.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/heat/gathering.hpp>
#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/heat/unknown_metal.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double under_tempering_K = 50;
constexpr double gives_way_K = 50;  // a window that a ring fits into
constexpr double over_group_K = 50; // more than a procedure test allows [EN ISO 15614-1:2017 8.4.9; read]
constexpr double least_of_later_degC = 120;
constexpr double austenitic_most_degC = 177; // NAVSEA S9074-AR-GIB-010/278, 350 °F; read
constexpr double usual_degC = 250;
constexpr double usual_gives_way_degC = 315;

AskedTemperature most_of(double degC, std::string by, std::string source, UnitSystem units) {
    const Temperature exact = celsius(degC);
    AskedTemperature asked{printed_maximum(exact, degC, {}, units).value, std::move(by), std::move(source)};
    if (asked.value != exact) {
        asked.formula = rounded_down_formula("T", units);
        asked.inputs = {{"T", degC, "°C"}};
    }
    return asked;
}

void take_lower(std::optional<AskedTemperature>& lowest, AskedTemperature asked) {
    if (!lowest || asked.value < lowest->value)
        lowest = std::move(asked);
}

/// A maximum of practice as high as the minimum asks for.
AskedTemperature give_way(GroupMaximum group, std::optional<Temperature> minimum, UnitSystem units) {
    if (!minimum || !group.gives_way_to)
        return group.asked;
    const double needed = minimum->value() + gives_way_K;
    if (needed <= group.asked.value.value())
        return group.asked;
    const Temperature most = std::min(in_si<Temperature>(needed), *group.gives_way_to);
    AskedTemperature asked = group.asked;
    asked.value = rounded_down(std::max(most, group.asked.value), units);
    asked.by += ", which gives way to the minimum";
    asked.formula = rounded_down_formula("max(min(T_min + 50, T_most), T_group)", units);
    asked.inputs = {{"T_min", deg_c(*minimum), "°C"},
                    {"T_most", deg_c(*group.gives_way_to), "°C"},
                    {"T_group", deg_c(group.asked.value), "°C"}};
    asked.gave_way = true;
    return asked;
}

std::optional<AskedTemperature> filler_maximum(const HeatCase& heat_case) {
    const UnitSystem units = heat_case.rules.units;
    if (const auto& own = heat_case.filler->interpass_max)
        return most_of(deg_c(own->value), fmt::format("the table for {}", heat_case.filler_name), own->source,
                       units);
    if (heat_case.stainless_on_steel)
        return most_of(austenitic_most_degC, "the stainless filler on steel", "practice", units);
    return std::nullopt;
}

} // namespace

std::optional<AskedTemperature> softens_over(const HeatCase& heat_case) {
    const Base& base = *heat_case.base;
    const UnitSystem units = heat_case.rules.units;
    if (base.softens_over)
        return most_of(deg_c(base.softens_over->value), "what its hardness bears", base.softens_over->source,
                       units);
    if (!base.tempering)
        return std::nullopt;
    const double tempering = deg_c(base.tempering->value);
    AskedTemperature asked{rounded_down(celsius(tempering - under_tempering_K), units),
                           "what its tempering allows", base.tempering->source};
    asked.formula = rounded_down_formula("T_tempering - 50", units);
    asked.inputs = {{"T_tempering", tempering, "°C"}};
    return asked;
}

std::optional<AskedTemperature> softening_stop(const HeatCase& heat_case) {
    if (auto softens = softens_over(heat_case))
        return softens;
    if (!heat_case.is_quenched())
        return std::nullopt;
    const auto group = group_maximum(heat_case);
    if (!group)
        return std::nullopt;
    AskedTemperature asked = group->asked;
    asked.value = in_si<Temperature>(asked.value.value() + over_group_K);
    asked.by = "50 K over the maximum of quenched metal";
    return asked;
}

std::optional<GroupMaximum> group_maximum(const HeatCase& heat_case) {
    const Base& base = *heat_case.base;
    const UnitSystem units = heat_case.rules.units;
    if (base.interpass_max && base.interpass_max->source != "practice")
        return GroupMaximum{most_of(deg_c(base.interpass_max->value),
                                    fmt::format("the table for {}", base.name), base.interpass_max->source,
                                    units),
                            {}};
    if (heat_case.as_quenched)
        return GroupMaximum{
            most_of(unknown_plate_most_degC, "practice for quenched plate", "practice", units), {}};
    if (heat_case.group) {
        const auto wall = heat_case.wall ? std::optional(mm(*heat_case.wall)) : std::nullopt;
        const auto& rows = heat_case.group->interpass_max_degC;
        // A wall that is not known is taken for the thickest, by which the minimum goes too.
        const ThicknessRow* row =
            row_for(rows, wall, is_listed_by_named(heat_case) ? heat_case.rules.document : std::string());
        if (row) {
            const bool is_practice = row->source == "practice";
            GroupMaximum group{most_of(row->value,
                                       fmt::format("{} for {}", is_practice ? "practice" : "the maximum",
                                                   heat_case.group->name),
                                       row->source, units),
                               {}};
            group.asked.is_usual = is_practice;
            if (heat_case.group->gives_way_to_degC)
                group.gives_way_to = celsius(heat_case.group->gives_way_to_degC->value);
            return group;
        }
    }
    if (base.interpass_max)
        return GroupMaximum{most_of(deg_c(base.interpass_max->value),
                                    fmt::format("the table for {}", base.name), base.interpass_max->source,
                                    units),
                            {}};
    if (base.structure != "ferritic")
        return std::nullopt;
    GroupMaximum usual{most_of(usual_degC, "common practice, no document gives one", "practice", units),
                       celsius(usual_gives_way_degC)};
    usual.asked.is_usual = true;
    return usual;
}

std::optional<AskedTemperature> maximum_between_rings(const HeatCase& heat_case, const Preheat& preheat) {
    const UnitSystem units = heat_case.rules.units;
    std::optional<AskedTemperature> lowest;
    if (const auto group = group_maximum(heat_case))
        take_lower(lowest, give_way(*group, preheat.least(), units));
    for (const PreheatMethod& method : preheat.methods)
        if (method.applies && method.maximum)
            take_lower(lowest, {method.maximum->value, method.name, method.maximum->source});
    for (const AnsweredFigure& value : preheat.values)
        if (value.name == "interpass_max_K") {
            AskedTemperature asked = asked_by_family(value);
            asked.value = printed_maximum(asked.value, deg_c(asked.value), {}, units).value;
            take_lower(lowest, std::move(asked));
        }
    if (auto softens = softens_over(heat_case))
        take_lower(lowest, std::move(*softens));
    if (!heat_case.is_dissimilar())
        if (auto filler = filler_maximum(heat_case))
            take_lower(lowest, std::move(*filler));
    return lowest;
}

std::optional<LaterLayers> later_layers(const HeatCase& heat_case, const Preheat& preheat) {
    if (!heat_case.is_dissimilar() || !preheat.minimum || !preheat.interpass_max)
        return std::nullopt;
    const UnitSystem units = heat_case.rules.units;
    LaterLayers later{*preheat.minimum, *preheat.interpass_max};
    const Temperature usual_least =
        printed_minimum(celsius(least_of_later_degC), least_of_later_degC, {}, units).value;
    if (heat_case.is_hardenable() || usual_least < later.minimum.value)
        later.minimum = {usual_least, "practice over a filler of another kind", "practice"};
    if (const auto filler = filler_maximum(heat_case); filler && filler->value < later.maximum.value)
        later.maximum = *filler;
    return later;
}

} // namespace ringfill
