#include <ringfill/heat/bore_heat.hpp>

#include <algorithm>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

Working lowest_of(std::string figure, const std::vector<double>& all) {
    return worked(std::move(figure), "lowest(Q)", {{"Q", all, "kJ/mm"}},
                  {*std::min_element(all.begin(), all.end()), "kJ/mm"});
}

std::vector<Working> heat_inputs(Speed travel, const std::vector<FacePad>& faces,
                                 const std::vector<GrooveFill>& grooves, const BoreHeat& heat) {
    std::vector<Working> work;
    if (!heat.bore)
        return work;
    const auto laid = [&](std::string figure, Speed at, EnergyPerLength value) {
        work.push_back(worked(std::move(figure), "k*U*I*60/(1000*v)",
                              {{"k", heat.thermal_efficiency},
                               {"U", heat.voltage->value(), "V"},
                               {"I", heat.current->value(), "A"},
                               {"v", in_mm_min(at)}},
                              in_kj_mm(value), "EN1011-1"));
        return kj_mm(value);
    };
    laid("heat.heat_input_kj_mm.bore", travel, *heat.bore);
    std::vector<double> all;
    for (std::size_t i = 0; i < heat.faces.size(); ++i)
        all.push_back(
            laid(element_path("faces", i) + ".heat_input_kj_mm", faces[i].bead.travel, heat.faces[i]));
    if (!all.empty())
        work.push_back(lowest_of("heat.heat_input_kj_mm.face", all));
    all.clear();
    for (std::size_t i = 0; i < heat.grooves.size(); ++i)
        if (heat.grooves[i])
            all.push_back(
                laid(element_path("grooves", i) + ".heat_input_kj_mm", grooves[i].travel, *heat.grooves[i]));
    if (!all.empty())
        work.push_back(lowest_of("heat.heat_input_kj_mm.groove", all));
    return work;
}

/// A temperature with the formula it was worked out by, or as its source prints it.
Working temperature_working(std::string figure, Temperature value, const std::string& formula,
                            const std::vector<Input>& inputs, const std::string& source) {
    return formula.empty()
               ? worked(std::move(figure), "T - 273.15", {{"T", value.value(), "K"}}, in_deg_c(value), source)
               : worked(std::move(figure), formula, inputs, in_deg_c(value), source);
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
    const Amount amount{value.number, unit_of(value.name)};
    return value.formula.empty()
               ? taken(std::move(figure), {"x", amount}, value.source)
               : worked(std::move(figure), value.formula, value.inputs, amount, value.source);
}

std::vector<Working> preheat_working(const Preheat& preheat) {
    std::vector<Working> work;
    if (const auto minimum = preheat.figure())
        work.push_back(asked_working("preheat_min_degC", *minimum));
    if (preheat.interpass_max)
        work.push_back(asked_working("interpass_max_degC", *preheat.interpass_max));
    if (preheat.post_heat) {
        work.push_back(asked_working("post_heat_degC", preheat.post_heat->temperature));
        work.push_back(preheat.post_heat->is_approved
                           ? taken("post_heat_s", {"t", in_seconds(preheat.post_heat->time)}, "approved")
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
    const Input wall{"d", in_mm(*heat.wall)};
    return {heat.wall_is_given
                ? taken("wall_mm", wall, "job")
                : worked("wall_mm", "D/2 - r_s",
                         {{"D", in_mm(*bore.boss_diameter)}, {"r_s", in_mm(build.skim_radius)}},
                         in_mm(*heat.wall)),
            worked("measuring_distance_mm", wall.value > 50 ? "75 + 0*d" : "min(4*d, 50)", {wall},
                   in_mm(measuring_distance(*heat.wall)), "ISO13916"),
            worked("heated_zone_mm", "max(d, 3*25.4)", {wall}, in_mm(heated_zone(*heat.wall)), "D1.1-zone"),
            worked("equalising_s", "120*d/25", {wall}, in_seconds(equalising_time(*heat.wall)), "ISO13916")};
}

std::vector<Working> cooling_working(const BoreHeat& heat) {
    if (!heat.cooling)
        return {};
    const std::vector<Input> inputs{
        {"T", in_deg_c(*heat.preheat.least())}, {"Q", in_kj_mm(*heat.lowest)}, {"d", in_mm(*heat.wall)}};
    return {worked("t85_s",
                   heat.cooling->is_thick ? "(6700 - 5*T)*Q*(1/(500 - T) - 1/(800 - T))"
                                          : "(4300 - 4.3*T)*10^5*Q^2/d^2*(1/(500 - T)^2 - 1/(800 - T)^2)",
                   inputs, in_seconds(heat.cooling->t85()), "EN1011-2-D"),
            worked("t85_transition_mm",
                   "sqrt((4300 - 4.3*T)/(6700 - 5*T)*10^5*Q*(1/(500 - T) + 1/(800 - T)))", inputs,
                   in_mm(heat.cooling->transition), "EN1011-2-D")};
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
        work.push_back(taken("heat.hydrogen_ml_100g", {"H", heat.hydrogen_ml_100g->value, "ml/100 g"},
                             heat.hydrogen_ml_100g->source));
    return work;
}

} // namespace ringfill
