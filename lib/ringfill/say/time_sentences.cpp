#include <ringfill/say/time_sentences.hpp>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <span>

#include <fmt/format.h>

#include <range/v3/algorithm/count.hpp>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/heat/stitches.hpp>
#include <ringfill/heat/surface_loss.hpp>
#include <ringfill/heat/waits.hpp>

namespace ringfill {
namespace {

/// "2 rests, 12 min together", or "no rest".
std::string together(int count, std::string_view one, Time time) {
    return count == 0 ? fmt::format("no {}", one)
                      : fmt::format("{}, {} together", counted(count, one), show(time));
}

std::string rests_in_words(const HeatBalance& balance) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    const std::string text = together(hot.rests, "rest", hot.resting);
    if (hot.rests == 0 || !balance.plated)
        return text;
    return fmt::format("{} at most (with the plate {})", text,
                       cold.rests == 0 ? "none"
                                       : fmt::format("{}, {} together", cold.rests, show(cold.resting)));
}

std::string sum_of_it(const HeatBalance& balance, Time arc, UnitSystem units) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    const HeatRunSettings& settings = balance.hot.settings;
    if (!balance.hot.is_whole() || !balance.cold().is_whole())
        return fmt::format("No time can be given: {}. What follows is as far as it goes.",
                           word_of(end_of(balance)));
    const Time hold = std::max(hot.post_heating, cold.post_heating);
    const auto rough = longest_cooling(balance, &BossCooling::to_rough);
    const auto finish = longest_cooling(balance, &BossCooling::to_finish);
    const auto total = total_time(balance, arc);
    return fmt::format(
        "Time of one: warm-up {}, arc {}, pauses between rings and layers {}, {}, {}{}{}{}{}; {}.",
        show(cold.warm_up.time), show(arc), show(hot.told_pausing), rests_in_words(balance),
        together(cold.reheats, "reheat", cold.reheating),
        cold.reheats > 0 && balance.plated ? " at most" : "",
        hold > Time() ? fmt::format(", hold {}", show(hold)) : "",
        rough ? fmt::format(", {} to {} for roughing", show(*rough), show(settings.rough_below, units)) : "",
        finish
            ? fmt::format(", {} more to {} for finishing", show(*finish), show(settings.finish_below, units))
            : "",
        total ? fmt::format("{} in all", show(*total))
              : fmt::format("it does not end well: {}", word_of(end_of(balance))));
}

/// How the boss is brought to its temperature, where it is.
std::string warm_up_in_words(const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.cold().run;
    const WarmedUp& warm = run.warm_up;
    if (!warm.is_ready || !(warm.time > Time()))
        return {};
    std::string text = fmt::format("Read the bore, not the heated side: when the bore is warm the outside is "
                                   "at {} and the boss as a whole "
                                   "at {}, the bore at {}",
                                   show(warm.skin, units), show(warm.mean, units), show(warm.bore, units));
    if (warm.skin_waited)
        text += fmt::format("; the heater is on for {} of the {}, since the outside must stay under {}",
                            show(warm.heating), show(warm.time), show(balance.cold().settings.skin, units));
    if (run.held)
        text += fmt::format(". While rings are laid it stays on about {:.0f} % of the time",
                            std::ceil(100 * run.held->duty - 1e-9));
    return text + ".";
}

/// "rings 1 to 9", and without the first word where it was said.
std::string rings_in_words(const ToldDwell& dwell, bool is_first, bool in_stitches) {
    if (dwell.from_ring == dwell.to_ring)
        return fmt::format("{}{}", is_first ? in_stitches ? "stitch " : "ring " : "", dwell.from_ring);
    return fmt::format("{}{} to {}", is_first ? in_stitches ? "stitches " : "rings " : "", dwell.from_ring,
                       dwell.to_ring);
}

/// "35 s", "6 min"
std::string dwell_time(Time told) {
    return told > longest_dwell ? show(told) : fmt::format("{:.0f} s", told.value());
}

/// "dwell 35 s (rings 1 to 9), 50 s (10 to 14)" of each layer, layers alike together.
std::string dwells_in_words(const HeatRun& run) {
    std::vector<std::pair<std::string, std::string>> layers; // what is told, of whom
    for (auto dwell = run.dwells.begin(); dwell != run.dwells.end();) {
        const std::string of = fmt::format("{} layer {}", dwell->pass, dwell->layer);
        std::string told;
        const auto first = dwell;
        for (; dwell != run.dwells.end() && dwell->pass == first->pass && dwell->layer == first->layer;
             ++dwell)
            told += fmt::format("{}{} ({})", told.empty() ? "" : ", ", dwell_time(dwell->told),
                                rings_in_words(*dwell, dwell == first, run.stitches > 0));
        if (!layers.empty() && layers.back().first == told)
            layers.back().second += " and " + of;
        else
            layers.emplace_back(told, of);
    }
    std::string text;
    for (const auto& [told, of] : layers)
        text += fmt::format("{}{}: dwell {}", text.empty() ? "" : "; ", of, told);
    return text;
}

/// How iron that is laid cold is welded.
std::string stitches_in_words(const HeatRunSettings& settings, int stitches, UnitSystem units) {
    return fmt::format(
        "Laid in {} stitches of {} at most instead of whole rings, each peened while it is hot "
        "({}), the next at another place, once the part reads under {}.",
        stitches, show(longest_stitch, units), show(settings.step_over),
        show_maximum(stitch_begins_under(settings.ambient, settings.maximum), units));
}

/// What is waited between rings, and what the start must read.
std::string pauses_in_words(const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.hot.run;
    if (!balance.hot.is_whole())
        return {};
    const HeatRunSettings& settings = balance.hot.settings;
    std::string dwells = dwells_in_words(run);
    if (!dwells.empty())
        dwells[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(dwells[0])));
    if (run.stitches > 0)
        return stitches_in_words(settings, run.stitches, units) + (dwells.empty() ? "" : " " + dwells + ".");
    const Temperature start = in_si<Temperature>(settings.maximum.value() - start_margin_K);
    std::string text =
        dwells.empty()
            ? fmt::format(
                  "No dwell is needed between rings beyond stepping over ({}): the place where a ring "
                  "begins",
                  show(settings.step_over))
            : dwells + ". The place where a ring begins";
    text += fmt::format(" must read under {} just before the arc.", show_maximum(start, units));
    if (run.rests > 0)
        text += " What shortens a rest: another bore of the line in turns, or less power.";
    return text;
}

/// What shortens long waits, and by how much.
std::string shorter_waits_in_words(const HeatBalance& balance, UnitSystem units) {
    const auto waits = shorter_with_plate(balance);
    if (!waits)
        return {};
    return fmt::format(
        "These waits, {} past stepping over, are for a boss with nothing on it. With one plate of {} "
        "they are {}: say what stands on the boss (attached).",
        show(waits->bare), show(waits->plate, units), waits->plated > Time() ? show(waits->plated) : "none");
}

/// How it cools bare and under a blanket.
std::string cooling_in_words(const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.hot.run;
    if (!balance.hot.is_whole())
        return {};
    const HeatRunSettings& settings = balance.hot.settings;
    const auto to = [&](const BossCooling& cooling) {
        if (!cooling.to_rough || !cooling.to_finish)
            return std::string("it does not get cold");
        return fmt::format("{} to {} and {} to {}", show(*cooling.to_rough),
                           show(settings.rough_below, units), show(*cooling.to_rough + *cooling.to_finish),
                           show(settings.finish_below, units));
    };
    return fmt::format("The bore cools bare in {}; under {} of blanket in {}{}.", to(run.bare),
                       show(settings.blanket, units), to(run.wrapped),
                       run.wrapped_with_plates
                           ? fmt::format("; with the plates under it too in {}", to(*run.wrapped_with_plates))
                           : "");
}

std::string heater_in_words(const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.cold().run;
    std::string plates;
    for (const BossPlate& plate : balance.cold().settings.boss.plates)
        plates += fmt::format(", a plate of {} that reaches {} past it", show(plate.thickness, units),
                              show(plate.reach, units));
    return fmt::format(
        "Worked out with a {} of {}{}; {} of {:.3g} kW, {:.3g} % of it into the metal (needs over {:.1f} "
        "kW); air of {}, {:.0f} W/(m² K) to it and what bare metal radiates{}.",
        run.stitches > 0 && balance.cold().settings.part >= run.boss ? "part" : "boss", show(run.boss, units),
        plates, balance.heater.kind, balance.heater.power.value() / 1e3, 100 * balance.heater.efficiency,
        std::max(0.0, std::ceil(heater_needed(balance).value() / 100 - 1e-9) / 10),
        show(balance.ambient, units), still_air_W_m2K,
        balance.hot.is_whole() ? fmt::format("; peak {}", show(balance.peak(), units)) : "");
}

} // namespace

std::string counted(std::int64_t count, std::string_view thing) {
    return fmt::format("{} {}{}", count, thing, count == 1 ? "" : "s");
}

std::string place_of(const HeatStep& step) {
    if (step.pass.empty())
        return {};
    if (step.after_ring == 0)
        return fmt::format("before {} layer {}", step.pass, step.layer);
    return fmt::format("{} {} layer {} {} {}", step.stage == HeatStage::weld ? "to" : "after", step.pass,
                       step.layer, step.in_stitches ? "stitch" : "ring", step.after_ring);
}

std::string left_out(const HeatRun& run, std::size_t begin, std::size_t end) {
    const std::span<const HeatStep> steps(run.steps.data() + begin, end - begin);
    const auto count = [&](HeatStage stage) { return ranges::count(steps, stage, &HeatStep::stage); };
    return fmt::format("… {} steps more, {} and {} among them; the result file has them all", end - begin,
                       counted(count(HeatStage::rest), "rest"), counted(count(HeatStage::reheat), "reheat"));
}

Sentences time_sentences(const HeatBalance& balance, Time arc, UnitSystem units) {
    Sentences sentences;
    for (std::string text : {sum_of_it(balance, arc, units), warm_up_in_words(balance, units),
                             pauses_in_words(balance, units), shorter_waits_in_words(balance, units),
                             cooling_in_words(balance, units), heater_in_words(balance, units)})
        if (!text.empty())
            sentences.push_back({std::move(text)});
    return sentences;
}

} // namespace ringfill
