#include <ringfill/plan/notes.hpp>

#include <map>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/view/zip.hpp>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/caution/rules.hpp>
#include <ringfill/day/assumed_times.hpp>
#include <ringfill/fault/place.hpp>
#include <ringfill/weld/setting_notes.hpp>

namespace ringfill {
namespace {

/// Extra stock under this is not worth a note.
const Length noticeable_stock = millimetres(0.05);

/// What is out of the usual in the weld and the heat of one bore.
std::vector<std::string> bore_notes(const WornBore& bore, const BorePlan& planned, UnitSystem units) {
    std::vector<std::string> notes;
    const auto add = [&](const std::string& note) {
        notes.push_back(fmt::format("{}: {}.", bore.name, note));
    };
    if (!bore.boss_diameter)
        add("without boss_diameter the wall is not known: wall, boss mass, heat balance, fuel and the time "
            "of warm-up, rests and cooling are left out");
    else if (!planned.heat_balance)
        add("heat balance, fuel and the time of warm-up, rests and cooling are left out: " +
            planned.no_balance);
    else
        ranges::push_back(notes, balance_notes(bore.name, *planned.heat_balance, units));
    if (planned.heat_balance && planned.heat.preheat.post_heat && tempers_once_cool(planned.heat))
        add("the hold after welding follows once it has cooled; it is no part of the times and the fuel "
            "here");
    if (const Length extra = planned.build.weld_to_radius - planned.layering.end_radius;
        extra > noticeable_stock && extra <= much_extra_stock)
        add(fmt::format("the travel can be no faster, so the weld ends {} per side inside the {} asked for",
                        show(extra, units), show(2.0 * planned.build.weld_to_radius, units)));
    if (!(planned.metal.kept > Mass()))
        add("boring takes away all that is welded on average; metal kept is left out");
    for (const auto& [groove, fill] : ranges::views::zip(bore.grooves, planned.grooves)) {
        const std::string what = "the groove of " + show(groove.diameter, units);
        if (!(fill.volume > Volume()))
            add(what + " lies inside the surface to be welded; nothing to fill");
        else if (fill.path < ring_path(groove.diameter / 2.0))
            add(what + " is so shallow that its metal is less than one ring; the first layer may fill it");
    }
    return notes;
}

/// Bores of one line share a set-up of the bar.
std::vector<std::string> line_notes(const Job& job) {
    std::map<std::string, std::pair<int, std::string>> lines;
    for (const WornBore& bore : job.bores)
        if (bore.line) {
            auto& [count, names] = lines[*bore.line];
            count += bore.count;
            names += fmt::format("{}{}{}", names.empty() ? "" : ", ", bore.name,
                                 bore.count > 1 ? fmt::format(" × {}", bore.count) : "");
        }
    std::vector<std::string> notes;
    for (const auto& [line, bores] : lines)
        if (bores.first > 1)
            notes.push_back(fmt::format("line {}: one set-up of the bar for {}.", line, bores.second));
    return notes;
}

/// What the heat balances of the bores take for granted: heater, air, and what carries heat off. Empty when
/// no bore has one.
std::vector<Assumed> heat_assumed(const Job& job, const std::vector<BorePlan>& bores) {
    std::vector<Assumed> assumed;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const auto& balance = bores[i].heat_balance;
        if (!balance)
            continue;
        if (assumed.empty()) {
            assumed = balance->heater.assumed;
            if (!job.site.ambient)
                assumed.push_back({"site.ambient", show(balance->ambient, job.units), "practice"});
        }
        for (std::size_t j = 0; j < job.bores[i].attached.size() && !job.bores[i].carry_off; ++j) {
            const BossPlate& plate = balance->hot.settings.boss.plates[j];
            const std::string path = element_path(job.bores[i].path + ".attached", j);
            if (!job.bores[i].attached[j].reach)
                assumed.push_back({path + ".reach", show(plate.reach, job.units), "own"});
            if (!job.bores[i].attached[j].depth)
                assumed.push_back({path + ".depth", show(plate.middle, job.units), "practice"});
        }
        if (balance->plated)
            assumed.push_back({job.bores[i].path + ".attached",
                               fmt::format("from nothing to one plate of {}, as thick as the wall",
                                           show(balance->plated->plates.front(), job.units)),
                               "practice"});
    }
    return assumed;
}

} // namespace

std::vector<std::string> notes(const PlannedWork& work, const PlannedDay& day) {
    const Job& job = work.job;
    std::vector<std::string> all;
    const auto add = [&](std::vector<std::string> more) { ranges::push_back(all, std::move(more)); };
    for (const Settings& one : work.settings)
        add(setting_notes(one, job.units));
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        add(bore_notes(job.bores[i], work.bores[i], job.units));
    add(line_notes(job));
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        add(boring_notes(job.bores[i], work.bores[i].boring, job.units));
    if (job.boring.bar_speeds.empty())
        add({"boring: the job lists no bar_speeds, so the revolutions are computed; set the next one down."});
    add(day_notes(day));
    if (day.day)
        add(fire_watch_notes(work.fire_watch, *day.day, work.bores));
    if (!job.prices.currency)
        add({"quote: left out, because the job gives no prices.currency."});
    return all;
}

std::vector<Assumed> assumed(const PlannedWork& work, const std::vector<StepTime>& times) {
    std::vector<Assumed> all = work.job.assumed;
    for (const Settings& one : work.settings)
        leave_out_unfit(all, one);
    ranges::push_back(all, heat_assumed(work.job, work.bores));
    for (const Settings& one : work.settings)
        ranges::push_back(all, assumed_settings(one, work.job.units));
    ranges::push_back(all, assumed_cutting(work.bores, work.job.units));
    ranges::push_back(all, assumed_times(work.job, work.settings, work.bores, times));
    return all;
}

} // namespace ringfill
