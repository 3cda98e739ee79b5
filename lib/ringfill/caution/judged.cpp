#include <ringfill/caution/judged.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

/// Circumstances that a list of the site tells by a word, or by another one.
struct ByList {
    Circumstance circumstance;
    std::optional<std::vector<std::string>> Site::*list;
    std::string_view word;
    std::string_view other_word = {};
};

const ByList* find_list(Circumstance circumstance) {
    using enum Circumstance;
    static constexpr ByList lists[] = {{near_hydraulics, &Site::near, "hydraulics"},
                                       {near_closed_cavity, &Site::near, "closed_cavity"},
                                       {near_tyre, &Site::near, "tyre"},
                                       {near_battery, &Site::near, "battery"},
                                       {near_bearing, &Site::near, "bearing"},
                                       {near_fuel, &Site::near, "fuel"},
                                       {near_crane, &Site::near, "crane"},
                                       {grease, &Site::residue, "grease", "oil"},
                                       {solvent, &Site::residue, "solvent"},
                                       {dust, &Site::residue, "dust"},
                                       {implant, &Site::crew, "implant"},
                                       {new_to_heat, &Site::crew, "new_to_heat"}};
    const auto found = ranges::find(lists, circumstance, &ByList::circumstance);
    return found == std::end(lists) ? nullptr : found;
}

/// Circumstances that the site says are so, or are not.
struct ByFlag {
    Circumstance circumstance;
    std::optional<bool> Site::*flag;
    bool wanted = true;
};

const ByFlag* find_flag(Circumstance circumstance) {
    using enum Circumstance;
    static constexpr ByFlag flags[] = {{wet, &Site::wet},
                                       {indoors, &Site::indoors},
                                       {outdoors, &Site::indoors, false},
                                       {enclosed, &Site::enclosed}};
    const auto found = ranges::find(flags, circumstance, &ByFlag::circumstance);
    return found == std::end(flags) ? nullptr : found;
}

Judged it_holds(bool holds, std::string because) {
    return holds ? Judged{Answer::yes, {}, std::move(because)} : Judged{};
}

Judged judged_list(const Trigger& trigger, const ByList& by, const Site& site) {
    const auto& list = site.*by.list;
    if (!list)
        return unknown_because(trigger);
    for (const std::string_view word : {by.word, by.other_word})
        if (ranges::find(*list, word) != list->end())
            return it_holds(true,
                            fmt::format("the job names {} in {}", word, word_of(trigger.circumstance).field));
    return {};
}

Judged judged_flag(const Trigger& trigger, const ByFlag& by, const Site& site) {
    const auto& flag = site.*by.flag;
    return flag ? it_holds(*flag == by.wanted,
                           fmt::format("the job says {} is {}", word_of(trigger.circumstance).field, *flag))
                : unknown_because(trigger);
}

Judged judged_coating(const Trigger& trigger, const Site& site) {
    const bool zinc = trigger.circumstance == Circumstance::zinc_coated;
    if (!site.coating)
        return unknown_because(trigger);
    if (*site.coating == "unknown")
        return {zinc ? Answer::unknown : Answer::yes, {}, "nobody knows the coating"};
    return it_holds(zinc ? *site.coating == "zinc" : *site.coating != "none",
                    fmt::format("the coating is {}", *site.coating));
}

template <class Each, class Is>
Judged any_is(const Trigger& trigger, const std::vector<Each>& all, Is is, std::string because) {
    Judged found = any_of(trigger, all, all.size(), is);
    if (found.answer == Answer::yes)
        found.because = std::move(because);
    return found;
}

/// Of a bore whether a hole is shut at its far end; nothing where the job does not say of one.
std::optional<bool> has_shut_hole(const BoreFacts& bore) {
    std::optional<bool> shut = false;
    for (const Hole& hole : bore.holes)
        if (hole.other_end && *hole.other_end != "open")
            return true;
        else if (!hole.other_end)
            shut = std::nullopt;
    return shut;
}

/// Whether a fuel that fits is burnt. A heater that is only assumed leaves the others open.
template <class Fits>
Judged burnt(const Trigger& trigger, const WorkFacts& facts, Fits fits, std::string_view how) {
    if (!facts.fuels)
        return unknown_because(trigger);
    for (const FuelFacts& fuel : *facts.fuels)
        if (fits(fuel))
            return it_holds(true,
                            fmt::format("{} {}{}", fuel.name, how,
                                        facts.fuel_is_assumed ? ", assumed: the job names no heater" : ""));
    return facts.fuel_is_assumed ? unknown_because(trigger) : Judged{};
}

Judged judged_fuel(const Trigger& trigger, const WorkFacts& facts) {
    const auto heats = [&](std::string_view name) {
        return burnt(
            trigger, facts, [&](const FuelFacts& fuel) { return name.empty() || fuel.name == name; },
            "heats the boss");
    };
    using enum Circumstance;
    switch (trigger.circumstance) {
    case propane:
        return heats("propane");
    case acetylene:
        return heats("acetylene");
    case oxygen:
        return burnt(
            trigger, facts, [](const FuelFacts& fuel) { return fuel.takes_oxygen; },
            "burns with oxygen from cylinders");
    case electric_heater:
        return !facts.fuels || facts.fuel_is_assumed
                   ? unknown_because(trigger)
                   : it_holds(facts.fuels->empty(), "the heater is electric");
    default:
        return heats("");
    }
}

} // namespace

Judged unknown_because(const Trigger& trigger) {
    return {
        Answer::unknown, {}, fmt::format("the job does not say: {}", word_of(trigger.circumstance).field)};
}

Judged judged(const Trigger& trigger, const WorkFacts& facts) {
    using enum Circumstance;
    if (const ByList* by = find_list(trigger.circumstance))
        return judged_list(trigger, *by, facts.site);
    if (const ByFlag* by = find_flag(trigger.circumstance))
        return judged_flag(trigger, *by, facts.site);
    switch (trigger.circumstance) {
    case always:
        return it_holds(true, "on every job");
    case coated:
    case zinc_coated:
        return judged_coating(trigger, facts.site);
    case shielding_gas:
        return any_is(
            trigger, facts.procedures, [](const ProcedureFacts& one) { return one.shielding_gas; },
            "the arc burns under shielding gas");
    case flux:
        return any_is(
            trigger, facts.procedures, [](const ProcedureFacts& one) { return one.flux; },
            "the filler carries a flux");
    case delayed_cracks:
        return any_is(
            trigger, facts.bores, [](const BoreFacts& one) { return one.delayed_cracks; },
            "the rules of the metal ask for a wait");
    case plugged_passage: {
        Judged shut = any_is(trigger, facts.bores, has_shut_hole,
                             "a hole that is plugged for the weld is shut at its far end too");
        shut.open.clear();
        return shut;
    }
    case fuel_gas:
    case propane:
    case acetylene:
    case oxygen:
    case electric_heater:
        return judged_fuel(trigger, facts);
    default:
        return judged_figure(trigger, facts);
    }
}

} // namespace ringfill
