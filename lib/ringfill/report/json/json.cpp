#include <ringfill/report/json/json.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/report/json/boring_json.hpp>
#include <ringfill/report/json/cautions_json.hpp>
#include <ringfill/report/json/day_json.hpp>
#include <ringfill/report/json/heat_json.hpp>
#include <ringfill/report/json/metals_json.hpp>
#include <ringfill/report/json/quote_json.hpp>
#include <ringfill/report/json/time_json.hpp>
#include <ringfill/report/json/working_json.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

template <class Range, class Make>
Value list_of(const Range& range, Make make) {
    return Value(range | ranges::views::transform(make) | ranges::to<Value::List>());
}

Value survey_object(const Survey& survey) {
    return Value::Object{{"largest_radius_mm", mm(survey.largest.radius)},
                         {"largest_radius_clock_deg", degrees(survey.largest.clock)},
                         {"smallest_radius_mm", mm(survey.smallest.radius)},
                         {"smallest_radius_clock_deg", degrees(survey.smallest.clock)},
                         {"worn_volume_mm3", mm3(survey.worn_volume)}};
}

Value build_object(const BorePlan& bore) {
    const Build& build = bore.build;
    Value::Object object{{"skim_diameter_mm", mm(2.0 * build.skim_radius)},
                         {"skim_volume_mm3", mm3(build.skim_volume)}};
    if (build.wall)
        object.push_back({"wall_mm", mm(*build.wall)});
    object.push_back({"weld_to_diameter_mm", mm(2.0 * build.weld_to_radius)});
    object.push_back({"build_mm", mm(build.build)});
    object.push_back({"ring_volume_mm3", mm3(build.ring_volume)});
    object.push_back({"finished_weld_mm", mm(build.finished_weld)});
    if (!build.skimmed)
        object.push_back({"finished_weld_clock_deg", degrees(build.finished_weld_clock)});
    object.push_back({"extra_stock_mm", mm(build.weld_to_radius - bore.layering.end_radius)});
    return object;
}

Value bead_object(const Bead& bead) {
    return Value::Object{{"section_mm2", mm2(bead.section)},    {"width_mm", mm(bead.width)},
                         {"crown_mm", mm(bead.crown)},          {"pitch_mm", mm(bead.pitch)},
                         {"valley_mm", mm(bead.valley)},        {"scale", bead.scale},
                         {"travel_mm_min", mm_min(bead.travel)}};
}

Value layer_list(const std::vector<Layer>& layers) {
    Value::List list;
    for (std::size_t i = 0; i < layers.size(); ++i) {
        const Layer& layer = layers[i];
        list.push_back(Value::Object{{"layer", static_cast<double>(i + 1)},
                                     {"radius_before_mm", mm(layer.radius_before)},
                                     {"radius_after_mm", mm(layer.radius_after)},
                                     {"rings", static_cast<double>(layer.rings)},
                                     {"path_mm", mm(layer.path)},
                                     {"laid_kg", layer.laid.value()},
                                     {"arc_s", layer.arc.value()},
                                     {"torch_rpm", rev_min(layer.torch)}});
    }
    return list;
}

Value face_object(const FacePad& face, const std::optional<EnergyPerLength>& heat_input) {
    Value::Object object{{"layers", static_cast<double>(face.layers)},
                         {"rings", static_cast<double>(face.rings)},
                         {"scale", face.bead.scale},
                         {"extra_build_mm", mm(face.extra_build)},
                         {"pitch_mm", mm(face.bead.pitch)},
                         {"travel_mm_min", mm_min(face.bead.travel)},
                         {"torch_first_rpm", rev_min(face.first_torch())},
                         {"torch_last_rpm", rev_min(face.last_torch())},
                         {"path_mm", mm(face.path)},
                         {"laid_kg", face.laid.value()},
                         {"arc_s", face.arc.value()}};
    if (heat_input)
        object.push_back({"heat_input_kj_mm", kj_mm(*heat_input)});
    return object;
}

Value groove_object(const GrooveFill& groove, const std::optional<EnergyPerLength>& heat_input) {
    Value::Object object{{"volume_mm3", mm3(groove.volume)},
                         {"path_mm", mm(groove.path)},
                         {"laid_kg", groove.laid.value()},
                         {"arc_s", groove.arc.value()}};
    if (groove.volume > Volume()) {
        object.push_back({"travel_mm_min", mm_min(groove.travel)});
        object.push_back({"torch_rpm", rev_min(groove.torch)});
    }
    if (heat_input)
        object.push_back({"heat_input_kj_mm", kj_mm(*heat_input)});
    return object;
}

Value face_list(const BorePlan& bore) {
    Value::List list;
    for (std::size_t i = 0; i < bore.faces.size(); ++i)
        list.push_back(
            face_object(bore.faces[i], bore.heat.bore ? std::optional(bore.heat.faces[i]) : std::nullopt));
    return list;
}

Value groove_list(const BorePlan& bore) {
    Value::List list;
    for (std::size_t i = 0; i < bore.grooves.size(); ++i)
        list.push_back(groove_object(bore.grooves[i], bore.heat.bore ? bore.heat.grooves[i] : std::nullopt));
    return list;
}

Value metal_object(const BorePlan& bore) {
    Value::Object object{{"laid_kg", bore.metal.laid.value()}};
    if (bore.metal.kept > Mass()) {
        object.push_back({"kept_kg", bore.metal.kept.value()});
        object.push_back({"kept_share", bore.metal.kept_share});
    }
    if (bore.deposition.piece) {
        object.push_back({"pieces", static_cast<double>(bore.metal.pieces)});
        object.push_back({"filler_kg", bore.metal.wire.value()});
    } else {
        object.push_back({"wire_kg", bore.metal.wire.value()});
    }
    object.push_back({"arc_s", bore.metal.arc.value()});
    object.push_back({"starts", static_cast<double>(bore.metal.starts)});
    object.push_back({"deposition_kg_h", kg_h(bore.deposition.rate)});
    return object;
}

Value bore_object(const BorePlan& bore) {
    Value::Object object{{"name", bore.name},
                         {"count", static_cast<double>(bore.count)},
                         {"procedure", bore.procedure},
                         {"survey", survey_object(bore.survey)},
                         {"build", build_object(bore)},
                         {"bead", bead_object(bore.bead)},
                         {"layers", layer_list(bore.layers)}};
    if (!bore.faces.empty())
        object.push_back({"faces", face_list(bore)});
    if (!bore.grooves.empty())
        object.push_back({"grooves", groove_list(bore)});
    object.push_back({"metal", metal_object(bore)});
    put_metals(object, bore);
    Value heat = heat_object(bore.heat);
    if (bore.heat_balance)
        put_balance(std::get<Value::Object>(heat.held), *bore.heat_balance);
    object.push_back({"heat", std::move(heat)});
    if (bore.heat_balance)
        object.push_back({"time", time_object(bore)});
    object.push_back({"boring", boring_object(bore)});
    return object;
}

Value need_object(const Need& line, UnitSystem units) {
    const auto packs = [](const PackCount& pack) -> Value {
        return Value::Object{{"pack", pack.pack}, {"count", static_cast<double>(pack.count)}};
    };
    Value::Object object{{"item", item_text(line, units)},
                         {"need", line.need},
                         {"reserve", line.reserve},
                         {"unit", unit_text(unit_of(line.kind))},
                         {"cover", list_of(line.cover, packs)}};
    if (line.pack_known) {
        object.push_back({"supplied", line.supplied});
        object.push_back({"spare", line.spare});
    }
    object.push_back({"why", line.why});
    object.push_back({"source", line.source});
    object.push_back({"id", need_id(line)});
    return object;
}

Value assumed_object(const Assumed& value) {
    return Value::Object{{"field", value.path}, {"value", value.value}, {"source", value.source}};
}

Value totals_object(const Plan& plan) {
    Value::Object object{{"laid_kg", plan.totals.laid.value()}};
    if (plan.totals.wire > Mass())
        object.push_back({"wire_kg", plan.totals.wire.value()});
    if (plan.totals.pieces > 0) {
        object.push_back({"pieces", static_cast<double>(plan.totals.pieces)});
        object.push_back({"pieces_kg", plan.totals.piece_mass.value()});
    }
    object.push_back({"arc_s", plan.totals.arc.value()});
    object.push_back({"gas_l", litres(plan.totals.gas)});
    if (plan.day)
        object.push_back({"elapsed_s", plan.day->day.ends.value()});
    return object;
}

/// All but the workings.
Value::Object plan_head(const Plan& plan) {
    Value::Object object{{"format", "ringfill-plan/1"}, {"title", plan.title}};
    object.push_back({"bores", list_of(plan.bores, bore_object)}); // moved; in the braces it would be copied
    object.push_back({"totals", totals_object(plan)});
    if (plan.day)
        object.push_back({"day", day_object(*plan.day)});
    object.push_back({"fire_watch", fire_watch_object(plan.fire_watch)});
    object.push_back(
        {"take", list_of(plan.take, [&](const Need& line) { return need_object(line, plan.units); })});
    if (plan.quote)
        object.push_back({"quote", quote_object(*plan.quote)});
    object.push_back({"cautions", list_of(plan.cautions, caution_object)});
    object.push_back({"notes", list_of(plan.notes, [](const std::string& note) { return Value(note); })});
    object.push_back({"assumed", list_of(plan.assumed, assumed_object)});
    object.push_back({"sources", sources_object(plan.sources)});
    return object;
}

} // namespace

Value plan_document(const Plan& plan) {
    Value::Object object = plan_head(plan);
    object.push_back({"working", working_list(plan.working)});
    return object;
}

std::string plan_line(const Plan& plan) {
    std::string line;
    append_json(line, plan_head(plan));
    line.pop_back();                           // the bracket that ends it
    constexpr std::size_t usual_working = 400; // bytes, so that the line grows but once
    line.reserve(line.size() + plan.working.size() * usual_working);
    {
        TextEnd out(line);
        out.put(",\"working\":");
        put_working_list(out, plan.working);
        out.put("}\n");
    }
    return line;
}

} // namespace ringfill
