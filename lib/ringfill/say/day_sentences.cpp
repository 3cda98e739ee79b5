#include <ringfill/say/day_sentences.hpp>

#include <iterator>
#include <map>
#include <optional>

#include <fmt/format.h>

#include <range/v3/algorithm/find_if.hpp>
#include <range/v3/view/enumerate.hpp>

#include <ringfill/day/calendar.hpp>
#include <ringfill/fault/listed.hpp>

namespace ringfill {

Sentences day_sentences(const DayPlan& plan) {
    const auto at = [&](Time time) { return day_and_clock(plan.calendar, time); };
    Sentences sentences;
    const auto add = [&](std::string text) { sentences.push_back({std::move(text), {}, Stands::head}); };
    add(fmt::format("Done {} after {} of work, the arc burns {:.0f} % of it.", at(plan.day.ends),
                    show(plan.worked), 100 * plan.arc_share()));
    std::vector<std::string> apart;
    for (const auto& [time, words] :
         {std::pair(plan.waited, "of waiting on site"), std::pair(plan.idle, "idle until a morning"),
          std::pair(plan.breaks, "of breaks")})
        if (time > Time())
            apart.push_back(fmt::format("{} {}", show(time), words));
    if (!apart.empty())
        add(fmt::format("Not counted as work: {}.", listed(apart, ", ")));
    add(plan.day.ends < plan.one_by_one
            ? fmt::format("Bores of a line take turns; one after the other it is done {}.",
                          at(plan.one_by_one))
            : "One bore after the other: taking turns would save nothing here.");
    if (plan.back)
        add(fmt::format("Come back for the crack test {} after that, on {} ({}).", show(plan.back->wait),
                        at(plan.back->at), show(plan.back->length)));
    add("Standing times are common practice and differ by crew: put your own into the table of standing "
        "times. The fire watch outlasts the heat: see the cautions.");
    return sentences;
}

namespace {

/// What the hot work on a piece begins with, the first that there is.
constexpr Step torch_steps[] = {steps::mount_torch, steps::rig_burner, steps::preheat, steps::weld};

} // namespace

std::vector<PieceClock> piece_clocks(const Schedule& day, const BorePlan& bore) {
    std::vector<PieceClock> pieces;
    for (int piece = 1; piece <= bore.count; ++piece) {
        const std::string name = piece_name(bore, piece);
        std::map<Step, std::size_t> first;
        std::optional<std::size_t> last_ring;
        for (const auto& [i, entry] : ranges::views::enumerate(day.entries))
            if (entry.bore == name) {
                first.try_emplace(entry.step, i);
                last_ring = entry.step.is_among_rings ? i : last_ring;
            }
        const auto has = [&](Step step) { return first.contains(step); };
        const auto torch = ranges::find_if(torch_steps, has);
        if (last_ring && torch != std::end(torch_steps) && has(steps::mount_tool) && has(steps::finish))
            pieces.push_back(
                {name, first[*torch], *last_ring, first[steps::mount_tool], first[steps::finish]});
    }
    return pieces;
}

} // namespace ringfill
