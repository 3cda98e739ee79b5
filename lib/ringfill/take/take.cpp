#include <ringfill/take/take.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/stable_sort.hpp>
#include <range/v3/view/zip.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/take/energy_use.hpp>
#include <ringfill/take/group.hpp>
#include <ringfill/units/metric.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {
namespace {

// What the planned bores of a job use, counts applied, in the order of the job.

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

void count_in(BoresUse& use, const BorePlan& bore, double one) {
    use.counts.push_back(bore.count);
    use.each.push_back(one);
    use.arc += use.counts.back() * bore.metal.arc;
    use.starts += std::int64_t{bore.count} * bore.metal.starts;
}

/// Wire stands first.
std::vector<FillerUse> filler_uses(const PlannedWork& work) {
    std::vector<FillerUse> uses;
    for (const auto& [given, bore] : ranges::views::zip(work.given, work.bores)) {
        const Procedure& procedure = *given.settings.procedure;
        FillerUse fresh{
            {}, procedure.filler, procedure.wire, bore.deposition.piece, bore.deposition.linear_mass};
        if (const Decimal* price = value_named(work.job.prices.wire_kg, procedure.filler))
            fresh.price_kg = as_double(*price);
        const auto is_same = [&](const FillerUse& known) {
            return known.filler == fresh.filler &&
                   std::fabs((known.diameter - fresh.diameter).value()) < 1e-6;
        };
        FillerUse& use = group_for(uses, is_same, fresh);
        count_in(use, bore, fresh.piece ? bore.metal.pieces : bore.metal.wire.value());
        use.laid += use.counts.back() * bore.metal.laid;
        use.wire += use.counts.back() * bore.metal.wire;
        add_trial(use.trials, bore);
        offer_spools(use.spools, procedure.spools);
    }
    ranges::stable_sort(uses, {}, [](const FillerUse& use) { return use.piece.has_value(); });
    return uses;
}

std::vector<GasUse> gas_uses(const PlannedWork& work) {
    std::vector<GasUse> uses;
    for (const auto& [given, bore] : ranges::views::zip(work.given, work.bores)) {
        const Settings& own = given.settings;
        if (!own.gas)
            continue;
        GasUse& use = group_by(uses, &GasUse::gas, own.gas->name);
        use.holds = own.gas->holds;
        const Volume each = gas_volume(own.gas_flow, bore.metal.arc, bore.metal.starts,
                                       own.procedure->gas_before, own.procedure->gas_after);
        count_in(use, bore, litres(each));
        use.volume += use.counts.back() * each;
        use.flow = std::max(use.flow, own.gas_flow);
    }
    return uses;
}

/// The temperatures each bore is held between; those of a bore that is stopped are left out.
std::vector<StickUse> stick_uses(const std::vector<BorePlan>& bores) {
    std::vector<StickUse> uses;
    for (const BorePlan& bore : bores) {
        const Preheat& preheat = bore.heat.preheat;
        if (preheat.state == PreheatState::contradictory || preheat.state == PreheatState::not_known)
            continue;
        StickUse& use = uses.emplace_back(StickUse{bore.name, {}, {}});
        if (const auto figure = preheat.figure(); figure && figure->value > chill_off)
            use.minimum = figure->value;
        if (preheat.interpass_max)
            use.maximum = preheat.interpass_max->value;
    }
    return uses;
}

} // namespace

Taken take(const PlannedWork& work, const Shop& shop) {
    const Job& job = work.job;
    const UnitSystem units = job.units;
    const auto fillers = filler_uses(work);
    std::vector<Need> all;
    all.reserve(64); // a need holds a quantity, and so is copied when the list grows
    const auto add = [&](std::vector<Need> more) { append(all, std::move(more)); };
    for (const FillerUse& use : fillers)
        all.push_back(use.piece ? piece_need(use, job.reserve, shop.packs, units)
                                : wire_need(use, job.reserve, shop.packs, shop.wear_parts, units));
    Volume gas;
    for (const GasUse& use : gas_uses(work)) {
        gas += use.volume;
        all.push_back(gas_need(use, job.reserve, shop.packs, units));
    }
    for (const FillerUse& use : fillers)
        if (!use.piece)
            add(wear_part_needs(use, shop.wear_parts, units));
    add(stick_needs(stick_uses(work.bores), shop.sticks, units));
    const auto [burned, procedures, mains] = energy_use(work, shop);
    add(fuel_needs(burned, shop.fuels, job.reserve, shop.packs, units, job.site.ambient));
    add(blanket_needs(work.bores));
    add(power_needs(procedures, mains, job.reserve, units));
    add(hole_needs(job.bores));
    add(insert_needs(work.bores));
    add(fire_watch_needs(work.fire_watch));
    refuse_if_any(Origin::job, too_much(all, units));
    std::vector<Working> working;
    for (std::size_t i = 0; i < all.size(); ++i)
        append(working, under(element_path("take", i), std::exchange(all[i].working, {})));
    return {std::move(all), std::move(working), gas,
            mains.is_whole ? std::optional(mains.drawn()) : std::nullopt};
}

std::vector<Fault> too_much(const std::vector<Need>& needs, UnitSystem units) {
    std::vector<Fault> faults;
    for (const Need& need : needs)
        if (!(need.need + need.reserve < too_much_of_one_thing))
            faults.push_back(
                fault_at_path("bores", {},
                              fmt::format("need {:.3g} {} of {}, with the reserve", need.need + need.reserve,
                                          need.kind.unit, item_text(need, units)),
                              "check counts, sizes, speeds, flow and reserve"));
    return faults;
}

} // namespace ringfill
