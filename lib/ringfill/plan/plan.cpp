#include <ringfill/plan/plan.hpp>

#include <ringfill/caution/cautions.hpp>
#include <ringfill/job/read_job.hpp>
#include <ringfill/plan/notes.hpp>
#include <ringfill/plan/plan_bores.hpp>
#include <ringfill/plan/plan_working.hpp>
#include <ringfill/take/take.hpp>

namespace ringfill {

Plan plan(const Job& job, const Shop& shop, const Progress& progress) {
    judge_job(job);
    std::vector<Fault> faults;
    const WeldTables tables = weld_tables(shop);
    const std::vector<Settings> settings = all_settings(job, tables, faults);
    Figures figures = all_figures(job, shop, settings, tables, faults, progress);
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
    plan.totals = totals(plan.bores, gas_uses(given, plan.bores));
    const Taken taken = take(work, {shop.packs, shop.wear_parts, shop.sticks, shop.fuels, shop.cutting});
    plan.take = taken.needs;
    const CautionTables judged_by{shop.cautions, shop.cutting, shop.fuels, shop.registry};
    plan.cautions = cautions(work, judged_by);
    plan.sources = cited(plan.cautions, job, judged_by);
    plan.notes = notes(work, day, shop);
    plan.assumed = assumed(work, shop.cutting);
    plan.quote = quote(work, taken, day, shop.currencies, faults);
    refuse_if_any(Origin::job, faults);
    plan.working = plan_working(plan, given, shop.cutting);
    return plan;
}

} // namespace ringfill
