#include <ringfill/boring/bore_boring.hpp>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>

#include <fmt/format.h>

#include <ringfill/boring/cutting_time.hpp>
#include <ringfill/boring/set_ups.hpp>

namespace ringfill {
namespace {

void lay_out_cuts(BoringPlan& plan, const WeldedBore& welded, const Cutting& cutting) {
    const Length rough = plan.settings.rough_cut.value;
    if (welded.build.skimmed)
        plan.cuts = skim_cuts(welded.survey.smallest.radius, welded.build.skim_radius, rough);
    ranges::push_back(plan.cuts, bore_cuts(plan.crown_radius, plan.final_diameter / 2.0,
                                           {rough, cutting.semi_finish_cut.value, cutting.finish_cut.value}));
    for (Cut& cut : plan.cuts) {
        cut.way = cut.kind == CutKind::skim ? welded.bore.length : welded.build.welded_length;
        cut.time = cutting_time(cut.way, plan.settings.feed.value, plan.bar.used);
    }
}

void face_pads(BoringPlan& plan, const WeldedBore& welded, const Cutting& cutting) {
    const FacingHead head{plan.settings.cutting_speed.value, cutting.facing_feed.value,
                          plan.settings.rough_cut.value, plan.settings.bar_speeds};
    for (std::size_t i = 0; i < welded.faces.size(); ++i)
        plan.facing.push_back(
            facing(welded.bore.faces[i], welded.faces[i], welded.bore.stock, welded.bore.overhang, head));
}

void add_times(BoringPlan& plan, const WeldedBore& welded, const Cutting& cutting) {
    Time finish;
    StandingCounts counts;
    for (const Cut& cut : plan.cuts) {
        plan.cutting_time += cut.time;
        if (cut.kind == CutKind::skim)
            plan.skim_time += cut.time;
        if (cut.kind == CutKind::finish || cut.kind == CutKind::spring)
            finish += cut.time;
        if (cut.kind != CutKind::spring)
            counts.cuts += plan.set_ups;
    }
    for (const Facing& face : plan.facing)
        plan.cutting_time += face.time;
    plan.edges = edges(plan.cutting_time - finish, finish, plan.settings.edge_life.value);
    counts.trimmed_ends = welded.bore.overhang > Length() ? 2 : 0;
    counts.faces = static_cast<int>(plan.facing.size());
    counts.grooves = static_cast<int>(plan.grooves.size());
    counts.holes = static_cast<int>(welded.bore.holes.size());
    counts.chamfers = 2;
    const int for_skim = plan.skim_time > Time() ? set_ups(welded.bore.length, plan.settings.stroke) : 1;
    counts.bar_moves = plan.set_ups - 1 + for_skim - 1;
    plan.standing = standing_times(counts, cutting);
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

BoringPlan bore_boring(const WeldedBore& welded, const BarSettings& settings, const Cutting& cutting,
                       const std::optional<Sourced<double>>& expansion, const std::vector<SizeStep>& steps) {
    std::vector<Fault> faults;
    BoringPlan plan;
    plan.settings = settings;
    plan.limits = size_limits(welded.bore, steps, faults);
    refuse_if_any(Origin::job, faults);
    plan.final_diameter = diameter_to_bore(welded.bore.finish_diameter, plan.limits);
    plan.bar = bar_speed(settings.cutting_speed.value, welded.bore.finish_diameter, settings.bar_speeds);
    plan.set_ups = set_ups(welded.build.welded_length, settings.stroke);
    plan.crown_radius = welded.end_radius - welded.valley;
    plan.valley_radius = welded.end_radius + welded.valley;
    lay_out_cuts(plan, welded, cutting);
    face_pads(plan, welded, cutting);
    plan.grooves = groove_cuts(welded.bore.grooves, welded.build.finish_radius, welded.build.finished_weld);
    add_times(plan, welded, cutting);
    refuse_absurd(plan, welded.bore);
    plan.roughness = roughness(settings.feed.value, cutting.nose_radius.value);
    plan.expansion = expansion.value_or(cutting.expansion);
    plan.expansion_is_general = !expansion;
    for (const Sourced<Temperature>& at : {cutting.finish_below, cutting.rough_below})
        plan.gauge.push_back(gauge_reading(plan, at));
    return plan;
}

} // namespace ringfill
