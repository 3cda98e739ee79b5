#include <ringfill/plan/plan_working.hpp>

#include <ringfill/boring/boring_working.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/survey/survey_working.hpp>
#include <ringfill/weld/weld_working.hpp>

namespace ringfill {
namespace {

std::vector<Working> bore_working(const GivenBore& given, const BorePlan& planned, const Cutting& cutting) {
    const WornBore& bore = given.bore;
    std::vector<Working> work = survey_working(bore, planned.survey);
    append(work, build_working(bore, planned.survey, planned.build));
    append(work, weld_working(given, planned));
    if (planned.dilution)
        append(work, dilution_working(*planned.dilution, planned.layer_metals));
    append(work, heat_working(bore, planned.build, planned.bead.travel, planned.faces, planned.grooves,
                              planned.heat));
    if (planned.heat_balance)
        append(work, balance_working(bore, planned.build, planned.metal.arc, *planned.heat_balance));
    append(work, boring_working(bore, planned, planned.boring, cutting));
    return work;
}

} // namespace

std::vector<Working> plan_working(const Plan& plan, const std::vector<GivenBore>& given,
                                  const Cutting& cutting) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        append(work, under(element_path("bores", i), bore_working(given[i], plan.bores[i], cutting)));
    append(work, totals_working(plan.totals, given, plan.bores));
    if (plan.day)
        append(work, day_working(*plan.day));
    append(work, fire_watch_working(plan.fire_watch));
    for (std::size_t i = 0; i < plan.take.size(); ++i)
        append(work, under(element_path("take", i), plan.take[i].working));
    if (plan.quote)
        append(work, quote_working(*plan.quote));
    return work;
}

} // namespace ringfill
