#include <ringfill/heat/heat_working.hpp>

#include <algorithm>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/heat/measuring_point.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr std::string_view in_celsius = "degC";

Working heat_input_working(std::string figure, const BoreHeat& heat, Speed travel, EnergyPerLength value) {
    return {std::move(figure),
            "k*U*I*60/(1000*v)",
            {{"k", heat.thermal_efficiency},
             {"U", heat.voltage->value(), "V"},
             {"I", heat.current->value(), "A"},
             {"v", mm_min(travel), "mm/min"}},
            kj_mm(value),
            "kJ/mm",
            "EN1011-1"};
}

Working lowest_of(std::string figure, const std::vector<double>& all) {
    return {std::move(figure), "lowest(Q)", {{"Q", all, "kJ/mm"}}, *std::min_element(all.begin(), all.end()),
            "kJ/mm",           "own"};
}

std::vector<Working> heat_inputs(Speed travel, const std::vector<FacePad>& faces,
                                 const std::vector<GrooveFill>& grooves, const BoreHeat& heat) {
    std::vector<Working> work;
    if (!heat.bore)
        return work;
    work.push_back(heat_input_working("heat.heat_input_kj_mm.bore", heat, travel, *heat.bore));
    std::vector<double> all;
    for (std::size_t i = 0; i < heat.faces.size(); ++i) {
        all.push_back(kj_mm(heat.faces[i]));
        work.push_back(heat_input_working(element_path("faces", i) + ".heat_input_kj_mm", heat,
                                          faces[i].bead.travel, heat.faces[i]));
    }
    if (!all.empty())
        work.push_back(lowest_of("heat.heat_input_kj_mm.face", all));
    all.clear();
    for (std::size_t i = 0; i < heat.grooves.size(); ++i)
        if (heat.grooves[i]) {
            all.push_back(kj_mm(*heat.grooves[i]));
            work.push_back(heat_input_working(element_path("grooves", i) + ".heat_input_kj_mm", heat,
                                              grooves[i].travel, *heat.grooves[i]));
        }
    if (!all.empty())
        work.push_back(lowest_of("heat.heat_input_kj_mm.groove", all));
    return work;
}

/// A temperature with the formula it was worked out by, or as its source prints it.
Working temperature_working(std::string figure, Temperature value, const std::string& formula,
                            const std::vector<Input>& inputs, const std::string& source) {
    if (!formula.empty())
        return {std::move(figure), formula, inputs, deg_c(value), std::string(in_celsius), source};
    return {std::move(figure),       "T - 273.15", {{"T", value.value(), "K"}}, deg_c(value),
            std::string(in_celsius), source};
}

Working asked_working(std::string figure, const AskedTemperature& asked) {
    return temperature_working(std::move(figure), asked.value, asked.formula, asked.inputs, asked.source);
}

/// The unit that the name of a value ends in, as people write it.
std::string unit_of(const std::string& name) {
    if (name.ends_with("_K_per_h"))
        return "K/h";
    if (name.ends_with("_pct"))
        return "%";
    return name.substr(name.rfind('_') + 1);
}

Working value_working(std::string figure, const AnsweredFigure& value) {
    const std::string unit = unit_of(value.name);
    if (!value.formula.empty())
        return {std::move(figure), value.formula, value.inputs, value.number, unit, value.source};
    return {std::move(figure), "1*x", {{"x", value.number, unit}}, value.number, unit, value.source};
}

std::vector<Working> preheat_working(const Preheat& preheat) {
    std::vector<Working> work;
    if (preheat.minimum)
        work.push_back(asked_working("preheat_min_degC", *preheat.minimum));
    if (preheat.interpass_max)
        work.push_back(asked_working("interpass_max_degC", *preheat.interpass_max));
    if (preheat.post_heat) {
        const double seconds = preheat.post_heat->time.value();
        work.push_back(asked_working("post_heat_degC", preheat.post_heat->temperature));
        work.push_back(preheat.post_heat->is_approved
                           ? Working{"post_heat_s", "1*t", {{"t", seconds, "s"}}, seconds, "s", "approved"}
                           : value_working("post_heat_s", preheat.post_heat->time_working));
    }
    for (std::size_t i = 0; i < preheat.methods.size(); ++i)
        if (const PreheatMethod& method = preheat.methods[i]; method.minimum)
            work.push_back(temperature_working(element_path("methods", i) + ".minimum_degC", *method.minimum,
                                               method.formula, method.inputs, method.source));
    for (const AnsweredFigure& value : preheat.values)
        work.push_back(value_working(member_path("values", value.name), value));
    return work;
}

std::vector<Working> wall_working(const WornBore& bore, const Build& build, const BoreHeat& heat) {
    if (!heat.wall)
        return {};
    const double d = mm(*heat.wall);
    const Input wall{"d", d, "mm"};
    return {heat.wall_is_given
                ? Working{"wall_mm", "1*d", {wall}, d, "mm", "job"}
                : Working{"wall_mm",
                          "D/2 - r_s",
                          {{"D", mm(*bore.boss_diameter), "mm"}, {"r_s", mm(build.skim_radius), "mm"}},
                          d,
                          "mm",
                          "own"},
            d > 50 ? Working{"measuring_distance_mm", "75 + 0*d", {wall}, 75, "mm", "ISO13916"}
                   : Working{"measuring_distance_mm",
                             "min(4*d, 50)",
                             {wall},
                             mm(measuring_distance(*heat.wall)),
                             "mm",
                             "ISO13916"},
            {"heated_zone_mm", "max(d, 3*25.4)", {wall}, mm(heated_zone(*heat.wall)), "mm", "D1.1-zone"},
            {"equalising_s", "120*d/25", {wall}, equalising_time(*heat.wall).value(), "s", "ISO13916"}};
}

std::vector<Working> cooling_working(const BoreHeat& heat) {
    if (!heat.cooling)
        return {};
    const std::vector<Input> inputs{{"T", deg_c(heat.preheat.minimum->value), "degC"},
                                    {"Q", kj_mm(*heat.lowest), "kJ/mm"},
                                    {"d", mm(*heat.wall), "mm"}};
    return {{"t85_s",
             heat.cooling->is_thick ? "(6700 - 5*T)*Q*(1/(500 - T) - 1/(800 - T))"
                                    : "(4300 - 4.3*T)*10^5*Q^2/d^2*(1/(500 - T)^2 - 1/(800 - T)^2)",
             inputs, heat.cooling->t85().value(), "s", "EN1011-2-D"},
            {"t85_transition_mm", "sqrt((4300 - 4.3*T)/(6700 - 5*T)*10^5*Q*(1/(500 - T) + 1/(800 - T)))",
             inputs, mm(heat.cooling->transition), "mm", "EN1011-2-D"}};
}

} // namespace

std::vector<Working> heat_working(const WornBore& bore, const Build& build, Speed travel,
                                  const std::vector<FacePad>& faces, const std::vector<GrooveFill>& grooves,
                                  const BoreHeat& heat) {
    std::vector<Working> work = heat_inputs(travel, faces, grooves, heat);
    append(work, under("heat", preheat_working(heat.preheat)));
    append(work, under("heat", wall_working(bore, build, heat)));
    append(work, under("heat", cooling_working(heat)));
    if (heat.hydrogen_ml_100g)
        work.push_back({"heat.hydrogen_ml_100g",
                        "1*H",
                        {{"H", heat.hydrogen_ml_100g->value, "ml/100 g"}},
                        heat.hydrogen_ml_100g->value,
                        "ml/100 g",
                        heat.hydrogen_ml_100g->source});
    return work;
}

} // namespace ringfill
