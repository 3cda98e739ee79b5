#include <ringfill/plan/plan_balances.hpp>

namespace ringfill {
namespace {

using Passes = std::vector<RingPass>;

std::size_t rings_of(const std::vector<Passes>& bores) {
    std::size_t rings = 0;
    for (const Passes& passes : bores)
        for (const RingPass& pass : passes)
            rings += pass.rings.size();
    return rings;
}

void plan_balance(BorePlan& plan, const BalanceCase& what) {
    auto found = heat_balance(what);
    if (auto* balance = std::get_if<HeatBalance>(&found)) {
        add_breaks(plan.metal, balance->breaks(), plan.deposition);
        plan.heat_balance = std::move(*balance);
    } else {
        plan.no_balance = std::get<std::string>(std::move(found));
    }
}

} // namespace

void plan_balances(std::vector<BorePlan>& bores, const Job& job, const Shop& shop, const Progress& progress) {
    std::vector<Passes> passes;
    for (std::size_t i = 0; i < bores.size(); ++i)
        passes.push_back(ring_times(job.bores[i].grooves, bores[i].grooves, bores[i].layers, bores[i].bead,
                                    bores[i].torch_path, bores[i].faces));
    if (rings_of(passes) > most_rings_of_a_job)
        passes.assign(bores.size(), Passes());
    const auto heater = heat_source(job.heater, shop.fuels);
    const Temperature ambient = job.site.ambient.value_or(usual_ambient);
    std::vector<Fault> known; // every base has been found before
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const WornBore& bore = job.bores[i];
        if (progress)
            progress("following the heat of bore", i + 1, bores.size());
        if (const Base* base = find_base(shop.registry, bore.base, bore.path + ".base", known))
            plan_balance(bores[i], {bore, bores[i].build, *base, bores[i].heat, passes[i], ambient, heater,
                                    shop.cutting.rough_below.value, shop.cutting.finish_below.value});
    }
}

} // namespace ringfill
