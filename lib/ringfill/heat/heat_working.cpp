#include <ringfill/heat/bore_heat.hpp>

#include <range/v3/algorithm/min.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

/// The heat inputs of the bore, each face and each groove that is filled, and the lowest of faces and
/// grooves.
std::vector<Working> heat_inputs(const BoreHeat& heat) {
    std::vector<Working> work;
    const auto add_of = [&](std::string_view list) {
        std::vector<double> all;
        for (const LaidHeat& laid_heat : heat.laid)
            if (laid_heat.figure.starts_with(list)) {
                work.push_back(worked(
                    laid_heat.figure, "k*U*I*60/(1000*v)",
                    inputs_of(Input("k", heat.thermal_efficiency), Input("U", heat.voltage->value(), "V"),
                              Input("I", heat.current->value(), "A"), in_mm_min("v", laid_heat.travel)),
                    in_kj_mm(laid_heat.heat_input), "EN1011-1"));
                all.push_back(kj_mm(laid_heat.heat_input));
            }
        return all;
    };
    add_of("heat.");
    for (const auto& [list, kind] : {std::pair{"faces", "face"}, {"grooves", "groove"}})
        if (const auto all = add_of(list); !all.empty())
            work.push_back(worked(std::string("heat.heat_input_kj_mm.") + kind, "lowest(Q)",
                                  {{"Q", all, "kJ/mm"}}, {ranges::min(all), "kJ/mm"}));
    return work;
}

/// A figure with the formula that it was worked out by, or as its source prints it.
template <class Answer>
Working answer_working(std::string figure, const Answer& answer, const char* as_printed, Input printed,
                       Amount value) {
    return answer.formula.empty()
               ? worked(std::move(figure), as_printed, {std::move(printed)}, std::move(value), answer.source)
               : worked(std::move(figure), answer.formula, answer.inputs, std::move(value), answer.source);
}

template <class Answer>
Working temperature_working(std::string figure, const Answer& answer, Temperature value) {
    return answer_working(std::move(figure), answer, "T - 273.15", {"T", value.value(), "K"},
                          in_deg_c(value));
}

/// In the unit that the name of a value ends in, as people write it.
Working value_working(std::string figure, const AnsweredFigure& value) {
    const std::string& name = value.name;
    const Amount amount{value.number, name.ends_with("_K_per_h") ? "K/h"
                                      : name.ends_with("_pct")   ? "%"
                                                                 : name.substr(name.rfind('_') + 1)};
    return answer_working(std::move(figure), value, "1*x", {"x", amount}, amount);
}

/// What documents print of the heat treatment after welding.
std::vector<Working> treatment_working(const Preheat& preheat) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < preheat.heat_treatment.size(); ++i) {
        const HeatTreatment& one = preheat.heat_treatment[i];
        const auto print = [&](const char* figure, double value, const char* unit) {
            work.push_back(
                taken(element_path("heat_treatment", i) + "." + figure, {"x", value, unit}, one.source));
        };
        print("low_degC", one.degC.first, "°C");
        print("high_degC", one.degC.second, "°C");
        print("min_per_25mm", one.min_per_25mm, "min");
        print("at_least_min", one.at_least_min, "min");
    }
    return work;
}

std::vector<Working> preheat_working(const Preheat& preheat) {
    std::vector<Working> work;
    const auto add = [&](const char* figure, const std::optional<AskedTemperature>& asked) {
        if (asked)
            work.push_back(temperature_working(figure, *asked, asked->value));
    };
    const bool acts = preheat.state == PreheatState::figure || preheat.state == PreheatState::none;
    if (acts) {
        add("preheat_min_degC", preheat.minimum);
        add("interpass_max_degC", preheat.interpass_max);
    }
    if (acts && preheat.later) {
        const auto later = [&](const char* figure, const AskedTemperature& asked) {
            work.push_back(worked(std::string("later_layers.") + figure, "T - 273.15",
                                  {{"T", asked.value.value(), "K"}}, in_deg_c(asked.value), asked.source));
        };
        later("min_degC", preheat.later->minimum);
        later("max_degC", preheat.later->maximum);
    }
    if (const auto& hold = preheat.post_heat; hold && acts) {
        add("post_heat_degC", hold->temperature);
        work.push_back(hold->is_approved ? taken("post_heat_s", {"t", in_seconds(hold->time)}, "approved")
                                         : value_working("post_heat_s", hold->time_working));
    }
    for (std::size_t i = 0; i < preheat.methods.size(); ++i)
        if (const PreheatMethod& method = preheat.methods[i]; method.minimum)
            work.push_back(
                temperature_working(element_path("methods", i) + ".minimum_degC", method, *method.minimum));
    for (const AnsweredFigure& value : preheat.values)
        work.push_back(value_working(member_path("values", value.name), value));
    for (std::size_t i = 0; i < preheat.lowered_by.size(); ++i)
        work.push_back(
            taken(element_path("lowered_by", i) + ".K", {"dT", preheat.lowered_by[i].kelvin, "K"}));
    append(work, treatment_working(preheat));
    return work;
}

/// The wall and what goes by it.
std::vector<Working> wall_working(const WornBore& bore, const BoreWeld& weld, const BoreHeat& heat) {
    if (!heat.wall)
        return {};
    const Length wall = *heat.wall;
    const bool given = heat.wall_is_given;
    std::vector<Working> work =
        worked(inputs_of(in_mm("d", wall), in_mm("D", bore.boss_diameter.value_or(Length())),
                         in_mm("r_s", weld.build.skim_radius)),
               {{"wall_mm", given ? "1*d" : "D/2 - r_s", in_mm(wall), given ? "job" : "own"},
                {"measuring_distance_mm", wall > millimetres(50) ? "75 + 0*d" : "min(4*d, 50)",
                 in_mm(measuring_distance(wall)), "ISO13916"},
                {"heated_zone_mm", "max(d, 3*25.4)", in_mm(heated_zone(wall)), "D1.1-zone"},
                {"equalising_s", "120*d/25", in_seconds(equalising_time(wall)), "ISO13916"}});
    if (!heat.cooling)
        return work;
    const auto add = [&](const char* figure, const char* formula, Amount value) {
        work.push_back(worked(
            figure, formula,
            inputs_of(in_deg_c("T", *heat.preheat.least()), in_kj_mm("Q", *heat.lowest), in_mm("d", wall)),
            std::move(value), "EN1011-2-D"));
    };
    add("t85_s",
        heat.cooling->is_thick ? "(6700 - 5*T)*Q*(1/(500 - T) - 1/(800 - T))"
                               : "(4300 - 4.3*T)*10^5*Q^2/d^2*(1/(500 - T)^2 - 1/(800 - T)^2)",
        in_seconds(heat.cooling->t85()));
    add("t85_transition_mm", "sqrt((4300 - 4.3*T)/(6700 - 5*T)*10^5*Q*(1/(500 - T) + 1/(800 - T)))",
        in_mm(heat.cooling->transition));
    return work;
}

} // namespace

std::vector<Working> heat_working(const WornBore& bore, const BoreWeld& weld, const BoreHeat& heat) {
    std::vector<Working> work = heat_inputs(heat);
    append(work, under("heat", preheat_working(heat.preheat)));
    append(work, under("heat", wall_working(bore, weld, heat)));
    if (heat.hardness)
        work.push_back(taken("heat.hardness_HV", {"HV", heat.hardness->vickers, "HV"}, "Yurioka1987"));
    if (heat.hydrogen_ml_100g)
        work.push_back(taken("heat.hydrogen_ml_100g", {"H", heat.hydrogen_ml_100g->value, "ml/100 g"},
                             heat.hydrogen_ml_100g->source));
    return work;
}

} // namespace ringfill
