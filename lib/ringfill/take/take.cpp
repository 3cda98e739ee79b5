#include <ringfill/take/take.hpp>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/boring/bar.hpp>
#include <ringfill/take/uses.hpp>

namespace ringfill {

Taken take(const PlannedWork& work, const TakeTables& tables) {
    const auto& [packs, wear_parts, sticks, fuels, cutting] = tables;
    const Job& job = work.job;
    const UnitSystem units = job.units;
    const auto wires = wire_uses(job, work.given, work.bores);
    std::vector<Need> all;
    const auto add = [&](std::vector<Need> more) { ranges::push_back(all, std::move(more)); };
    for (const WireUse& use : wires)
        add({wire_need(use, job.reserve, packs, wear_parts, units)});
    for (const PieceUse& use : piece_uses(job, work.given, work.bores))
        add({piece_need(use, job.reserve, packs, units)});
    for (const GasUse& use : gas_uses(work.given, work.bores))
        add({gas_need(use, job.reserve, packs, units)});
    for (const WireUse& use : wires)
        add(wear_part_needs(use, wear_parts, units));
    add(stick_needs(stick_uses(work.bores), sticks, units));
    add(fuel_needs(fuel_uses(work.bores), fuels, job.reserve, packs, units, job.site.ambient));
    add(blanket_needs(work.bores));
    const MainsUse mains = mains_use(work.bores, cutting.bar_drive.value);
    add(power_needs(power_uses(work.bores), mains, job.reserve, units));
    add(hole_needs(job.bores));
    add(insert_needs(work.bores, bar_settings(job.boring, cutting).edge_life.source));
    add(fire_watch_needs(work.fire_watch));
    refuse_if_any(Origin::job, too_much(all, units));
    return {std::move(all), mains.is_whole ? std::optional(drawn(mains)) : std::nullopt};
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
