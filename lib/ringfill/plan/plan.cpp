#include <ringfill/plan/plan.hpp>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/find_if.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/caution/cautions.hpp>
#include <ringfill/plan/heat_uses.hpp>
#include <ringfill/plan/notes.hpp>
#include <ringfill/plan/plan_quote.hpp>
#include <ringfill/plan/plan_working.hpp>
#include <ringfill/plan/too_much.hpp>
#include <ringfill/plan/uses.hpp>
#include <ringfill/take/take.hpp>
#include <ringfill/take/take_fire_watch.hpp>
#include <ringfill/take/take_inserts.hpp>
#include <ringfill/weld/torch_fit.hpp>

namespace ringfill {
namespace {

/// The settings of every procedure that stands, in the order of the job.
std::vector<Settings> all_settings(const Job& job, const WeldTables& tables, std::vector<Fault>& faults) {
    std::vector<Settings> found;
    for (const Procedure& procedure : job.procedures)
        if (auto one = settings(procedure, tables, job.units, faults))
            found.push_back(std::move(*one));
    return found;
}

/// The bores as given, and what is worked out for each without following its heat.
struct Figures {
    std::vector<GivenBore> given;
    std::vector<BoreFigures> bores;
};

BoreFigures bore_figures(const GivenBore& given, BoreWeld weld, const Job& job, const Shop& shop,
                         const WeldTables& tables) {
    const auto& [bore, settings, base] = given;
    BoreMetals metals = bore_metals(bore, weld, settings, base, tables);
    const HeatSettings welding{settings.procedure, settings.filler, settings.deposition.current, weld.bead};
    BoreHeat heat = bore_heat(bore, welding, job.site, family_of(shop.registry, bore.base), base, weld.build,
                              weld.faces, weld.grooves);
    BoringPlan boring = bore_boring(bore, weld, bar_settings(job.boring, shop.cutting), shop.cutting,
                                    base.expansion_per_K, shop.size_steps);
    return {{std::move(weld)}, {std::move(metals)}, std::move(heat), std::move(boring)};
}

/// Plans every bore whose procedure stands and judges the others as far as it goes; the faults of all are
/// collected.
Figures all_figures(const Job& job, const Shop& shop, const std::vector<Settings>& settings,
                    const WeldTables& tables, std::vector<Fault>& faults, const Progress& progress) {
    Figures all;
    std::size_t at = 0;
    for (const WornBore& bore : job.bores) {
        if (progress)
            progress("planning bore", ++at, job.bores.size());
        const Base* base = find_base(shop.registry, bore.base, bore.path + ".base", faults);
        const auto own = ranges::find_if(
            settings, [&](const Settings& one) { return one.procedure->name == bore.procedure; });
        try {
            if (own == settings.end()) {
                prepare(bore, survey(bore.worn, bore.length));
                continue;
            }
            BoreWeld weld = weld_bore(bore, *own);
            const auto torch = torch_faults(bore, job.torch, weld.build, weld.layering, job.units);
            if (base) {
                all.given.push_back({bore, *own, *base});
                all.bores.push_back(bore_figures(all.given.back(), std::move(weld), job, shop, tables));
            }
            ranges::push_back(faults, torch);
        } catch (const Faulty& faulty) {
            if (faulty.origin() != Origin::job)
                throw;
            ranges::push_back(faults, faulty.faults());
        }
    }
    return all;
}

/// Follows the heat of every bore, and counts its metal with the starts that this takes.
std::vector<BorePlan> follow_bores(Figures figures, const Job& job, const Shop& shop,
                                   const Progress& progress) {
    std::vector<std::vector<RingPass>> passes;
    for (std::size_t i = 0; i < figures.bores.size(); ++i)
        passes.push_back(ring_times(job.bores[i].grooves, figures.bores[i]));
    passes = if_followed(std::move(passes));
    const auto heater = heat_source(job.heater, shop.fuels);
    const Temperature ambient = job.site.ambient.value_or(usual_ambient);
    std::vector<BorePlan> bores;
    for (std::size_t i = 0; i < figures.bores.size(); ++i) {
        if (progress)
            progress("following the heat of bore", i + 1, figures.bores.size());
        BoreFigures& bore = figures.bores[i];
        FollowedHeat heat =
            follow_heat({job.bores[i], bore.build, figures.given[i].base, bore.heat, passes[i], ambient,
                         heater, shop.cutting.rough_below.value, shop.cutting.finish_below.value});
        const Metal whole = metal(job.bores[i], bore, heat.breaks());
        bores.push_back({std::move(bore), std::move(heat), whole});
    }
    return bores;
}

Totals totals(const std::vector<BorePlan>& bores, const std::vector<GasUse>& gases) {
    Totals sum;
    for (const BorePlan& bore : bores) {
        const auto count = static_cast<double>(bore.count);
        sum.laid += count * bore.metal.laid;
        (bore.deposition.piece ? sum.piece_mass : sum.wire) += count * bore.metal.wire;
        sum.pieces += std::int64_t{bore.count} * bore.metal.pieces;
        sum.arc += count * bore.metal.arc;
    }
    for (const GasUse& gas : gases)
        sum.gas += gas.volume;
    return sum;
}

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
