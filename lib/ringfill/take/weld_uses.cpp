#include <algorithm>
#include <cmath>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/take/group.hpp>
#include <ringfill/take/uses.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {
namespace {

/// Keeps the spools that every procedure's feeder takes; when no size fits all, every size that fits one.
void offer_spools(std::vector<Mass>& offered, const std::vector<Mass>& spools) {
    std::vector<Mass> both = spools;
    std::erase_if(both, [&](Mass spool) { return ranges::find(offered, spool) == offered.end(); });
    if (!both.empty())
        offered = both;
    else
        offered.insert(offered.end(), spools.begin(), spools.end());
}

/// Keeps the trial ring of the largest bore of each procedure, as its first layer is laid.
void add_trial(std::vector<TrialRing>& trials, const BorePlan& bore) {
    const Length radius = bore.layers.front().radius_before;
    const Mass ring = bore.deposition.density * bore.bead.section * ring_path(radius);
    const TrialRing trial{bore.procedure, bore.name, wire_for(ring, 1, bore.deposition), radius};
    TrialRing& largest = group_by(trials, &TrialRing::procedure, bore.procedure);
    if (largest.bore.empty() || radius > largest.radius)
        largest = trial;
}

/// The use that a bore belongs to, with what is counted alike for wire and for pieces.
template <class Use>
Use& use_of(std::vector<Use>& uses, const Job& job, const Procedure& procedure, const BorePlan& bore) {
    Use fresh;
    fresh.filler = procedure.filler;
    fresh.diameter = procedure.wire;
    for (const auto& [filler, price] : job.prices.wire_kg)
        if (filler == procedure.filler)
            fresh.price_kg = as_double(price);
    const auto is_same = [&](const Use& known) {
        return known.filler == fresh.filler && std::fabs((known.diameter - fresh.diameter).value()) < 1e-6;
    };
    Use& use = group_for(uses, is_same, fresh);
    use.counts.push_back(bore.count);
    use.laid += use.counts.back() * bore.metal.laid;
    add_trial(use.trials, bore);
    return use;
}

} // namespace

std::vector<WireUse> wire_uses(const Job& job, const std::vector<GivenBore>& given,
                               const std::vector<BorePlan>& bores) {
    std::vector<WireUse> uses;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const Settings& own = given[i].settings;
        if (own.deposition.piece)
            continue;
        const Metal& metal = bores[i].metal;
        WireUse& use = use_of(uses, job, *own.procedure, bores[i]);
        const double count = use.counts.back();
        use.linear_mass = own.deposition.linear_mass;
        use.wire += count * metal.wire;
        use.wire_each.push_back(metal.wire);
        use.arc += count * metal.arc;
        use.starts += std::int64_t{bores[i].count} * metal.starts;
        offer_spools(use.spools, own.procedure->spools);
    }
    return uses;
}

std::vector<PieceUse> piece_uses(const Job& job, const std::vector<GivenBore>& given,
                                 const std::vector<BorePlan>& bores) {
    std::vector<PieceUse> uses;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const auto& laid = given[i].settings.deposition.piece;
        if (!laid)
            continue;
        PieceUse& use = use_of(uses, job, *given[i].settings.procedure, bores[i]);
        use.piece = *laid;
        use.pieces_each.push_back(bores[i].metal.pieces);
    }
    return uses;
}

std::vector<GasUse> gas_uses(const std::vector<GivenBore>& given, const std::vector<BorePlan>& bores) {
    std::vector<GasUse> uses;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const Settings& own = given[i].settings;
        if (!own.gas)
            continue;
        const Metal& metal = bores[i].metal;
        GasUse& use = group_by(uses, &GasUse::gas, own.gas->name);
        use.holds = own.gas->holds;
        const double count = bores[i].count;
        const Volume each = gas_volume(own.gas_flow, metal.arc, metal.starts, own.procedure->gas_before,
                                       own.procedure->gas_after);
        use.counts.push_back(count);
        use.volume_each.push_back(each);
        use.volume += count * each;
        use.flow = std::max(use.flow, own.gas_flow);
        use.arc += count * metal.arc;
        use.starts += std::int64_t{bores[i].count} * metal.starts;
    }
    return uses;
}

} // namespace ringfill
