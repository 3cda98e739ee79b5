#include <ringfill/plan/plan_boring.hpp>

#include <range/v3/action/push_back.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/boring/boring_working.hpp>
#include <ringfill/caution/boring_rules.hpp>
#include <ringfill/plan/boring_notes.hpp>

namespace ringfill {

void plan_boring(BorePlan& plan, const WornBore& bore, const Job& job, const Shop& shop, const Base& base) {
    const WeldedBore welded{bore,      plan.survey, plan.build, plan.layering.end_radius, plan.bead.valley,
                            plan.faces};
    plan.boring = bore_boring(welded, bar_settings(job.boring, shop.cutting), shop.cutting,
                              base.expansion_per_K.value_or(shop.cutting.expansion), shop.size_steps);
    plan.boring.expansion_is_general = !base.expansion_per_K;
    plan.boring_working = boring_working(welded, plan.boring, shop.cutting);
}

std::vector<InsertUse> insert_uses(const std::vector<BorePlan>& bores) {
    return bores | ranges::views::transform([](const BorePlan& bore) {
               return InsertUse{bore.name, bore.count, bore.boring.edges};
           }) |
           ranges::to<std::vector>();
}

void judge_boring(Plan& plan, const Job& job, const Cutting& cutting) {
    std::vector<HotBore> hot;
    NeededFigures needed;
    for (std::size_t i = 0; i < job.bores.size(); ++i) {
        const BorePlan& planned = plan.bores[i];
        ranges::push_back(plan.cautions,
                          boring_cautions(job.bores[i], planned.build, planned.boring, job.units));
        ranges::push_back(plan.notes, boring_notes(job.bores[i], planned.boring, cutting, job.units));
        hot.push_back({planned.name, &planned.boring});
        needed.facing_feed = needed.facing_feed || !planned.boring.facing.empty();
        needed.expansion = needed.expansion || planned.boring.expansion_is_general;
    }
    if (auto caution = hot_finish_caution(hot, cutting, job.units))
        plan.cautions.push_back(std::move(*caution));
    if (job.boring.bar_speeds.empty())
        plan.notes.push_back("boring: the job lists no bar_speeds, so the revolutions are computed; set the "
                             "next one down.");
    ranges::push_back(plan.assumed, assumed_cutting(job.boring, cutting, needed, job.units));
}

} // namespace ringfill
