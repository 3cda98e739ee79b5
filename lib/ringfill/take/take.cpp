#include <ringfill/take/take.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/boring/bar.hpp>
#include <ringfill/take/group.hpp>
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

std::vector<WireUse> wire_uses(const PlannedWork& work) {
    std::vector<WireUse> uses;
    for (std::size_t i = 0; i < work.bores.size(); ++i) {
        const Settings& own = work.given[i].settings;
        if (own.deposition.piece)
            continue;
        const Metal& metal = work.bores[i].metal;
        WireUse& use = use_of(uses, work.job, *own.procedure, work.bores[i]);
        const double count = use.counts.back();
        use.linear_mass = own.deposition.linear_mass;
        use.wire += count * metal.wire;
        use.wire_each.push_back(metal.wire);
        use.arc += count * metal.arc;
        use.starts += std::int64_t{work.bores[i].count} * metal.starts;
        offer_spools(use.spools, own.procedure->spools);
    }
    return uses;
}

std::vector<PieceUse> piece_uses(const PlannedWork& work) {
    std::vector<PieceUse> uses;
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        if (const Settings& own = work.given[i].settings; own.deposition.piece) {
            PieceUse& use = use_of(uses, work.job, *own.procedure, work.bores[i]);
            use.piece = *own.deposition.piece;
            use.pieces_each.push_back(work.bores[i].metal.pieces);
        }
    return uses;
}

std::vector<GasUse> gas_uses(const PlannedWork& work) {
    std::vector<GasUse> uses;
    for (std::size_t i = 0; i < work.bores.size(); ++i) {
        const Settings& own = work.given[i].settings;
        if (!own.gas)
            continue;
        const Metal& metal = work.bores[i].metal;
        GasUse& use = group_by(uses, &GasUse::gas, own.gas->name);
        use.holds = own.gas->holds;
        const double count = work.bores[i].count;
        const Volume each = gas_volume(own.gas_flow, metal.arc, metal.starts, own.procedure->gas_before,
                                       own.procedure->gas_after);
        use.counts.push_back(count);
        use.volume_each.push_back(each);
        use.volume += count * each;
        use.flow = std::max(use.flow, own.gas_flow);
        use.arc += count * metal.arc;
        use.starts += std::int64_t{work.bores[i].count} * metal.starts;
    }
    return uses;
}

bool burns(const BorePlan& bore) {
    return bore.heat_balance && bore.heat_balance->cold().is_whole();
}

/// "warm-up 5.7, reheats 3.6, hold 22.6, slow cooling 25.8 MJ"
std::string heat_in_parts(const HeatRun& run) {
    std::string text;
    const std::pair<const char*, Energy> parts[] = {{"warm-up", run.warm_up_heat},
                                                    {"reheats", run.reheat_heat},
                                                    {"hold", run.post_heat_heat},
                                                    {"slow cooling, less under a blanket", run.slow_heat}};
    for (const auto& [name, heat] : parts)
        if (heat > Energy())
            text += fmt::format("{}{} {:.3g}", text.empty() ? "" : ", ", name, heat.value() / 1e6);
    return text + " MJ";
}

/// Heat from a heater. A run that breaks off gives no figure of fuel that could be loaded: the cautions say
/// so.
std::vector<FuelUse> fuel_uses(const std::vector<BorePlan>& bores) {
    std::vector<FuelUse> uses;
    for (const BorePlan& bore : bores)
        if (const auto& balance = bore.heat_balance; burns(bore))
            uses.push_back({bore.name, bore.count, balance->heater_heat(), balance->heater.efficiency,
                            balance->heater.power, balance->heater.fuel, heat_in_parts(balance->cold().run)});
    return uses;
}

/// The load of each procedure; a bore without a balance is welded without a stop.
std::vector<PowerUse> power_uses(const std::vector<BorePlan>& bores) {
    std::vector<PowerUse> uses;
    for (const BorePlan& bore : bores) {
        if (!bore.heat.voltage || !bore.heat.current)
            continue;
        const Time run =
            bore.heat_balance ? bore.heat_balance->busiest_arc(in_si<Time>(duty_period)) : bore.metal.arc;
        PowerUse& use = group_by(uses, &PowerUse::procedure, bore.procedure);
        use = {bore.procedure, *bore.heat.current, *bore.heat.voltage, std::max(use.busiest_arc, run)};
    }
    return uses;
}

/// What arc, electric heater and boring bar draw.
MainsUse mains_use(const std::vector<BorePlan>& bores, Power bar_drive) {
    MainsUse mains;
    mains.bar_drive = bar_drive;
    for (const BorePlan& bore : bores) {
        const auto count = static_cast<double>(bore.count);
        mains.boring += count * bar_drive * bore.boring.cutting_time;
        const bool has_arc = bore.heat.voltage && bore.heat.current;
        if (has_arc)
            mains.arc += count * *bore.heat.voltage * *bore.heat.current * bore.metal.arc;
        mains.is_whole = mains.is_whole && has_arc;
        if (!bore.heat_balance || !bore.heat_balance->heater.fuel.empty())
            continue;
        const HeatSource& heater = bore.heat_balance->heater;
        mains.electric_heater = heater.power;
        mains.is_whole = mains.is_whole && burns(bore);
        if (burns(bore))
            mains.heating += count * bore.heat_balance->heater_heat() / heater.efficiency;
    }
    return mains;
}

/// The temperatures each bore is held between; those of a bore that is stopped are left out.
std::vector<StickUse> stick_uses(const std::vector<BorePlan>& bores) {
    std::vector<StickUse> uses;
    for (const BorePlan& bore : bores) {
        const Preheat& preheat = bore.heat.preheat;
        if (preheat.state == PreheatState::contradictory || preheat.state == PreheatState::not_known)
            continue;
        StickUse& use = uses.emplace_back(StickUse{bore.name, {}, {}});
        const bool never_heated = rings_are_heated_against_its_rules(bore.heat);
        if (*preheat.least() > chill_off && !never_heated)
            use.minimum = preheat.least();
        const auto& own_most = preheat.overruled.interpass_max;
        if (const auto& most = never_heated && own_most ? own_most : preheat.interpass_max)
            use.maximum = most->value;
    }
    return uses;
}

} // namespace

Taken take(const PlannedWork& work, const Shop& shop) {
    const Job& job = work.job;
    const UnitSystem units = job.units;
    const auto wires = wire_uses(work);
    std::vector<Need> all;
    const auto add = [&](std::vector<Need> more) { ranges::push_back(all, std::move(more)); };
    for (const WireUse& use : wires)
        add({wire_need(use, job.reserve, shop.packs, shop.wear_parts, units)});
    for (const PieceUse& use : piece_uses(work))
        add({piece_need(use, job.reserve, shop.packs, units)});
    Volume gas;
    for (const GasUse& use : gas_uses(work)) {
        gas += use.volume;
        add({gas_need(use, job.reserve, shop.packs, units)});
    }
    for (const WireUse& use : wires)
        add(wear_part_needs(use, shop.wear_parts, units));
    add(stick_needs(stick_uses(work.bores), shop.sticks, units));
    add(fuel_needs(fuel_uses(work.bores), shop.fuels, job.reserve, shop.packs, units, job.site.ambient));
    add(blanket_needs(work.bores));
    const MainsUse mains = mains_use(work.bores, shop.cutting.bar_drive.value);
    add(power_needs(power_uses(work.bores), mains, job.reserve, units));
    add(hole_needs(job.bores));
    add(insert_needs(work.bores, bar_settings(job.boring, shop.cutting).edge_life.source));
    add(fire_watch_needs(work.fire_watch));
    refuse_if_any(Origin::job, too_much(all, units));
    return {std::move(all), gas, mains.is_whole ? std::optional(drawn(mains)) : std::nullopt};
}

std::vector<Fault> too_much(const std::vector<Need>& needs, UnitSystem units) {
    std::vector<Fault> faults;
    for (const Need& need : needs)
        if (!(need.need + need.reserve < too_much_of_one_thing))
            faults.push_back(
                fault_at_path("bores", {},
                              fmt::format("need {:.3g} {} of {}, with the reserve", need.need + need.reserve,
                                          unit_text(unit_of(need.kind)), item_text(need, units)),
                              "check counts, sizes, speeds, flow and reserve"));
    return faults;
}

} // namespace ringfill
