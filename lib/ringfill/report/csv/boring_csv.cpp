#include <ringfill/report/csv/boring_csv.hpp>

#include <ringfill/report/csv/csv.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {

std::string boring_csv(const Plan& plan) {
    std::vector<std::vector<Cell>> rows{{"bore", "count", "step", "pieces", "depth_mm", "from_diameter_mm",
                                         "to_diameter_mm", "rpm", "feed_mm", "time_s"}};
    for (const BorePlan& bore : plan.bores) {
        const BoringPlan& boring = bore.boring;
        const auto count = static_cast<double>(bore.count);
        for (const Cut& cut : boring.cuts)
            rows.push_back({bore.name, count, std::string(name_of(cut.kind)), 1.0, mm(cut.depth),
                            mm(cut.from), mm(cut.to), rev_min(boring.bar.used),
                            mm(boring.settings.feed.value), cut.time.value()});
        for (const Facing& face : boring.facing)
            rows.push_back({bore.name, count, "facing", static_cast<double>(face.cuts), mm(face.depth), "",
                            "", rev_min(face.bar.used), mm(face.feed), face.time.value()});
        for (const Standing& step : boring.standing)
            rows.push_back({bore.name, count, std::string(step.step), static_cast<double>(step.count), "", "",
                            "", "", "", step.time().value()});
    }
    return csv(rows);
}

} // namespace ringfill
