#include <ringfill/report/json/boring_json.hpp>

#include <string>

#include <ringfill/boring/bar.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

Value cut_list(const BoringPlan& boring) {
    Value::List list;
    for (const Cut& cut : boring.cuts)
        list.push_back(Value::Object{{"kind", std::string(name_of(cut.kind))},
                                     {"depth_mm", mm(cut.depth)},
                                     {"diameter_from_mm", mm(cut.from)},
                                     {"diameter_to_mm", mm(cut.to)},
                                     {"rpm", rev_min(boring.bar.used)},
                                     {"feed_mm", mm(boring.settings.feed.value)},
                                     {"time_s", cut.time.value()}});
    return list;
}

Value facing_list(const BoringPlan& boring) {
    Value::List list;
    for (const Facing& face : boring.facing)
        list.push_back(Value::Object{{"depth_mm", mm(face.depth)},
                                     {"cuts", static_cast<double>(face.cuts)},
                                     {"rpm", rev_min(face.bar.used)},
                                     {"feed_mm", mm(face.feed)},
                                     {"time_s", face.time.value()}});
    return list;
}

Value groove_list(const BorePlan& bore) {
    Value::List list;
    for (const GrooveCut& groove : bore.boring.grooves)
        list.push_back(Value::Object{{"diameter_mm", 2.0 * mm(bore.build.finish_radius + groove.depth)},
                                     {"depth_mm", mm(groove.depth)},
                                     {"weld_left_mm", mm(groove.weld_left)}});
    return list;
}

Value standing_list(const BoringPlan& boring) {
    Value::List list;
    for (const Standing& step : boring.standing)
        list.push_back(Value::Object{{"step", std::string(step.step)},
                                     {"count", static_cast<double>(step.count)},
                                     {"time_s", step.time().value()},
                                     {"low_s", step.count * step.each.range.value.first.value()},
                                     {"high_s", step.count * step.each.range.value.second.value()}});
    return list;
}

Value gauge_list(const BoringPlan& boring) {
    Value::List list;
    for (const GaugeReading& gauge : boring.gauge) {
        Value::Object object{
            {"at_degC", deg_c(gauge.at)}, {"growth_mm", mm(gauge.growth)}, {"reading_mm", mm(gauge.reading)}};
        if (gauge.limits) {
            object.push_back({"low_mm", mm(gauge.limits->first)});
            object.push_back({"high_mm", mm(gauge.limits->second)});
        }
        list.push_back(std::move(object));
    }
    return list;
}

} // namespace

Value boring_object(const BorePlan& bore) {
    const BoringPlan& boring = bore.boring;
    const Length radius = boring.final_diameter / 2.0;
    const Speed cut_at = cutting_speed_at(boring.bar.used, 2.0 * bore.build.finish_radius);
    Value::Object object{{"rpm", rev_min(boring.bar.used)},
                         {"computed_rpm", rev_min(boring.bar.computed)},
                         {"cutting_speed_m_min", m_min(cut_at)},
                         {"feed_mm", mm(boring.settings.feed.value)},
                         {"feed_mm_min", mm_min(feed_rate(boring.settings.feed.value, boring.bar.used))},
                         {"set_ups", static_cast<double>(boring.set_ups)},
                         {"stock_mm", mm(radius - boring.crown_radius)},
                         {"valley_stock_mm", mm(radius - boring.valley_radius)},
                         {"final_diameter_mm", mm(boring.final_diameter)}};
    if (boring.limits) {
        if (!boring.limits->size_class.empty())
            object.push_back({"size_class", boring.limits->size_class});
        object.push_back({"limits_mm", Value::List{mm(boring.limits->low), mm(boring.limits->high)}});
    }
    object.push_back({"cuts", cut_list(boring)});
    if (!boring.facing.empty())
        object.push_back({"facing", facing_list(boring)});
    if (!boring.grooves.empty())
        object.push_back({"grooves", groove_list(bore)});
    object.push_back({"standing", standing_list(boring)});
    object.push_back({"skim_s", boring.skim_time.value()});
    object.push_back({"cutting_s", boring.cutting_time.value()});
    object.push_back({"standing_s", boring.standing_time.value()});
    object.push_back({"time_s", boring.time().value()});
    object.push_back({"edges", static_cast<double>(boring.edges.rough + boring.edges.finish)});
    object.push_back({"edges_rough", static_cast<double>(boring.edges.rough)});
    object.push_back({"edges_finish", static_cast<double>(boring.edges.finish)});
    object.push_back({"roughness", Value::Object{{"rt_um", micrometres(boring.roughness.peak_to_valley)},
                                                 {"ra_um", micrometres(boring.roughness.mean)}}});
    object.push_back({"gauge", gauge_list(boring)});
    return object;
}

} // namespace ringfill
