#include <fmt/format.h>

#include <ringfill/caution/preheat_rules.hpp>

namespace ringfill {
namespace {

/// Cautions that all end in the same request.
class AskAuthor {
  public:
    AskAuthor(const WornBore& bore, const Preheat& preheat, UnitSystem units)
        : bore_(bore), preheat_(preheat), units_(units) {}

    /// @param what after "The approved procedure P-1", with a figure in it.
    void ask(const std::string& what, std::string because, std::string source) {
        cautions_.push_back({bore_.name, "before", "yes",
                             fmt::format("The approved procedure {} {}: ask its author before the first arc.",
                                         preheat_.approved, what),
                             std::move(because), std::move(source)});
    }
    void ask_of_hold(const std::string& yet, std::string because, std::string source) {
        ask(fmt::format("holds at {} after welding, {}", hold(), yet), std::move(because), std::move(source));
    }
    std::string hold() const { return show_exact(preheat_.post_heat->temperature.value, units_); }
    std::vector<Caution> cautions() { return std::move(cautions_); }

  private:
    const WornBore& bore_;
    const Preheat& preheat_;
    UnitSystem units_;
    std::vector<Caution> cautions_;
};

/// A hold of metal that is never held, or that cools slowly instead.
void about_hold(AskAuthor& author, const std::string& structure) {
    if (structure == "austenitic")
        author.ask_of_hold("yet austenitic metal is never held hot",
                           "it cracks or goes brittle, hot for long", "practice");
    if (structure == "copper")
        author.ask_of_hold("yet bronze is left to cool in the open", "held hot, bronze tears as it shrinks",
                           "copper-practice");
    if (structure == "nickel")
        author.ask_of_hold(
            "yet nickel metal is left to cool in the open",
            "it holds no hydrogen back that would have to leave, and hot for long it loses what "
            "it was chosen for",
            "practice");
    if (structure == "cast_iron")
        author.ask_of_hold("yet cast iron is cooled slowly and not held",
                           "between 200 and 450 °C, and hotter in one place than in another, it cracks",
                           "cast-iron-practice");
}

/// "the rules of the family end", "the table for 400HB ends"
std::string ends(const std::string& by) {
    return by + (by.starts_with("the rules") ? " end" : " ends");
}

} // namespace

std::vector<Caution> overruled_cautions(const WornBore& bore, const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    const Overruled& overruled = preheat.overruled;
    if (preheat.approved.empty())
        return {};
    AskAuthor author(bore, preheat, units);
    if (overruled.interpass_max)
        author.ask(fmt::format("lets a ring begin at {}, yet {} at {}",
                               show_exact(preheat.interpass_max->value, units),
                               ends(overruled.interpass_max->by),
                               show_exact(overruled.interpass_max->value, units)),
                   "the approved maximum is the higher one", overruled.interpass_max->source);
    if (heat.structure == "austenitic" && preheat.minimum && preheat.minimum->value >= over_hand_warm)
        author.ask(fmt::format("asks for a preheat of {}, yet austenitic metal is harmed by it",
                               show_exact(preheat.minimum->value, units)),
                   "it cracks or goes brittle, hot for long; it is welded hand-warm", "practice");
    if (preheat.post_heat)
        about_hold(author, heat.structure);
    if (overruled.hold_most && heated_against(heat) != HeatedAgainst::softening)
        author.ask_of_hold(fmt::format("which softens metal that should stay under {}",
                                       show_exact(overruled.hold_most->value, units)),
                           fmt::format("the hold goes over {}", overruled.hold_most->by),
                           overruled.hold_most->source);
    if (overruled.post_heat)
        author.ask(fmt::format("holds at {} for {} after welding, yet the rules of the family ask for {} for "
                               "{}",
                               author.hold(), show(preheat.post_heat->time),
                               show_exact(overruled.post_heat->temperature.value, units),
                               show(overruled.post_heat->time)),
                   "the approved hold is colder or shorter", overruled.post_heat->temperature.source);
    return author.cautions();
}

} // namespace ringfill
