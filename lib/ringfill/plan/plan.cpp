#include <ringfill/plan/plan.hpp>

#include <algorithm>
#include <mutex>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/find_if.hpp>

#include <ringfill/caution/cautions.hpp>
#include <ringfill/caution/doubt.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/heat/pauses.hpp>
#include <ringfill/job/read_job.hpp>
#include <ringfill/plan/notes.hpp>
#include <ringfill/survey/survey_working.hpp>
#include <ringfill/take/take.hpp>
#include <ringfill/weld/weld_working.hpp>

namespace ringfill {
namespace {

/// The settings of every procedure that stands, in the order of the job.
std::vector<Settings> all_settings(const Job& job, const Shop& shop, std::vector<Fault>& faults) {
    std::vector<Settings> found;
    for (const Procedure& procedure : job.procedures)
        if (auto one = settings(procedure, shop, faults))
            found.push_back(std::move(*one));
    return found;
}

/// The bores as given, and what is worked out for each without following its heat.
struct Figures {
    std::vector<GivenBore> given;
    std::vector<BoreFigures> bores;
};

/// Takes a bore through the stages, each made from the finished values of those before, as far as its
/// procedure and its metal are known: what can be judged is judged without them.
void add_figures(Figures& all, const WornBore& bore, const Settings* settings, const Base* base,
                 const Job& job, const Shop& shop, std::vector<Fault>& faults) {
    const Survey surveyed = survey(bore.worn, bore.length);
    const Build build = skim_and_size(bore, surveyed);
    if (!settings)
        return;
    BoreWeld weld = weld_bore(bore, *settings, surveyed, build);
    const std::vector<Fault> torch = torch_faults(weld, job.torch, job.units);
    if (base) {
        const GivenBore& given = all.given.emplace_back(GivenBore{bore, *settings, *base});
        BoreMetals metals = bore_metals(given, weld, shop);
        BoreHeat heat = bore_heat(given, weld, job.site, family_of(shop.registry, bore.base),
                                  {job.units, job.welding_rules.value_or("")});
        const Filler& filler = *settings->filler;
        const Deposit deposit = deposit_of({weld.filler, filler.group}, filler.hardness_HV, shop.cutting);
        BoringPlan boring = bore_boring(bore, weld, bar_settings(job.boring, shop.cutting, deposit),
                                        base->expansion_per_K, shop.size_steps);
        all.bores.push_back({{std::move(weld)}, {std::move(metals)}, std::move(heat), std::move(boring)});
    }
    ranges::push_back(faults, torch);
}

/// Takes every bore through the stages; the faults of all are collected.
Figures all_figures(const Job& job, const Shop& shop, const std::vector<Settings>& settings,
                    std::vector<Fault>& faults, const Progress& progress) {
    Figures all;
    std::size_t at = 0;
    for (const WornBore& bore : job.bores) {
        if (progress)
            progress("planning bore", ++at, job.bores.size());
        const Base* base = find_base(shop.registry, bore.base, bore.path + ".base", faults);
        const auto own = ranges::find_if(
            settings, [&](const Settings& one) { return one.procedure->name == bore.procedure; });
        try {
            add_figures(all, bore, own == settings.end() ? nullptr : &*own, base, job, shop, faults);
        } catch (const Faulty& faulty) {
            if (faulty.origin() != Origin::job)
                throw;
            ranges::push_back(faults, faulty.faults());
        }
    }
    return all;
}

/// What the heat of each bore is followed from.
std::vector<BalanceCase> balance_cases(const Figures& figures,
                                       const std::vector<std::vector<RingPass>>& passes, const Job& job,
                                       const Shop& shop) {
    const auto heater = heat_source(job.heater, shop.fuels);
    const Temperature ambient = job.site.ambient.value_or(usual_ambient);
    std::vector<BalanceCase> cases;
    for (std::size_t i = 0; i < figures.bores.size(); ++i) {
        const BoreFigures& bore = figures.bores[i];
        const LeastPauses pauses = pauses_of(figures.given[i].settings, passes[i], shop.standing_times);
        cases.push_back({job.bores[i], bore.build, figures.given[i].base, bore.heat, passes[i], ambient,
                         heater, shop.cutting.rough_below.value, shop.cutting.finish_below.value,
                         bore.bead.pitch, pauses.step_over,
                         step_time(shop.standing_times, "peen a stitch").time.value, pauses.cleaning,
                         job.blanket});
    }
    return cases;
}

/// Follows the heat of every bore, and counts its metal with the starts that this takes.
std::vector<BorePlan> follow_bores(Figures& figures, const Job& job, const Shop& shop,
                                   const Progress& progress, const RunBlocks& run_blocks) {
    std::vector<std::vector<RingPass>> passes;
    for (std::size_t i = 0; i < figures.bores.size(); ++i)
        passes.push_back(ring_times(job.bores[i], figures.bores[i]));
    passes = if_followed(std::move(passes));
    std::mutex shown; // one call of `progress` at a time
    std::size_t farthest = 0;
    std::vector<FollowedHeat> heat =
        follow_heat(balance_cases(figures, passes, job, shop), run_blocks, [&](std::size_t bore) {
            const std::lock_guard lock(shown);
            farthest = std::max(farthest, bore + 1);
            if (progress)
                progress("following the heat of bore", farthest, figures.bores.size());
        });
    std::vector<BorePlan> bores;
    for (std::size_t i = 0; i < figures.bores.size(); ++i) {
        BoreFigures& bore = figures.bores[i];
        bore.metal = with_breaks(bore.metal, heat[i].breaks(), bore.deposition);
        bores.push_back({std::move(bore), std::move(heat[i])});
    }
    return bores;
}

/// How every figure of a plan was reached: bore by bore, then the totals, the day, what to take and the
/// quote.
std::vector<Working> plan_working(const Plan& plan, const std::vector<GivenBore>& given,
                                  std::vector<Working> of_take) {
    std::vector<Working> work;
    work.reserve((plan.bores.size() + 1) * 250); // about as many as there are
    for (std::size_t i = 0; i < plan.bores.size(); ++i) {
        const auto add = [&](std::vector<Working> more) {
            append(work, under(element_path("bores", i), std::move(more)));
        };
        const WornBore& bore = given[i].bore;
        const BorePlan& planned = plan.bores[i];
        add(survey_working(bore, planned.survey));
        add(build_working(bore, planned.survey, planned.build));
        add(weld_working(given[i], planned));
        if (planned.dilution)
            add(dilution_working(*planned.dilution, planned.layer_metals));
        add(heat_working(bore, planned, planned.heat));
        if (planned.heat_balance)
            add(balance_working(bore, planned, *planned.heat_balance));
        add(boring_working(bore, planned, planned.boring));
    }
    append(work, plan.totals.working);
    if (plan.day)
        append(work, day_working(*plan.day));
    append(work, fire_watch_working(plan.fire_watch));
    append(work, std::move(of_take));
    if (plan.quote)
        append(work, quote_working(*plan.quote));
    return work;
}

} // namespace

Plan plan(const Job& job, const Shop& shop, const Progress& progress, const RunBlocks& run_blocks) {
    judge_job(job);
    std::vector<Fault> faults;
    const std::vector<Settings> settings = all_settings(job, shop, faults);
    Figures figures = all_figures(job, shop, settings, faults, progress);
    for (const auto& [filler, price] : job.prices.wire_kg)
        find_filler(shop.registry, filler, "prices.wire_kg." + filler, faults);
    const auto rule = watch_rule(shop.cautions.fire_rules, job.site.fire_rules, job.units, faults);
    refuse_if_any(Origin::job, faults);

    const std::vector<GivenBore>& given = figures.given;
    Plan plan{.title = job.title,
              .units = job.units,
              .bores = follow_bores(figures, job, shop, progress, run_blocks)};
    const PlannedDay day = plan_day(job, plan.bores, shop.standing_times);
    plan.day = day.day;
    plan.fire_watch =
        watch_over(*rule, plan.day ? hot_pieces(plan.day->day, plan.bores) : std::vector<HotSpan>());
    const PlannedWork work{job, settings, given, plan.bores, plan.fire_watch};
    Taken taken = take(work, shop);
    plan.totals = totals(given, plan.bores, taken.gas);
    plan.doubts = doubts(work, shop);
    plan.tables = replaced_rows(shop);
    plan.cautions = cautions(work, shop);
    plan.sources = cited(plan.cautions, job, shop);
    plan.notes = notes(work, day);
    plan.assumed = assumed(work, shop.standing_times);
    plan.quote = quote(work, taken, day, shop.currencies, faults);
    refuse_if_any(Origin::job, faults);
    plan.take = std::move(taken.needs);
    plan.working = plan_working(plan, given, std::move(taken.working));
    return plan;
}

} // namespace ringfill
