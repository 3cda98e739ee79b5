#include <ringfill/plan/plan.hpp>

#include <range/v3/action/push_back.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/caution/cautions.hpp>
#include <ringfill/plan/heat_uses.hpp>
#include <ringfill/plan/notes.hpp>
#include <ringfill/plan/plan_bores.hpp>
#include <ringfill/plan/plan_quote.hpp>
#include <ringfill/plan/plan_working.hpp>
#include <ringfill/plan/too_much.hpp>
#include <ringfill/plan/uses.hpp>
#include <ringfill/take/take.hpp>
#include <ringfill/take/take_fire_watch.hpp>
#include <ringfill/take/take_inserts.hpp>

namespace ringfill {
namespace {

/// Everything to load, line by line.
std::vector<Need> needs(const PlannedWork& work, const std::vector<GasUse>& gases, const Shop& shop) {
    const Job& job = work.job;
    std::vector<Need> all =
        take(wire_uses(job, work.given, work.bores), piece_uses(job, work.given, work.bores), gases,
             job.reserve, shop.packs, shop.wear_parts, job.units);
    const auto add = [&](std::vector<Need> more) { ranges::push_back(all, std::move(more)); };
    add(take_sticks(stick_uses(work.bores), shop.sticks, job.units));
    add(heat_needs(job, work.bores, shop));
    add(take_holes(hole_uses(job), job.units));
    const auto inserts = work.bores | ranges::views::transform([](const BorePlan& bore) {
                             return InsertUse{bore.name, bore.count, bore.boring.edges};
                         }) |
                         ranges::to<std::vector>();
    add(take_inserts(inserts, bar_settings(job.boring, shop.cutting).edge_life.source));
    add(take_fire_watch(work.fire_watch));
    return all;
}

} // namespace

Plan plan(const Job& job, const Shop& shop, const Progress& progress) {
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
    const auto gases = gas_uses(given, plan.bores);
    plan.totals = totals(plan.bores, gases);
    plan.take = needs(work, gases, shop);
    refuse_if_any(Origin::job, too_much(plan.take));
    const CautionTables judged_by{shop.cautions, shop.cutting, shop.fuels, shop.registry};
    plan.cautions = cautions(work, judged_by);
    plan.sources = cited(plan.cautions, judged_by);
    plan.notes = notes(work, day, shop);
    plan.assumed = assumed(work, shop.cutting);
    plan.quote = plan_quote(plan, day.no_day, job, shop, faults);
    refuse_if_any(Origin::job, faults);
    plan.working = plan_working(plan, given, shop.cutting);
    return plan;
}

} // namespace ringfill
