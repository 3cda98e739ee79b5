#include <ringfill/caution/judged.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/caution/judged_figures.hpp>

namespace ringfill {
namespace {

Judged so(bool holds, std::string because) {
    return holds ? Judged{Answer::yes, {}, std::move(because)} : Judged{};
}

bool is_in(const std::vector<std::string>& words, std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

/// Any of some words in a list of the job.
Judged listed(const Trigger& trigger, const std::optional<std::vector<std::string>>& list,
              const std::vector<std::string_view>& wanted) {
    if (!list)
        return unknown_because(trigger);
    for (const std::string_view word : wanted)
        if (is_in(*list, word))
            return so(true, fmt::format("the job names {} in {}", word, word_of(trigger.circumstance).field));
    return {};
}

Judged flag(const Trigger& trigger, const std::optional<bool>& value, bool wanted) {
    if (!value)
        return unknown_because(trigger);
    return so(*value == wanted,
              fmt::format("the job says {} is {}", word_of(trigger.circumstance).field, *value));
}

Judged coated(const Trigger& trigger, const Site& site, bool zinc) {
    if (!site.coating)
        return unknown_because(trigger);
    if (*site.coating == "unknown")
        return zinc ? Judged{Answer::unknown, {}, "nobody knows the coating"}
                    : so(true, "nobody knows the coating");
    return so(zinc ? *site.coating == "zinc" : *site.coating != "none",
              fmt::format("the coating is {}", *site.coating));
}

template <class Each, class Is>
Judged any_is(const std::vector<Each>& all, Is is, std::string because) {
    Judged found;
    for (const Each& one : all)
        if (is(one))
            found.about.push_back(one.name);
    if (found.about.empty())
        return {};
    found.answer = Answer::yes;
    found.because = std::move(because);
    if (found.about.size() == all.size())
        found.about.clear();
    return found;
}

Judged passages(const Trigger& trigger, const WorkFacts& facts) {
    const auto has = [](const BoreFacts& bore, auto wanted) {
        return std::any_of(bore.holes.begin(), bore.holes.end(), wanted);
    };
    Judged shut = any_is(
        facts.bores,
        [&](const BoreFacts& bore) {
            return has(bore, [](const Hole& hole) { return hole.other_end && *hole.other_end != "open"; });
        },
        "a hole that is plugged for the weld is shut at its far end too");
    if (shut.answer == Answer::yes)
        return shut;
    Judged open = any_is(
        facts.bores,
        [&](const BoreFacts& bore) { return has(bore, [](const Hole& hole) { return !hole.other_end; }); },
        unknown_because(trigger).because);
    if (open.answer == Answer::yes)
        open.answer = Answer::unknown;
    return open;
}

/// Whether a fuel that fits is burnt. A heater that is only assumed leaves the others open.
template <class Fits>
Judged burnt(const Trigger& trigger, const WorkFacts& facts, Fits fits, std::string_view how) {
    if (!facts.fuels)
        return unknown_because(trigger);
    for (const FuelFacts& fuel : *facts.fuels)
        if (fits(fuel))
            return so(true, fmt::format("{} {}{}", fuel.name, how,
                                        facts.fuel_is_assumed ? ", assumed: the job names no heater" : ""));
    return facts.fuel_is_assumed ? unknown_because(trigger) : Judged{};
}

Judged named(const Trigger& trigger, const WorkFacts& facts, std::string_view name) {
    return burnt(
        trigger, facts, [&](const FuelFacts& fuel) { return name.empty() || fuel.name == name; },
        "heats the boss");
}

Judged electric(const Trigger& trigger, const WorkFacts& facts) {
    if (!facts.fuels || facts.fuel_is_assumed)
        return unknown_because(trigger);
    return so(facts.fuels->empty(), "the heater is electric");
}

Judged of_materials(const Trigger& trigger, const WorkFacts& facts) {
    using enum Circumstance;
    switch (trigger.circumstance) {
    case shielding_gas:
        return any_is(
            facts.procedures, [](const ProcedureFacts& one) { return one.shielding_gas; },
            "the arc burns under shielding gas");
    case flux:
        return any_is(
            facts.procedures, [](const ProcedureFacts& one) { return one.flux; },
            "the filler carries a flux");
    case fuel_gas:
        return named(trigger, facts, "");
    case propane:
        return named(trigger, facts, "propane");
    case acetylene:
        return named(trigger, facts, "acetylene");
    case oxygen:
        return burnt(
            trigger, facts, [](const FuelFacts& fuel) { return fuel.takes_oxygen; },
            "burns with oxygen from cylinders");
    case electric_heater:
        return electric(trigger, facts);
    case delayed_cracks:
        return any_is(
            facts.bores, [](const BoreFacts& one) { return one.delayed_cracks; },
            "the rules of the metal ask for a wait");
    case plugged_passage:
        return passages(trigger, facts);
    default:
        return judged_figure(trigger, facts);
    }
}

} // namespace

Judged unknown_because(const Trigger& trigger) {
    return {
        Answer::unknown, {}, fmt::format("the job does not say: {}", word_of(trigger.circumstance).field)};
}

Judged judged(const Trigger& trigger, const WorkFacts& facts) {
    using enum Circumstance;
    const Site& site = facts.site;
    const auto near = [&](std::string_view word) { return listed(trigger, site.near, {word}); };
    switch (trigger.circumstance) {
    case always:
        return so(true, "on every job");
    case near_hydraulics:
        return near("hydraulics");
    case near_closed_cavity:
        return near("closed_cavity");
    case near_tyre:
        return near("tyre");
    case near_battery:
        return near("battery");
    case near_bearing:
        return near("bearing");
    case near_fuel:
        return near("fuel");
    case near_crane:
        return near("crane");
    case coated:
        return ringfill::coated(trigger, site, false);
    case zinc_coated:
        return ringfill::coated(trigger, site, true);
    case grease:
        return listed(trigger, site.residue, {"grease", "oil"});
    case solvent:
        return listed(trigger, site.residue, {"solvent"});
    case dust:
        return listed(trigger, site.residue, {"dust"});
    case wet:
        return flag(trigger, site.wet, true);
    case indoors:
        return flag(trigger, site.indoors, true);
    case outdoors:
        return flag(trigger, site.indoors, false);
    case enclosed:
        return flag(trigger, site.enclosed, true);
    case implant:
        return listed(trigger, site.crew, {"implant"});
    case new_to_heat:
        return listed(trigger, site.crew, {"new_to_heat"});
    default:
        return of_materials(trigger, facts);
    }
}

} // namespace ringfill
