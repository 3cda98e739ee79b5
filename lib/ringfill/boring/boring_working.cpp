#include <ringfill/boring/bore_boring.hpp>

#include <range/v3/algorithm/count_if.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// What the figures of every cut, groove and size hang on.
std::vector<Input> common_inputs(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan) {
    const SizeLimits limits = plan.limits.value_or(SizeLimits());
    return inputs_of(
        in_mm("D", bore.finish_diameter), in_mm("D_b", plan.final_diameter), in_mm("D_min", limits.low),
        in_mm("D_max", limits.high), Input("EI", limits.lower_um, "um"),
        Input("IT", limits.tolerance_um, "um"), in_mm("L", bore.length), in_mm("o", bore.overhang),
        in_mm("s", bore.stock), in_mm("S", plan.final_diameter / 2.0 - plan.crown_radius),
        in_mm("stroke", plan.settings.stroke.value_or(Length())), in_mm("r_end", weld.layering.end_radius),
        in_mm("delta", weld.bead.valley), in_mm("r_f", weld.build.finish_radius),
        in_mm("r_s", weld.build.skim_radius), in_mm("r_min", weld.survey.smallest.radius),
        in_mm("r_c", plan.crown_radius), in_mm("w", weld.build.finished_weld),
        in_mm("a_r", plan.settings.rough_cut.value), in_mm("a_s", plan.settings.semi_finish_cut.value),
        in_mm("a_f", plan.settings.finish_cut.value), in_mm("r", plan.settings.nose_radius.value),
        in_mm("f", plan.settings.feed.value), in_m_min("v_c", plan.settings.cutting_speed.value),
        in_rev_min("n", plan.bar.used), Input("alpha", plan.expansion.value, "1/K"),
        Input("T_0", reference_temperature_degC, "degC"));
}

/// A speed of the bar on a diameter.
std::vector<Working> rpm_working(const BarSettings& settings, const Sourced<Speed>& cutting_speed,
                                 const BarSpeed& bar, Length diameter) {
    const char* formula = !bar.listed    ? "1000*v_c/(pi*D)"
                          : bar.too_fast ? "lowest(n)"
                                         : "highest(n*floor(min(1000*v_c/(pi*D)/n, 1) + 1e-9))";
    const auto speeds = settings.bar_speeds | ranges::views::transform(rev_min) | ranges::to<std::vector>();
    const auto& [speed, source] = cutting_speed;
    return worked({{"n", speeds, "rev/min"}, in_m_min("v_c", speed), in_mm("D", diameter)},
                  {{"rpm", formula, in_rev_min(bar.used), bar.listed ? "job" : source}});
}

/// Speed, feed and stock.
std::vector<Working> settings_working(const WornBore& bore, const BoringPlan& plan,
                                      const std::vector<Input>& common) {
    const BarSettings& settings = plan.settings;
    const Length radius = plan.final_diameter / 2.0;
    return worked(
        common,
        {{"computed_rpm", "1000*v_c/(pi*D)", in_rev_min(plan.bar.computed), settings.cutting_speed.source},
         {"cutting_speed_m_min", "pi*D*n/1000",
          in_m_min(cutting_speed_at(plan.bar.used, bore.finish_diameter))},
         {"feed_mm", "1*f", in_mm(settings.feed.value), settings.feed.source},
         {"feed_mm_min", "f*n", in_mm_min(feed_rate(settings.feed.value, plan.bar.used))},
         {"stock_mm", "D_b/2 - r_end + delta", in_mm(radius - plan.crown_radius)},
         {"valley_stock_mm", "D_b/2 - r_end - delta", in_mm(radius - plan.valley_radius)},
         {"set_ups", settings.stroke ? "ceil((L + 2*o)/stroke - 1e-9)" : "1 + 0*L", plan.set_ups}});
}

/// How deep one cut is; the first of the skim and the first after the weld take the remainder, or two rough
/// cuts, the first of which would be no whole one, share it.
WorkedFigure depth_figure(const BoringPlan& plan, std::size_t index) {
    const BarSettings& settings = plan.settings;
    const Cut& cut = plan.cuts[index];
    const std::string& rough = settings.rough_cut.source;
    const std::pair<const char*, std::string> ways[] = {
        {"(r_s - r_min)/k", "own"},
        {"S - a_f - a_s - (k - 1)*a_r", rough},
        {"1*a_r", rough},
        {"min(S - a_f, a_s)", settings.semi_finish_cut.source},
        {"min(S, a_f)", settings.finish_cut.source},
        {"0*a_f", "practice"}}; // as CutKind
    const auto& [formula, source] = ways[static_cast<std::size_t>(cut.kind)];
    if (settings.cuts_to_the_end() && cut.kind == CutKind::semi_finish &&
        cut.depth > (1 + 1e-9) * settings.semi_finish_cut.value)
        return {"depth_mm", "S - a_f", in_mm(cut.depth), source};
    if (settings.cuts_to_the_end() && cut.kind == CutKind::finish &&
        cut.depth > (1 + 1e-9) * settings.finish_cut.value)
        return {"depth_mm", "1*S", in_mm(cut.depth), source};
    const auto skin = ranges::find(plan.cuts, CutKind::skin, &Cut::kind);
    const auto after_skin = static_cast<std::ptrdiff_t>(index) - (skin - plan.cuts.begin());
    const bool shares = (after_skin == 0 || after_skin == 1) && skin[1].kind == CutKind::rough &&
                        skin[1].depth < settings.rough_cut.value;
    return {"depth_mm", shares ? "(S - a_f - a_s - (k - 2)*a_r)/2" : formula, in_mm(cut.depth), source};
}

/// One cut: its diameters begin where the cuts of its kind began, and those before it count.
std::vector<Working> cut_working(const BoringPlan& plan, std::size_t index, Length finish_diameter,
                                 const std::vector<Input>& common) {
    const Cut& cut = plan.cuts[index];
    const bool is_skim = cut.kind == CutKind::skim;
    std::vector<double> depths;
    for (std::size_t i = 0; i < index; ++i)
        if ((plan.cuts[i].kind == CutKind::skim) == is_skim)
            depths.push_back(mm(plan.cuts[i].depth));
    const auto alike = ranges::count_if(plan.cuts, [&](const Cut& one) {
        return is_skim ? one.kind == CutKind::skim : one.kind == CutKind::skin || one.kind == CutKind::rough;
    });
    const std::string start = is_skim ? "r_min" : "r_c";
    const std::string from = depths.empty() ? "2*" + start : "2*(" + start + " + sum(a))";
    std::vector<Working> work =
        worked({{"k", alike}, {"a", depths, "mm"}},
               {depth_figure(plan, index), {"diameter_from_mm", from, in_mm(cut.from)}}, common);
    const bool in_skin = is_skim || index == 0 || plan.cuts[index - 1].kind == CutKind::skim;
    append(work, rpm_working(plan.settings, in_skin ? plan.settings.skin_speed : plan.settings.cutting_speed,
                             cut.bar, finish_diameter));
    append(work, worked({{"D", in_mm(cut.from)}, {"a", in_mm(cut.depth)}, in_rev_min("n", cut.bar.used)},
                        {{"diameter_to_mm", "D + 2*a", in_mm(cut.to)},
                         {"feed_mm", "1*f", in_mm(plan.settings.feed.value), plan.settings.feed.source},
                         {"time_s", is_skim ? "60*L/(f*n)" : "60*(L + 2*o)/(f*n)", in_seconds(cut.time)}},
                        common));
    return work;
}

std::vector<Working> facing_working(const WornBore& bore, const FacePad& pad, const Face& face,
                                    const Facing& facing, const BoringPlan& plan,
                                    const std::vector<Input>& common) {
    const std::vector<Input> inputs =
        inputs_of(in_mm("e", pad.extra_build), in_mm("delta", pad.bead.valley), in_mm("t", facing.depth),
                  Input("k", facing.cuts), in_mm("D_o", face.outer), in_mm("D_i", face.inner),
                  in_mm("f", facing.feed), in_rev_min("n", facing.bar.used));
    std::vector<Working> work = worked(
        inputs,
        {{"depth_mm", "s + e + delta", in_mm(facing.depth)}, {"cuts", "ceil(t/a_r - 1e-9)", facing.cuts}},
        common);
    append(work, rpm_working(plan.settings, plan.settings.cutting_speed, facing.bar,
                             face.outer + 2.0 * bore.overhang));
    append(work, worked(inputs,
                        {{"feed_mm", "1*f", in_mm(facing.feed), plan.settings.facing_feed.source},
                         {"time_s", "60*k*((D_o - D_i)/2 + 2*o)/(f*n)", in_seconds(facing.time)}},
                        common));
    return work;
}

std::vector<Working> time_working(const BoringPlan& plan) {
    std::vector<double> all, finish, standing;
    std::vector<double> skim{0}, rough{0};
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
    for (const Standing& step : plan.standing)
        standing.push_back(step.time().value());
    const std::vector<Input> common{{"t_cut", in_seconds(plan.cutting_time)},
                                    {"t_stand", in_seconds(plan.standing_time)},
                                    {"life", in_seconds(plan.edges.life)},
                                    {"k_rough", plan.edges.rough},
                                    {"k_finish", plan.edges.finish}};
    std::vector<Working> work;
    const auto add = [&](const std::vector<double>& times, const WorkedFigure& figure) {
        append(work, worked({{"t", times, "s"}}, {figure}, common));
    };
    add(skim, {"skim_s", "sum(t)", in_seconds(plan.skim_time)});
    add(all, {"cutting_s", "sum(t)", in_seconds(plan.cutting_time)});
    add(standing, {"standing_s", "sum(t)", in_seconds(plan.standing_time)});
    add({}, {"time_s", "t_cut + t_stand", in_seconds(plan.time())});
    const std::string& source = plan.settings.edge_life.source;
    add(rough, {"edges_rough", "ceil(sum(t)/life - 1e-9)", plan.edges.rough, source});
    add(finish, {"edges_finish", "max(1, ceil(sum(t)/life - 1e-9))", plan.edges.finish, source});
    add({}, {"edges", "k_rough + k_finish", plan.edges.rough + plan.edges.finish});
    for (std::size_t i = 0; i < plan.standing.size(); ++i) {
        const int count = plan.standing[i].count;
        const auto& [usual, range] = plan.standing[i].each;
        const auto figure = [&](const char* name, Time each, const std::string& from) {
            work.push_back(worked(element_path("standing", i) + name, "60*k*t",
                                  {{"k", count}, {"t", each.value() / factor::minute, "min"}},
                                  in_seconds(static_cast<double>(count) * each), from));
        };
        figure(".time_s", usual.value, usual.source);
        figure(".low_s", range.value.first, range.source);
        figure(".high_s", range.value.second, range.source);
    }
    return work;
}

std::vector<Working> size_working(const BoringPlan& plan, const std::vector<Input>& common) {
    const std::string& nose = plan.settings.nose_radius.source;
    const SizeLimits limits = plan.limits.value_or(SizeLimits());
    const auto limit = [&](const char* as_given, const char* of_class) {
        return !plan.limits ? "" : limits.size_class.empty() ? as_given : of_class;
    };
    return worked(
        common,
        {{"roughness.rt_um", "1000*f^2/(8*r)", {micrometres(plan.roughness.peak_to_valley), "um"}, nose},
         {"roughness.ra_um", "1000*f^2/(32*r)", {micrometres(plan.roughness.mean), "um"}, nose},
         {"final_diameter_mm", plan.limits ? "min(max(D, D_min), D_max)" : "1*D", in_mm(plan.final_diameter),
          plan.limits ? "own" : "job"},
         {"limits_mm[0]", limit("1*D_min", "D + EI/1000"), in_mm(limits.low), limits.source},
         {"limits_mm[1]", limit("1*D_max", "D + (EI + IT)/1000"), in_mm(limits.high), limits.source}});
}

std::vector<Working> gauge_working(const BoringPlan& plan, const GaugeReading& gauge,
                                   const std::vector<Input>& common) {
    std::vector<Working> work =
        worked({{"T", in_deg_c(gauge.at)}},
               {{"at_degC", "1*T", in_deg_c(gauge.at), gauge.source},
                {"growth_mm", "alpha*D_b*(T - T_0)", in_mm(gauge.growth), plan.expansion.source}},
               common);
    std::vector<std::pair<const char*, Length>> sizes{{"reading_mm", plan.final_diameter}};
    if (plan.limits)
        sizes.insert(sizes.end(), {{"low_mm", plan.limits->low}, {"high_mm", plan.limits->high}});
    for (const auto& [name, size] : sizes)
        work.push_back(worked(name, "D + g", {{"D", in_mm(size)}, {"g", in_mm(gauge.growth)}},
                              in_mm(size + gauge.growth)));
    return work;
}

} // namespace

std::vector<Working> boring_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan) {
    const std::vector<Input> common = common_inputs(bore, weld, plan);
    std::vector<Working> work =
        rpm_working(plan.settings, plan.settings.cutting_speed, plan.bar, bore.finish_diameter);
    const auto add = [&](const char* list, std::size_t i, std::vector<Working> more) {
        append(work, under(element_path(list, i), std::move(more)));
    };
    append(work, settings_working(bore, plan, common));
    for (std::size_t i = 0; i < plan.grooves.size(); ++i) {
        const auto& [groove, depth, weld_left] = plan.grooves[i];
        const Amount floor = in_mm(bore.grooves[groove].diameter);
        add("grooves", i,
            worked({{"D_g", floor}},
                   {{"diameter_mm", "1*D_g", floor, "job"},
                    {"depth_mm", "D_g/2 - r_f", in_mm(depth)},
                    {"weld_left_mm", "w - D_g/2 + r_f", in_mm(weld_left)}},
                   common));
    }
    for (std::size_t i = 0; i < plan.cuts.size(); ++i)
        add("cuts", i, cut_working(plan, i, bore.finish_diameter, common));
    for (std::size_t i = 0; i < plan.facing.size(); ++i)
        add("facing", i, facing_working(bore, weld.faces[i], bore.faces[i], plan.facing[i], plan, common));
    append(work, time_working(plan));
    append(work, size_working(plan, common));
    for (std::size_t i = 0; i < plan.gauge.size(); ++i)
        add("gauge", i, gauge_working(plan, plan.gauge[i], common));
    return under("boring", std::move(work));
}

} // namespace ringfill
