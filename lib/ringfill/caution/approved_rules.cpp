
#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/listed.hpp>

namespace ringfill {
namespace {

/// Why metal of a structure is not held hot after welding.
struct NeverHeld {
    std::string_view structure;
    std::string_view yet;
    std::string_view because;
    const char* source = "practice";
};

constexpr NeverHeld never_held[] = {
    {"austenitic", "austenitic metal is never held hot", "it cracks or goes brittle, hot for long"},
    {"copper", "bronze is left to cool in the open", "held hot, bronze tears as it shrinks",
     "copper-practice"},
    {"nickel", "nickel metal is left to cool in the open",
     "it holds no hydrogen back that would have to leave, and hot for long it loses what it was chosen for"},
    {"cast_iron", "cast iron is cooled slowly and not held",
     "between 200 and 450 °C, and hotter in one place than in another, it cracks", "cast-iron-practice"}};

std::string asked_by(const Approved& approved, UnitSystem units) {
    std::vector<std::string> parts;
    const auto& [reference, preheat_min, interpass_max, heat_input, hold, confirmed] = approved;
    static_cast<void>(confirmed);
    if (preheat_min)
        parts.push_back("preheat at least " + show_exact(*preheat_min, units));
    if (interpass_max)
        parts.push_back("interpass at most " + show_exact(*interpass_max, units));
    if (heat_input)
        parts.push_back(fmt::format("heat input {:.3g} kJ/mm to {:.3g} kJ/mm", kj_mm(heat_input->first),
                                    kj_mm(heat_input->second)));
    if (hold && hold->temperature && hold->time)
        parts.push_back(
            fmt::format("after welding {} for {}", show_exact(*hold->temperature, units), show(*hold->time)));
    return parts.empty() ? "what it asks for stands in it" : listed(parts, ", ");
}

} // namespace

void approved_rules(CautionList& cautions, const Procedure& procedure) {
    if (!procedure.approved)
        return;
    const Approved& approved = *procedure.approved;
    const bool contradictory =
        approved.preheat_min && approved.interpass_max &&
        approved.interpass_max->value() < approved.preheat_min->value() + least_window_K - 1e-6;
    cautions.before(
        "The approved procedure {} rules: {}.{}", "the job gives it; the methods stand beside it",
        approved.reference, asked_by(approved, cautions.units),
        contradictory
            ? " Contradictory: between its minimum and its maximum no ring could begin; ask before any arc."
            : "");
}

void overruled_rules(CautionList& cautions, const RuledBore& on) {
    const BoreHeat& heat = on.plan.heat;
    const Preheat& preheat = heat.preheat;
    if (preheat.approved.empty())
        return;
    const auto& [interpass_max, rings_most, preheat_most, hold_most, post_heat] = preheat.overruled;
    static_cast<void>(rings_most); // a stop, not a caution
    static_cast<void>(preheat_most);
    const auto exact = [&](const AskedTemperature& asked) { return show_exact(asked.value, on.units); };
    const auto ask = [&](const std::string& asks, std::string_view because, const std::string& source) {
        cautions.before_by(source, "The approved procedure {} {}: ask its author before the first arc.",
                           "{2}", preheat.approved, asks, because);
    };
    if (interpass_max)
        ask(fmt::format("lets a ring begin at {}, yet {} {} at {}", exact(*preheat.interpass_max),
                        interpass_max->by, interpass_max->by_family ? "end" : "ends", exact(*interpass_max)),
            "the approved maximum is the higher one", interpass_max->source);
    if (heat.structure == "austenitic" && preheat.minimum && preheat.minimum->value >= over_hand_warm)
        ask(fmt::format("asks for a preheat of {}, yet austenitic metal is harmed by it",
                        exact(*preheat.minimum)),
            "it cracks or goes brittle, hot for long; it is welded hand-warm", "practice");
    const std::string held = preheat.post_heat ? "holds at " + exact(preheat.post_heat->temperature) : "";
    for (const auto& [structure, yet, because, source] : never_held)
        if (preheat.post_heat && heat.structure == structure)
            ask(fmt::format("{} after welding, yet {}", held, yet), because, source);
    if (hold_most && heated_against(heat) != HeatedAgainst::softening)
        ask(fmt::format("{} after welding, which softens metal that should stay under {}", held,
                        exact(*hold_most)),
            fmt::format("the hold goes over {}", hold_most->by), hold_most->source);
    if (post_heat)
        ask(fmt::format("{} for {} after welding, yet the rules of the family ask for {} for {}", held,
                        show(preheat.post_heat->time), exact(post_heat->temperature), show(post_heat->time)),
            "the approved hold is colder or shorter", post_heat->temperature.source);
}

} // namespace ringfill
