#include <ringfill/plan/uses.hpp>

#include <algorithm>
#include <cmath>

#include <ringfill/weld/gas.hpp>

namespace ringfill {
namespace {

WireUse& use_of(std::vector<WireUse>& uses, const Settings& settings) {
    const Procedure& procedure = *settings.procedure;
    for (WireUse& use : uses)
        if (use.filler == procedure.filler && std::fabs((use.diameter - procedure.wire).value()) < 1e-6)
            return use;
    WireUse use;
    use.filler = procedure.filler;
    use.diameter = procedure.wire;
    use.linear_mass = settings.deposition.linear_mass;
    uses.push_back(use);
    return uses.back();
}

PieceUse& use_of_pieces(std::vector<PieceUse>& uses, const Settings& settings) {
    const Procedure& procedure = *settings.procedure;
    for (PieceUse& use : uses)
        if (use.filler == procedure.filler && std::fabs((use.diameter - procedure.wire).value()) < 1e-6)
            return use;
    const PieceLaid& piece = *settings.deposition.piece;
    PieceUse use;
    use.filler = procedure.filler;
    use.rods = piece.form == FillerForm::rod;
    use.diameter = procedure.wire;
    use.length = piece.length;
    use.stub = piece.stub;
    use.each = piece.mass;
    use.usable = piece.usable;
    uses.push_back(use);
    return uses.back();
}

GasUse& use_of(std::vector<GasUse>& uses, const Gas& gas) {
    for (GasUse& use : uses)
        if (use.gas == gas.name)
            return use;
    GasUse use;
    use.gas = gas.name;
    use.holds = gas.holds;
    uses.push_back(use);
    return uses.back();
}

/// Keeps the spools that every procedure's feeder takes; when no size fits all, every size that fits one.
void offer_spools(WireUse& use, const std::vector<Mass>& spools) {
    const auto listed = [](const std::vector<Mass>& list, Mass spool) {
        return std::find(list.begin(), list.end(), spool) != list.end();
    };
    std::vector<Mass> both;
    for (const Mass& spool : spools)
        if (listed(use.spools, spool))
            both.push_back(spool);
    if (!both.empty())
        use.spools = both;
    else
        use.spools.insert(use.spools.end(), spools.begin(), spools.end());
}

/// One ring of a bore as its first layer lays it, in wire.
Mass ring_wire(const BorePlan& bore) {
    const Mass ring =
        bore.deposition.density * bore.bead.section * ring_path(bore.layers.front().radius_before);
    return wire_for(ring, 1, bore.deposition);
}

/// Keeps the trial ring of the largest bore of each procedure.
void add_trial(std::vector<TrialRing>& trials, const BorePlan& bore, std::map<std::string, Length>& largest) {
    const Length radius = bore.layers.front().radius_before;
    const auto [known, is_new] = largest.emplace(bore.procedure, radius);
    if (is_new) {
        trials.push_back({bore.procedure, bore.name, ring_wire(bore)});
        return;
    }
    if (radius <= known->second)
        return;
    known->second = radius;
    for (TrialRing& trial : trials)
        if (trial.procedure == bore.procedure)
            trial = {bore.procedure, bore.name, ring_wire(bore)};
}

} // namespace

std::vector<WireUse> wire_uses(const Job& job, const std::vector<GivenBore>& given,
                               const std::vector<BorePlan>& bores) {
    std::vector<WireUse> uses;
    std::map<std::string, Length> largest;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const BorePlan& bore = bores[i];
        const Settings& own = given[i].settings;
        if (own.deposition.piece)
            continue;
        WireUse& use = use_of(uses, own);
        const auto count = static_cast<double>(bore.count);
        use.laid += count * bore.metal.laid;
        use.wire += count * bore.metal.wire;
        use.counts.push_back(count);
        use.wire_each.push_back(bore.metal.wire);
        use.arc += count * bore.metal.arc;
        use.starts += std::int64_t{bore.count} * bore.metal.starts;
        offer_spools(use, own.procedure->spools);
        for (const auto& [filler, price] : job.prices.wire_kg)
            if (filler == use.filler)
                use.price_kg = as_double(price);
        add_trial(use.trials, bore, largest);
    }
    return uses;
}

std::vector<PieceUse> piece_uses(const Job& job, const std::vector<GivenBore>& given,
                                 const std::vector<BorePlan>& bores) {
    std::vector<PieceUse> uses;
    std::map<std::string, Length> largest;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const BorePlan& bore = bores[i];
        const Settings& own = given[i].settings;
        if (!own.deposition.piece)
            continue;
        PieceUse& use = use_of_pieces(uses, own);
        const auto count = static_cast<double>(bore.count);
        use.laid += count * bore.metal.laid;
        use.counts.push_back(count);
        use.pieces_each.push_back(bore.metal.pieces);
        for (const auto& [filler, price] : job.prices.wire_kg)
            if (filler == use.filler)
                use.price_kg = as_double(price);
        add_trial(use.trials, bore, largest);
    }
    return uses;
}

std::vector<HoleUse> hole_uses(const Job& job) {
    std::vector<HoleUse> uses;
    for (const WornBore& bore : job.bores)
        for (const Hole& hole : bore.holes)
            uses.push_back({bore.name, hole.diameter, bore.count, hole.other_end == "fitting"});
    return uses;
}

std::vector<GasUse> gas_uses(const std::vector<GivenBore>& given, const std::vector<BorePlan>& bores) {
    std::vector<GasUse> uses;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const BorePlan& bore = bores[i];
        const Settings& own = given[i].settings;
        if (!own.gas)
            continue;
        GasUse& use = use_of(uses, *own.gas);
        const auto count = static_cast<double>(bore.count);
        const Volume each = gas_volume(own.gas_flow, bore.metal.arc, bore.metal.starts,
                                       own.procedure->gas_before, own.procedure->gas_after);
        use.counts.push_back(count);
        use.volume_each.push_back(each);
        use.volume += count * each;
        use.flow = std::max(use.flow, own.gas_flow);
        use.arc += count * bore.metal.arc;
        use.starts += std::int64_t{bore.count} * bore.metal.starts;
    }
    return uses;
}

std::vector<StickUse> stick_uses(const std::vector<BorePlan>& bores) {
    std::vector<StickUse> uses;
    for (const BorePlan& bore : bores) {
        const Preheat& preheat = bore.heat.preheat;
        if (preheat.contradictory || !preheat.minimum)
            continue;
        StickUse use{bore.name, {}, {}};
        const bool never_heated = rings_are_heated_against_its_rules(bore.heat);
        if (preheat.minimum->value > chill_off && !never_heated)
            use.minimum = preheat.minimum->value;
        if (preheat.interpass_max)
            use.maximum = preheat.interpass_max->value;
        if (never_heated && preheat.overruled.interpass_max)
            use.maximum = preheat.overruled.interpass_max->value;
        uses.push_back(std::move(use));
    }
    return uses;
}

} // namespace ringfill
