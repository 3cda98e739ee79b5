#include <ringfill/boring/boring_working.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {

std::vector<Working> size_working(const WeldedBore& welded, const BoringPlan& plan, const Cutting& cutting) {
    const Input nominal{"D", mm(welded.bore.finish_diameter), "mm"};
    const Input feed{"f", mm(plan.settings.feed.value), "mm"};
    const Input nose{"r", mm(cutting.nose_radius.value), "mm"};
    std::vector<Working> work = {{"roughness.rt_um",
                                  "1000*f^2/(8*r)",
                                  {feed, nose},
                                  micrometres(plan.roughness.peak_to_valley),
                                  "um",
                                  cutting.nose_radius.source},
                                 {"roughness.ra_um",
                                  "1000*f^2/(32*r)",
                                  {feed, nose},
                                  micrometres(plan.roughness.mean),
                                  "um",
                                  cutting.nose_radius.source}};
    if (!plan.limits) {
        work.push_back({"final_diameter_mm", "1*D", {nominal}, mm(plan.final_diameter), "mm", "job"});
        return work;
    }
    const SizeLimits& limits = *plan.limits;
    const Input low{"D_min", mm(limits.low), "mm"};
    const Input high{"D_max", mm(limits.high), "mm"};
    work.push_back({"final_diameter_mm",
                    "min(max(D, D_min), D_max)",
                    {nominal, low, high},
                    mm(plan.final_diameter),
                    "mm",
                    "own"});
    if (limits.size_class.empty()) {
        work.push_back({"limits_mm[0]", "1*D_min", {low}, mm(limits.low), "mm", "job"});
        work.push_back({"limits_mm[1]", "1*D_max", {high}, mm(limits.high), "mm", "job"});
        return work;
    }
    const Input lower{"EI", limits.lower_um, "um"};
    work.push_back({"limits_mm[0]", "D + EI/1000", {nominal, lower}, mm(limits.low), "mm", limits.source});
    work.push_back({"limits_mm[1]",
                    "D + (EI + IT)/1000",
                    {nominal, lower, {"IT", limits.tolerance_um, "um"}},
                    mm(limits.high),
                    "mm",
                    limits.source});
    return work;
}

std::vector<Working> gauge_working(const BoringPlan& plan) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.gauge.size(); ++i) {
        const GaugeReading& gauge = plan.gauge[i];
        const Input at{"T", deg_c(gauge.at), "degC"};
        const Input grown{"g", mm(gauge.growth), "mm"};
        std::vector<Working> one = {{"at_degC", "1*T", {at}, deg_c(gauge.at), "degC", gauge.source},
                                    {"growth_mm",
                                     "alpha*D_b*(T - T_0)",
                                     {{"alpha", plan.expansion.value, "1/K"},
                                      {"D_b", mm(plan.final_diameter), "mm"},
                                      at,
                                      {"T_0", reference_temperature_degC, "degC"}},
                                     mm(gauge.growth),
                                     "mm",
                                     plan.expansion.source}};
        const auto reading = [&](const char* name, Length size) {
            one.push_back(
                {name, "D + g", {{"D", mm(size), "mm"}, grown}, mm(size + gauge.growth), "mm", "own"});
        };
        reading("reading_mm", plan.final_diameter);
        if (plan.limits) {
            reading("low_mm", plan.limits->low);
            reading("high_mm", plan.limits->high);
        }
        append(work, under(element_path("gauge", i), std::move(one)));
    }
    return work;
}

} // namespace ringfill
