#include <ringfill/boring/bore_boring.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>

namespace ringfill {
namespace {

void lay_out_cuts(BoringPlan& plan, const WornBore& bore, const BoreWeld& weld) {
    const BarSettings& settings = plan.settings;
    if (weld.build.skimmed)
        plan.cuts = skim_cuts(weld.survey.smallest.radius, weld.build.skim_radius, settings.rough_cut.value);
    const std::size_t after_weld = plan.cuts.size();
    ranges::push_back(plan.cuts, bore_cuts(plan.crown_radius, plan.final_diameter / 2.0, settings));
    const BarSpeed in_skin = bar_speed(settings.skin_speed.value, bore.finish_diameter, settings.bar_speeds);
    for (std::size_t i = 0; i < plan.cuts.size(); ++i) {
        Cut& cut = plan.cuts[i];
        cut.bar = i <= after_weld ? in_skin : plan.bar;
        cut.time = cutting_time(cut.kind == CutKind::skim ? bore.length : weld.build.welded_length,
                                settings.feed.value, cut.bar.used);
    }
    for (std::size_t i = 0; i < weld.faces.size(); ++i)
        plan.facing.push_back(facing(bore.faces[i], weld.faces[i], bore, settings));
}

std::vector<Standing> standing_times(const BoringPlan& plan, const WornBore& bore) {
    const BarSettings& settings = plan.settings;
    const auto number = [](const auto& list) { return static_cast<int>(list.size()); };
    const int spring = settings.cuts_to_the_end() ? 0 : 1; // it runs with the bit as it stands
    const int for_skim = plan.skim_time > Time() ? set_ups(bore.length, settings.stroke) : 1;
    std::vector<Standing> steps = {
        {"tool_set", plan.set_ups * (number(plan.cuts) - spring), settings.tool_set},
        {"bar_move", plan.set_ups - 1 + for_skim - 1, settings.bar_move},
        {"trim", bore.overhang > Length() ? 2 : 0, settings.trim},
        {"chamfer", 2, settings.chamfer},
        {"groove", number(plan.grooves), settings.groove},
        {"hole", number(bore.holes), settings.hole},
        {"facing_head", number(plan.facing), settings.facing_head}};
    std::erase_if(steps, [](const Standing& step) { return step.count == 0; });
    return steps;
}

void add_times(BoringPlan& plan, const WornBore& bore) {
    Time finish;
    for (const Cut& cut : plan.cuts) {
        plan.cutting_time += cut.time;
        if (cut.kind == CutKind::skim)
            plan.skim_time += cut.time;
        if (is_last(cut.kind))
            finish += cut.time;
    }
    for (const Facing& face : plan.facing)
        plan.cutting_time += face.time;
    plan.edges = edges(plan.cutting_time - finish, finish, plan.settings.edge_life.value);
    plan.standing = standing_times(plan, bore);
    for (const Standing& step : plan.standing)
        plan.standing_time += step.time();
}

/// Faults of settings that make far too many of something.
void refuse_absurd(const BoringPlan& plan, const WornBore& bore) {
    std::vector<Fault> faults;
    const auto refuse = [&](const char* field, const char* reason, const char* remedy) {
        faults.push_back(fault_at_path(fmt::format("boring.{}", field), {},
                                       fmt::format("{} for {}", reason, bore.name), remedy));
    };
    if (plan.cuts.size() > most_cuts ||
        ranges::any_of(plan.facing, [](const Facing& face) { return face.cuts > most_cuts; }))
        refuse("rough_cut", "makes more than 100 cuts", "write the depth of a rough cut per side");
    if (plan.set_ups > most_set_ups)
        refuse("stroke", "makes more than 100 set-ups", "write how far the bar travels in one set-up");
    if (std::max(plan.edges.rough, plan.edges.finish) > most_edges)
        refuse("edge_life", "with the feed and the cutting speed uses up more than 10000 edges",
               "write the cutting time of one edge, and check feed and cutting speed");
    refuse_if_any(Origin::job, faults);
}

GaugeReading gauge_reading(const BoringPlan& plan, const Sourced<Temperature>& at) {
    GaugeReading gauge{at.value, at.source, growth(plan.final_diameter, plan.expansion.value, at.value)};
    gauge.reading = plan.final_diameter + gauge.growth;
    if (plan.limits)
        gauge.limits = {{plan.limits->low + gauge.growth, plan.limits->high + gauge.growth}};
    return gauge;
}

} // namespace

BoringPlan bore_boring(const WornBore& bore, const BoreWeld& weld, const BarSettings& settings,
                       const std::optional<Sourced<double>>& expansion, const std::vector<SizeStep>& steps) {
    std::vector<Fault> faults;
    BoringPlan plan;
    plan.settings = settings;
    plan.limits = size_limits(bore, steps, faults);
    if (const Length skimmed = 2.0 * weld.build.skim_radius; plan.limits && plan.limits->high > skimmed)
        faults.push_back(fault_at_path(bore.path + (bore.size_limits ? ".size_limits" : ".size_class"), {},
                                       fmt::format("lets the bore be {}, over the {} it is skimmed to",
                                                   show_fine(plan.limits->high, UnitSystem::metric),
                                                   show_fine(skimmed, UnitSystem::metric)),
                                       "check the limits and the readings"));
    refuse_if_any(Origin::job, faults);
    plan.final_diameter = diameter_to_bore(bore.finish_diameter, plan.limits);
    plan.bar = bar_speed(settings.cutting_speed.value, bore.finish_diameter, settings.bar_speeds);
    plan.set_ups = set_ups(weld.build.welded_length, settings.stroke);
    plan.crown_radius = weld.layering.end_radius - weld.bead.valley;
    plan.valley_radius = weld.layering.end_radius + weld.bead.valley;
    lay_out_cuts(plan, bore, weld);
    plan.grooves = groove_cuts(bore.grooves, weld.build.finish_radius, weld.build.finished_weld);
    add_times(plan, bore);
    refuse_absurd(plan, bore);
    plan.roughness = roughness(settings.feed.value, settings.nose_radius.value);
    plan.expansion = expansion.value_or(settings.expansion);
    plan.expansion_is_general = !expansion;
    for (const Sourced<Temperature>& at : {settings.finish_below, settings.rough_below})
        plan.gauge.push_back(gauge_reading(plan, at));
    return plan;
}

int set_ups(Length welded_length, std::optional<Length> stroke) {
    if (!stroke)
        return 1;
    const double count = std::ceil((welded_length / *stroke).value() - 1e-9);
    return static_cast<int>(std::clamp<double>(count, 1, most_set_ups + 1));
}

} // namespace ringfill
