#pragma once

#include <array>

#include <ringfill/boring/bar.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/report/json/rows.hpp>

namespace ringfill {

inline auto boring_object(const BorePlan& bore) {
    const BoringPlan& boring = bore.boring;
    const Length radius = boring.final_diameter / 2.0;
    const Length feed = boring.settings.feed.value;
    const auto size_limits = [](const SizeLimits& limits) {
        return object(member<"size_class">(unless_empty(limits.size_class)),
                      member<"limits_mm">(std::array{limits.low, limits.high}));
    };
    const auto cut = [&](const Cut& one) { return cut_object(one, boring); };
    const auto& roughness = boring.roughness;
    const auto groove = [&](const GrooveCut& groove_cut) {
        return object(member<"diameter_mm">(2.0 * (bore.build.finish_radius + groove_cut.depth)),
                      member<"depth_mm">(groove_cut.depth), member<"weld_left_mm">(groove_cut.weld_left));
    };
    const auto gauge_limits = [](const std::pair<Length, Length>& limits) {
        return object(member<"low_mm">(limits.first), member<"high_mm">(limits.second));
    };
    const auto gauge = [&](const GaugeReading& one) {
        return object(member<"at_degC">(one.at), member<"growth_mm">(one.growth),
                      member<"reading_mm">(one.reading), given(one.limits, gauge_limits));
    };
    return object(
        member<"deposit">(boring.settings.deposit.group), member<"tool">(boring.settings.tool),
        member<"rpm">(boring.bar.used), member<"computed_rpm">(boring.bar.computed),
        member<"cutting_speed_m_min">(cutting_speed_at(boring.bar.used, 2.0 * bore.build.finish_radius)),
        member<"feed_mm">(feed), member<"feed_mm_min">(feed_rate(feed, boring.bar.used)),
        member<"set_ups">(boring.set_ups), member<"stock_mm">(radius - boring.crown_radius),
        member<"valley_stock_mm">(radius - boring.valley_radius),
        member<"final_diameter_mm">(boring.final_diameter), given(boring.limits, size_limits),
        member<"cuts">(list_of(boring.cuts, cut)),
        member<"facing">(unless_empty(list_of(boring.facing, facing_object))),
        member<"grooves">(unless_empty(list_of(boring.grooves, groove))),
        member<"standing">(list_of(boring.standing, standing_object)), member<"skim_s">(boring.skim_time),
        member<"cutting_s">(boring.cutting_time), member<"standing_s">(boring.standing_time),
        member<"time_s">(boring.time()), member<"edges">(boring.edges.rough + boring.edges.finish),
        member<"edges_rough">(boring.edges.rough), member<"edges_finish">(boring.edges.finish),
        member<"roughness">(
            object(member<"rt_um">(roughness.peak_to_valley), member<"ra_um">(roughness.mean))),
        member<"gauge">(list_of(boring.gauge, gauge)));
}

} // namespace ringfill
