#include <ringfill/boring/boring_working.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

std::vector<Working> speed_working(const WornBore& bore, const BoringPlan& plan) {
    const Length diameter = bore.finish_diameter;
    const Sourced<Speed>& cutting = plan.settings.cutting_speed;
    const Input on{"D", in_mm(diameter)};
    const Input turning{"n", in_rev_min(plan.bar.used)};
    const Input feed{"f", in_mm(plan.settings.feed.value)};
    return {rpm_working(plan.settings, plan.bar, diameter),
            worked("computed_rpm", "1000*v_c/(pi*D)", {{"v_c", in_m_min(cutting.value)}, on},
                   in_rev_min(plan.bar.computed), cutting.source),
            worked("cutting_speed_m_min", "pi*D*n/1000", {on, turning},
                   in_m_min(cutting_speed_at(plan.bar.used, diameter))),
            taken("feed_mm", feed, plan.settings.feed.source),
            worked("feed_mm_min", "f*n", {feed, turning},
                   in_mm_min(feed_rate(plan.settings.feed.value, plan.bar.used)))};
}

std::vector<Working> stock_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan) {
    const Input bored{"D_b", in_mm(plan.final_diameter)};
    const Input end{"r_end", in_mm(weld.layering.end_radius)};
    const Input valley{"delta", in_mm(weld.bead.valley)};
    const Input length{"L", in_mm(bore.length)};
    const Length radius = plan.final_diameter / 2.0;
    std::vector<Working> work = {
        worked("stock_mm", "D_b/2 - r_end + delta", {bored, end, valley}, in_mm(radius - plan.crown_radius)),
        worked("valley_stock_mm", "D_b/2 - r_end - delta", {bored, end, valley},
               in_mm(radius - plan.valley_radius))};
    if (plan.settings.stroke)
        work.push_back(worked("set_ups", "ceil((L + 2*o)/stroke - 1e-9)",
                              {length, {"o", in_mm(bore.overhang)}, {"stroke", in_mm(*plan.settings.stroke)}},
                              plan.set_ups));
    else
        work.push_back(worked("set_ups", "1 + 0*L", {length}, 1));
    return work;
}

std::vector<Working> grooves_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan) {
    const Input finish{"r_f", in_mm(weld.build.finish_radius)};
    const Input left{"w", in_mm(weld.build.finished_weld)};
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.grooves.size(); ++i) {
        const GrooveCut& cut = plan.grooves[i];
        const Input floor{"D_g", in_mm(bore.grooves[cut.groove].diameter)};
        append(work, under(element_path("grooves", i),
                           {taken("diameter_mm", floor, "job"),
                            worked("depth_mm", "D_g/2 - r_f", {floor, finish}, in_mm(cut.depth)),
                            worked("weld_left_mm", "w - D_g/2 + r_f", {left, floor, finish},
                                   in_mm(cut.weld_left))}));
    }
    return work;
}

std::vector<Working> time_working(const BoringPlan& plan) {
    std::vector<double> all;
    std::vector<double> skim{0};
    std::vector<double> rough{0};
    std::vector<double> finish;
    for (const Cut& cut : plan.cuts) {
        all.push_back(cut.time.value());
        (is_last(cut.kind) ? finish : rough).push_back(cut.time.value());
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
    const Input life{"life", in_seconds(plan.edges.life)};
    const std::string& source = plan.settings.edge_life.source;
    const auto sum = [](const char* figure, const std::vector<double>& times, Time value) {
        return worked(figure, "sum(t)", {{"t", times, "s"}}, in_seconds(value));
    };
    return {sum("skim_s", skim, plan.skim_time),
            sum("cutting_s", all, plan.cutting_time),
            sum("standing_s", standing, plan.standing_time),
            worked("time_s", "t_cut + t_stand",
                   {{"t_cut", in_seconds(plan.cutting_time)}, {"t_stand", in_seconds(plan.standing_time)}},
                   in_seconds(plan.time())),
            worked("edges_rough", "ceil(sum(t)/life - 1e-9)", {{"t", rough, "s"}, life}, plan.edges.rough,
                   source),
            worked("edges_finish", "max(1, ceil(sum(t)/life - 1e-9))", {{"t", finish, "s"}, life},
                   plan.edges.finish, source),
            worked("edges", "k_rough + k_finish",
                   {{"k_rough", plan.edges.rough}, {"k_finish", plan.edges.finish}},
                   plan.edges.rough + plan.edges.finish)};
}

std::vector<Working> standing_working(const BoringPlan& plan) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.standing.size(); ++i) {
        const Standing& step = plan.standing[i];
        const double count = step.count;
        const auto figure = [&](const char* name, Time each, Time all, const std::string& source) {
            return worked(name, "60*k*t", {{"k", count}, {"t", each.value() / factor::minute, "min"}},
                          in_seconds(all), source);
        };
        const auto& [usual, range] = step.each;
        const auto& [low, high] = range.value;
        append(work,
               under(element_path("standing", i), {figure("time_s", usual.value, step.time(), usual.source),
                                                   figure("low_s", low, count * low, range.source),
                                                   figure("high_s", high, count * high, range.source)}));
    }
    return work;
}

std::vector<Working> size_working(const WornBore& bore, const BoringPlan& plan, const Cutting& cutting) {
    const Input nominal{"D", in_mm(bore.finish_diameter)};
    const Input feed{"f", in_mm(plan.settings.feed.value)};
    const Input nose{"r", in_mm(cutting.nose_radius.value)};
    std::vector<Working> work = {
        worked("roughness.rt_um", "1000*f^2/(8*r)", {feed, nose},
               {micrometres(plan.roughness.peak_to_valley), "um"}, cutting.nose_radius.source),
        worked("roughness.ra_um", "1000*f^2/(32*r)", {feed, nose}, {micrometres(plan.roughness.mean), "um"},
               cutting.nose_radius.source)};
    if (!plan.limits) {
        work.push_back(worked("final_diameter_mm", "1*D", {nominal}, in_mm(plan.final_diameter), "job"));
        return work;
    }
    const SizeLimits& limits = *plan.limits;
    const Input low{"D_min", in_mm(limits.low)};
    const Input high{"D_max", in_mm(limits.high)};
    work.push_back(worked("final_diameter_mm", "min(max(D, D_min), D_max)", {nominal, low, high},
                          in_mm(plan.final_diameter)));
    if (limits.size_class.empty()) {
        append(work, {taken("limits_mm[0]", low, "job"), taken("limits_mm[1]", high, "job")});
        return work;
    }
    const Input lower{"EI", limits.lower_um, "um"};
    work.push_back(worked("limits_mm[0]", "D + EI/1000", {nominal, lower}, in_mm(limits.low), limits.source));
    work.push_back(worked("limits_mm[1]", "D + (EI + IT)/1000",
                          {nominal, lower, {"IT", limits.tolerance_um, "um"}}, in_mm(limits.high),
                          limits.source));
    return work;
}

std::vector<Working> gauge_working(const BoringPlan& plan) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.gauge.size(); ++i) {
        const GaugeReading& gauge = plan.gauge[i];
        const Input at{"T", in_deg_c(gauge.at)};
        std::vector<Working> of_reading = {taken("at_degC", at, gauge.source),
                                           worked("growth_mm", "alpha*D_b*(T - T_0)",
                                                  {{"alpha", plan.expansion.value, "1/K"},
                                                   {"D_b", in_mm(plan.final_diameter)},
                                                   at,
                                                   {"T_0", reference_temperature_degC, "degC"}},
                                                  in_mm(gauge.growth), plan.expansion.source)};
        const auto reading = [&](const char* name, Length size) {
            of_reading.push_back(worked(name, "D + g", {{"D", in_mm(size)}, {"g", in_mm(gauge.growth)}},
                                        in_mm(size + gauge.growth)));
        };
        reading("reading_mm", plan.final_diameter);
        if (plan.limits) {
            reading("low_mm", plan.limits->low);
            reading("high_mm", plan.limits->high);
        }
        append(work, under(element_path("gauge", i), std::move(of_reading)));
    }
    return work;
}

} // namespace

Working rpm_working(const BarSettings& settings, const BarSpeed& bar, Length diameter) {
    const Input cutting{"v_c", in_m_min(settings.cutting_speed.value)};
    const Input on{"D", in_mm(diameter)};
    const Amount used = in_rev_min(bar.used);
    if (!bar.listed)
        return worked("rpm", "1000*v_c/(pi*D)", {cutting, on}, used, settings.cutting_speed.source);
    const Input speeds{
        "n", settings.bar_speeds | ranges::views::transform(rev_min) | ranges::to<std::vector>(), "rev/min"};
    if (bar.too_fast)
        return worked("rpm", "lowest(n)", {speeds}, used, "job");
    return worked("rpm", "highest(n*floor(min(1000*v_c/(pi*D)/n, 1) + 1e-9))", {speeds, cutting, on}, used,
                  "job");
}

std::vector<Working> boring_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan,
                                    const Cutting& cutting) {
    std::vector<Working> work = speed_working(bore, plan);
    append(work, stock_working(bore, weld, plan));
    append(work, grooves_working(bore, weld, plan));
    append(work, cuts_working(bore, weld, plan, cutting));
    append(work, time_working(plan));
    append(work, standing_working(plan));
    append(work, size_working(bore, plan, cutting));
    append(work, gauge_working(plan));
    return under("boring", std::move(work));
}

} // namespace ringfill
