#include <ringfill/take/take.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/stable_sort.hpp>
#include <range/v3/view/zip.hpp>

#include <ringfill/fault/place.hpp>
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

/// "warm-up 5.7, reheats 3.6, hold 22.6 MJ"
std::string heat_in_parts(const HeatRun& run) {
    std::string text;
    const std::pair<const char*, Energy> parts[] = {{"warm-up", run.warm_up_heat},
                                                    {run.held ? "kept warm" : "reheats", run.reheat_heat},
                                                    {"hold", run.post_heat_heat},
                                                    {"slow cooling", run.cooling().heat}};
    for (const auto& [name, heat] : parts)
        if (heat > Energy())
            text += fmt::format("{}{} {:.3g}", text.empty() ? "" : ", ", name, heat.value() / 1e6);
    return text + " MJ";
}

/// The stretches of a run in which the flame comes and goes.
std::vector<FlameSpell> flame_spells(const HeatRun& run) {
    const BossCooling& cooling = run.cooling();
    return {{"warm-up", run.warm_up_heat, run.warm_up.time},
            {run.held ? "kept warm while welding" : "reheats while welding", run.reheat_heat,
             run.welding + run.pausing + run.resting + run.reheating},
            {"hold", run.post_heat_heat, run.post_heating},
            {"slow cooling", cooling.heat,
             cooling.to_rough.value_or(Time()) + cooling.to_finish.value_or(Time())}};
}

/// Why the heat of a bore that a flame warms is not known, or nothing: it is, or none is needed.
std::string unknown_heat(const WornBore& bore, const BorePlan& planned, Temperature air) {
    const Preheat& preheat = planned.heat.preheat;
    if (preheat.state == PreheatState::contradictory || preheat.state == PreheatState::not_known)
        return {};
    const auto figure = preheat.figure();
    if (!figure || !(figure->value > air))
        return {};
    if (!bore.boss_diameter)
        return "give boss_diameter";
    if (!planned.heat_balance)
        return planned.no_balance;
    const HeatBalance& balance = *planned.heat_balance;
    return balance.cold().is_whole() ? "" : std::string(word_of(balance.cold().run.end));
}

/// What flames burn, and what arc, electric heater and boring bar draw.
struct EnergyUse {
    std::vector<FuelUse> fuels;
    std::vector<PowerUse> procedures;
    MainsUse mains;
};

/// A bore without a balance is welded without a rest; like one whose run breaks off it gives no figure of
/// fuel, which its line says.
EnergyUse energy_use(const PlannedWork& work, const Shop& shop) {
    const std::vector<BorePlan>& bores = work.bores;
    const Power bar_drive = shop.cutting.bar_drive.value;
    const Temperature air = work.job.site.ambient.value_or(usual_ambient);
    const auto source = heat_source(work.job.heater, shop.fuels);
    EnergyUse all;
    auto& [fuels, procedures, mains] = all;
    mains.bar_drive = bar_drive;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const BorePlan& bore = bores[i];
        const double count = bore.count;
        const auto& balance = bore.heat_balance;
        mains.boring += count * bar_drive * bore.boring.cutting_time;
        const bool has_arc = bore.heat.voltage && bore.heat.current;
        mains.is_whole = mains.is_whole && has_arc;
        if (has_arc) {
            PowerUse& use = group_by(procedures, &PowerUse::procedure, bore.procedure);
            const Time run = balance ? balance->busiest_arc(in_si<Time>(duty_period)) : bore.metal.arc;
            use = {bore.procedure, *bore.heat.current, *bore.heat.voltage, std::max(use.busiest_arc, run)};
            mains.arc += count * use.voltage * use.current * bore.metal.arc;
        }
        if (std::string unknown = unknown_heat(work.job.bores[i], bore, air); source && !unknown.empty())
            fuels.push_back({bore.name,
                             bore.count,
                             Energy(),
                             source->efficiency,
                             source->power,
                             source->fuel,
                             {},
                             {},
                             std::move(unknown)});
        if (!balance)
            continue;
        const HeatSource& heater = balance->heater;
        const bool burns = balance->cold().is_whole();
        if (burns)
            fuels.push_back({bore.name, bore.count, balance->heater_heat(), heater.efficiency, heater.power,
                             heater.fuel, heat_in_parts(balance->cold().run),
                             flame_spells(balance->cold().run)});
        if (!heater.fuel.empty())
            continue;
        mains.electric_heater = heater.power;
        mains.is_whole = mains.is_whole && burns;
        if (burns)
            mains.heating += count * balance->heater_heat() / heater.efficiency;
    }
    return all;
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
