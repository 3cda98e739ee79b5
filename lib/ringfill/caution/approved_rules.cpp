#include <fmt/format.h>

#include <ringfill/caution/heat_rules.hpp>

namespace ringfill {
namespace {

/// Cautions that all end in the same request.
struct AskAuthor {
    CautionList& cautions;
    const Preheat& preheat;
    UnitSystem units;

    /// @param asks after "The approved procedure P-1", with a figure in it.
    void ask(const std::string& asks, std::string because, std::string source = "practice") {
        cautions.before(fmt::format("The approved procedure {} {}: ask its author before the first arc.",
                                    preheat.approved, asks),
                        std::move(because), std::move(source));
    }
    void ask_of_hold(const std::string& yet, std::string because, std::string source = "practice") {
        ask(fmt::format("holds at {} after welding, {}", hold(), yet), std::move(because), std::move(source));
    }
    std::string hold() const { return show_exact(preheat.post_heat->temperature.value, units); }
};

/// A hold of metal that is never held, or that cools slowly instead.
void ask_of_metal(AskAuthor& author, const std::string& structure) {
    if (structure == "austenitic")
        author.ask_of_hold("yet austenitic metal is never held hot",
                           "it cracks or goes brittle, hot for long");
    if (structure == "copper")
        author.ask_of_hold("yet bronze is left to cool in the open", "held hot, bronze tears as it shrinks",
                           "copper-practice");
    if (structure == "nickel")
        author.ask_of_hold("yet nickel metal is left to cool in the open",
                           "it holds no hydrogen back that would have to leave, and hot for long it loses "
                           "what it was chosen for");
    if (structure == "cast_iron")
        author.ask_of_hold("yet cast iron is cooled slowly and not held",
                           "between 200 and 450 °C, and hotter in one place than in another, it cracks",
                           "cast-iron-practice");
}

} // namespace

void judge_overruled(CautionList& cautions, const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    if (preheat.approved.empty())
        return;
    const auto& [interpass_max, preheat_most, hold_most, post_heat] = preheat.overruled;
    AskAuthor author{cautions, preheat, units};
    if (interpass_max)
        author.ask(fmt::format("lets a ring begin at {}, yet {} {} at {}",
                               show_exact(preheat.interpass_max->value, units), interpass_max->by,
                               interpass_max->by_family ? "end" : "ends",
                               show_exact(interpass_max->value, units)),
                   "the approved maximum is the higher one", interpass_max->source);
    if (heat.structure == "austenitic" && preheat.minimum && preheat.minimum->value >= over_hand_warm)
        author.ask(fmt::format("asks for a preheat of {}, yet austenitic metal is harmed by it",
                               show_exact(preheat.minimum->value, units)),
                   "it cracks or goes brittle, hot for long; it is welded hand-warm");
    if (preheat.post_heat)
        ask_of_metal(author, heat.structure);
    if (hold_most && heated_against(heat) != HeatedAgainst::softening)
        author.ask_of_hold(
            fmt::format("which softens metal that should stay under {}", show_exact(hold_most->value, units)),
            fmt::format("the hold goes over {}", hold_most->by), hold_most->source);
    if (post_heat)
        author.ask(
            fmt::format("holds at {} for {} after welding, yet the rules of the family ask for {} for {}",
                        author.hold(), show(preheat.post_heat->time),
                        show_exact(post_heat->temperature.value, units), show(post_heat->time)),
            "the approved hold is colder or shorter", post_heat->temperature.source);
}

} // namespace ringfill
