#include <ringfill/plan/plan.hpp>

#include <ringfill/caution/cautions.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/job/read_job.hpp>
#include <ringfill/plan/notes.hpp>
#include <ringfill/plan/plan_bores.hpp>
#include <ringfill/survey/survey_working.hpp>
#include <ringfill/take/take.hpp>
#include <ringfill/weld/weld_working.hpp>

namespace ringfill {
namespace {

std::vector<Working> bore_working(const GivenBore& given, const BorePlan& planned) {
    const WornBore& bore = given.bore;
    std::vector<Working> work = survey_working(bore, planned.survey);
    append(work, build_working(bore, planned.survey, planned.build));
    append(work, weld_working(given, planned));
    if (planned.dilution)
        append(work, dilution_working(*planned.dilution, planned.layer_metals));
    append(work, heat_working(bore, planned, planned.heat));
    if (planned.heat_balance)
        append(work, balance_working(bore, planned, *planned.heat_balance));
    append(work, boring_working(bore, planned, planned.boring));
    return work;
}

/// How every figure of a plan was reached: bore by bore, then the totals, the day, what to take and the
/// quote.
std::vector<Working> plan_working(const Plan& plan, const std::vector<GivenBore>& given) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        append(work, under(element_path("bores", i), bore_working(given[i], plan.bores[i])));
    append(work, plan.totals.working);
    if (plan.day)
        append(work, day_working(*plan.day));
    append(work, fire_watch_working(plan.fire_watch));
    for (std::size_t i = 0; i < plan.take.size(); ++i)
        append(work, under(element_path("take", i), plan.take[i].working));
    if (plan.quote)
        append(work, quote_working(*plan.quote));
    return work;
}

} // namespace

Plan plan(const Job& job, const Shop& shop, const Progress& progress) {
    judge_job(job);
    std::vector<Fault> faults;
    const std::vector<Settings> settings = all_settings(job, shop, faults);
    Figures figures = all_figures(job, shop, settings, faults, progress);
    for (const auto& [filler, price] : job.prices.wire_kg)
        find_filler(shop.registry, filler, "prices.wire_kg." + filler, faults);
    const auto rule = watch_rule(shop.cautions.fire_rules, job.site.fire_rules, job.units, faults);
    refuse_if_any(Origin::job, faults);

    Plan plan;
    plan.title = job.title;
    plan.units = job.units;
    plan.reserve = job.reserve;
    const std::vector<GivenBore> given = figures.given;
    plan.bores = follow_bores(std::move(figures), job, shop, progress);
    const PlannedDay day = plan_day(job, plan.bores, shop.standing_times);
    plan.day = day.day;
    plan.fire_watch = fire_watch(*rule, plan.day, plan.bores);
    const PlannedWork work{job, settings, given, plan.bores, plan.fire_watch};
    const Taken taken = take(work, {shop.packs, shop.wear_parts, shop.sticks, shop.fuels, shop.cutting});
    plan.take = taken.needs;
    plan.totals = totals(given, plan.bores, taken.gas);
    const CautionTables judged_by{shop.cautions, shop.cutting, shop.fuels, shop.registry};
    plan.cautions = cautions(work, judged_by);
    plan.sources = cited(plan.cautions, job, judged_by);
    plan.notes = notes(work, day, shop);
    plan.assumed = assumed(work, shop.cutting);
    plan.quote = quote(work, taken, day, shop.currencies, faults);
    refuse_if_any(Origin::job, faults);
    plan.working = plan_working(plan, given);
    return plan;
}

} // namespace ringfill
