#include <ringfill/caution/approved_rules.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

std::string heat_input(EnergyPerLength energy) {
    return fmt::format("{:.3g} kJ/mm", energy.value() / 1e6);
}

std::string asked(const Approved& approved, UnitSystem units) {
    std::string text;
    const auto add = [&](const std::string& part) { text += (text.empty() ? "" : ", ") + part; };
    if (approved.preheat_min)
        add("preheat at least " + show_exact(*approved.preheat_min, units));
    if (approved.interpass_max)
        add("interpass at most " + show_exact(*approved.interpass_max, units));
    if (approved.heat_input)
        add(fmt::format("heat input {} to {}", heat_input(approved.heat_input->first),
                        heat_input(approved.heat_input->second)));
    if (approved.post_heat && approved.post_heat->temperature && approved.post_heat->time)
        add(fmt::format("after welding {} for {}", show_exact(*approved.post_heat->temperature, units),
                        show(*approved.post_heat->time)));
    return text.empty() ? "what it asks for stands in it" : text;
}

} // namespace

std::optional<Caution> approved_caution(const Procedure& procedure, UnitSystem units) {
    if (!procedure.approved)
        return std::nullopt;
    const Approved& approved = *procedure.approved;
    const bool contradictory =
        approved.preheat_min && approved.interpass_max && *approved.interpass_max < *approved.preheat_min;
    return Caution{
        procedure.name,
        "before",
        "yes",
        fmt::format("The approved procedure {} rules: {}.{}", approved.reference, asked(approved, units),
                    contradictory ? " Contradictory: its minimum is over its maximum; ask before any arc."
                                  : ""),
        "the job gives it; the methods stand beside it",
        "practice"};
}

} // namespace ringfill
