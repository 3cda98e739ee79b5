#include <ringfill/plan/plan_bores.hpp>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/find_if.hpp>

namespace ringfill {
namespace {

BoreFigures bore_figures(const GivenBore& given, BoreWeld weld, const Job& job, const Shop& shop) {
    const auto& [bore, settings, base] = given;
    BoreMetals metals = bore_metals(given, weld, weld_tables(shop));
    BoreHeat heat = bore_heat(given, weld, job.site, family_of(shop.registry, bore.base));
    BoringPlan boring = bore_boring(bore, weld, bar_settings(job.boring, shop.cutting), base.expansion_per_K,
                                    shop.size_steps);
    return {{std::move(weld)}, {std::move(metals)}, std::move(heat), std::move(boring)};
}

} // namespace

std::vector<Settings> all_settings(const Job& job, const Shop& shop, std::vector<Fault>& faults) {
    std::vector<Settings> found;
    for (const Procedure& procedure : job.procedures)
        if (auto one = settings(procedure, weld_tables(shop), job.units, faults))
            found.push_back(std::move(*one));
    return found;
}

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
            if (own == settings.end()) {
                prepare(bore, survey(bore.worn, bore.length));
                continue;
            }
            BoreWeld weld = weld_bore(bore, *own);
            const auto torch = torch_faults(weld, job.torch, job.units);
            if (base) {
                all.given.push_back({bore, *own, *base});
                all.bores.push_back(bore_figures(all.given.back(), std::move(weld), job, shop));
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
        add_breaks(bore.metal, heat.breaks(), bore.deposition);
        bores.push_back({std::move(bore), std::move(heat)});
    }
    return bores;
}

} // namespace ringfill
