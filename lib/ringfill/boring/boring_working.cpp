#include <ringfill/boring/boring_working.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/boring/cutting_time.hpp>
#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

double minutes(Time time) {
    return time.value() / factor::minute;
}

std::vector<Working> speed_working(const WeldedBore& welded, const BoringPlan& plan) {
    const Length diameter = welded.bore.finish_diameter;
    const Input turning{"n", rev_min(plan.bar.used), "rev/min"};
    const Input feed{"f", mm(plan.settings.feed.value), "mm"};
    return {rpm_working(plan.settings, plan.bar, diameter),
            {"computed_rpm",
             "1000*v_c/(pi*D)",
             {{"v_c", m_min(plan.settings.cutting_speed.value), "m/min"}, {"D", mm(diameter), "mm"}},
             rev_min(plan.bar.computed),
             "rev/min",
             plan.settings.cutting_speed.source},
            {"cutting_speed_m_min",
             "pi*D*n/1000",
             {{"D", mm(diameter), "mm"}, turning},
             m_min(cutting_speed_at(plan.bar.used, diameter)),
             "m/min",
             "own"},
            {"feed_mm", "1*f", {feed}, mm(plan.settings.feed.value), "mm", plan.settings.feed.source},
            {"feed_mm_min",
             "f*n",
             {feed, turning},
             mm_min(feed_rate(plan.settings.feed.value, plan.bar.used)),
             "mm/min",
             "own"}};
}

std::vector<Working> stock_working(const WeldedBore& welded, const BoringPlan& plan) {
    const Input bored{"D_b", mm(plan.final_diameter), "mm"};
    const Input end{"r_end", mm(welded.end_radius), "mm"};
    const Input valley{"delta", mm(welded.valley), "mm"};
    const Input length{"L", mm(welded.bore.length), "mm"};
    const Length radius = plan.final_diameter / 2.0;
    std::vector<Working> work = {{"stock_mm",
                                  "D_b/2 - r_end + delta",
                                  {bored, end, valley},
                                  mm(radius - plan.crown_radius),
                                  "mm",
                                  "own"},
                                 {"valley_stock_mm",
                                  "D_b/2 - r_end - delta",
                                  {bored, end, valley},
                                  mm(radius - plan.valley_radius),
                                  "mm",
                                  "own"}};
    if (plan.settings.stroke)
        work.push_back(
            {"set_ups",
             "ceil((L + 2*o)/stroke - 1e-9)",
             {length, {"o", mm(welded.bore.overhang), "mm"}, {"stroke", mm(*plan.settings.stroke), "mm"}},
             static_cast<double>(plan.set_ups),
             "",
             "own"});
    else
        work.push_back({"set_ups", "1 + 0*L", {length}, 1, "", "own"});
    for (std::size_t i = 0; i < plan.grooves.size(); ++i) {
        const GrooveCut& cut = plan.grooves[i];
        const Input floor{"D_g", mm(welded.bore.grooves[cut.groove].diameter), "mm"};
        const Input finish{"r_f", mm(welded.build.finish_radius), "mm"};
        append(work, under(element_path("grooves", i),
                           {{"diameter_mm", "1*D_g", {floor}, floor.value, "mm", "job"},
                            {"depth_mm", "D_g/2 - r_f", {floor, finish}, mm(cut.depth), "mm", "own"},
                            {"weld_left_mm",
                             "w - D_g/2 + r_f",
                             {{"w", mm(welded.build.finished_weld), "mm"}, floor, finish},
                             mm(cut.weld_left),
                             "mm",
                             "own"}}));
    }
    return work;
}

std::vector<Working> time_working(const BoringPlan& plan) {
    std::vector<double> all;
    std::vector<double> skim{0};
    std::vector<double> rough{0};
    std::vector<double> finish;
    for (const Cut& cut : plan.cuts) {
        const bool last = cut.kind == CutKind::finish || cut.kind == CutKind::spring;
        all.push_back(cut.time.value());
        (last ? finish : rough).push_back(cut.time.value());
        if (cut.kind == CutKind::skim)
            skim.push_back(cut.time.value());
    }
    for (const Facing& face : plan.facing) {
        all.push_back(face.time.value());
        rough.push_back(face.time.value());
    }
    const auto standing = plan.standing |
                          ranges::views::transform([](const Standing& one) { return one.time().value(); }) |
                          ranges::to<std::vector>();
    const Input life{"life", plan.edges.life.value(), "s"};
    return {{"skim_s", "sum(t)", {{"t", skim, "s"}}, plan.skim_time.value(), "s", "own"},
            {"cutting_s", "sum(t)", {{"t", all, "s"}}, plan.cutting_time.value(), "s", "own"},
            {"standing_s", "sum(t)", {{"t", standing, "s"}}, plan.standing_time.value(), "s", "own"},
            {"time_s",
             "t_cut + t_stand",
             {{"t_cut", plan.cutting_time.value(), "s"}, {"t_stand", plan.standing_time.value(), "s"}},
             plan.time().value(),
             "s",
             "own"},
            {"edges_rough",
             "ceil(sum(t)/life - 1e-9)",
             {{"t", rough, "s"}, life},
             static_cast<double>(plan.edges.rough),
             "",
             plan.settings.edge_life.source},
            {"edges_finish",
             "max(1, ceil(sum(t)/life - 1e-9))",
             {{"t", finish, "s"}, life},
             static_cast<double>(plan.edges.finish),
             "",
             plan.settings.edge_life.source},
            {"edges",
             "k_rough + k_finish",
             {{"k_rough", static_cast<double>(plan.edges.rough)},
              {"k_finish", static_cast<double>(plan.edges.finish)}},
             static_cast<double>(plan.edges.rough + plan.edges.finish),
             "",
             "own"}};
}

std::vector<Working> standing_working(const BoringPlan& plan) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.standing.size(); ++i) {
        const Standing& step = plan.standing[i];
        const auto figure = [&](const char* name, Time each, Time all, const std::string& source) {
            return Working{
                name,        "60*k*t", {{"k", static_cast<double>(step.count)}, {"t", minutes(each), "min"}},
                all.value(), "s",      source};
        };
        const double count = step.count;
        const auto& [low, high] = step.each.range.value;
        append(work, under(element_path("standing", i),
                           {figure("time_s", step.each.usual.value, step.time(), step.each.usual.source),
                            figure("low_s", low, count * low, step.each.range.source),
                            figure("high_s", high, count * high, step.each.range.source)}));
    }
    return work;
}

} // namespace

Working rpm_working(const BarSettings& settings, const BarSpeed& bar, Length diameter) {
    const Input cutting{"v_c", m_min(settings.cutting_speed.value), "m/min"};
    const Input on{"D", mm(diameter), "mm"};
    const double used = rev_min(bar.used);
    if (!bar.listed)
        return {"rpm", "1000*v_c/(pi*D)", {cutting, on}, used, "rev/min", settings.cutting_speed.source};
    const Input speeds{
        "n", settings.bar_speeds | ranges::views::transform(rev_min) | ranges::to<std::vector>(), "rev/min"};
    if (bar.too_fast)
        return {"rpm", "lowest(n)", {speeds}, used, "rev/min", "job"};
    return {
        "rpm", "highest(n*floor(min(1000*v_c/(pi*D)/n, 1) + 1e-9))", {speeds, cutting, on}, used, "rev/min",
        "job"};
}

std::vector<Working> boring_working(const WeldedBore& welded, const BoringPlan& plan,
                                    const Cutting& cutting) {
    std::vector<Working> work = speed_working(welded, plan);
    append(work, stock_working(welded, plan));
    append(work, cuts_working(welded, plan, cutting));
    append(work, facing_working(welded, plan, cutting));
    append(work, time_working(plan));
    append(work, standing_working(plan));
    append(work, size_working(welded, plan, cutting));
    append(work, gauge_working(plan));
    return under("boring", std::move(work));
}

} // namespace ringfill
