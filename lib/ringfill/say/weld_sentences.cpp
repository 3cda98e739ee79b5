#include <ringfill/say/weld_sentences.hpp>

#include <fmt/format.h>

#include <range/v3/view/enumerate.hpp>
#include <range/v3/view/take.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_layers = 5; // of base metal left; further ones hold next to none

std::string percent(double share) {
    return fmt::format("{:.{}f} %", 100 * share, 100 * share < 9.95 ? 1 : 0);
}

std::string suit_sentence(const BorePlan& bore) {
    const std::string pair = fmt::format("{} on {}", bore.filler, bore.base);
    if (!bore.suit)
        return pair + ": no table says whether it suits.";
    return fmt::format("{}: {}; {} [{}].", pair, in_words(bore.suit->verdict), bore.suit->why,
                       bore.suit->source);
}

std::string dilution_sentence(const Dilution& dilution) {
    std::string text = fmt::format("Dilution {}", percent(dilution.share.value));
    if (dilution.range)
        text += fmt::format(" ({} to {})", percent(dilution.range->value.first),
                            percent(dilution.range->value.second));
    text += fmt::format(" [{}]: base metal left, layer by layer, {}", dilution.share.source,
                        listed(dilution.base_left | ranges::views::take(most_layers), ", ", percent));
    if (dilution.base_left.size() > most_layers)
        text += ", then less";
    if (dilution.finish_layer > 0)
        text += fmt::format("; the finished surface lies in layer {}", dilution.finish_layer);
    return text + fmt::format("; from layer {} on it is the filler's own metal ({} at most).",
                              dilution.needed, percent(dilution.limit.value));
}

std::string ferrite_sentence(const LayerMetals& metals) {
    const auto of_layer = [&](const Shares& layer) {
        const Equivalents found = schaeffler(layer);
        const Equivalents wrc = wrc_1992(layer);
        return fmt::format("layer {} {:.0f} % (Cr {:.1f}, Ni {:.1f}{})", &layer - metals.layers.data() + 1,
                           ferrite(found), found.chromium, found.nickel,
                           metals.wrc ? fmt::format("; WRC-1992 {:.1f}, {:.1f}", wrc.chromium, wrc.nickel)
                                      : "");
    };
    return fmt::format(
        "Ferrite by Schaeffler's equivalents and Séférian's estimate, give or take {:.0f} points, base "
        "metal by {}: {}.",
        ferrite_scatter, metals.base_from, listed(metals.layers, ", ", of_layer));
}

/// What stays the same through all layers of a bore.
std::string settings_line(const BorePlan& bore, UnitSystem units) {
    const Deposition& laid = bore.deposition;
    std::string text =
        laid.piece ? fmt::format("{} laid by {} {}, one lays {}", show(laid.rate, units), bore.metal.pieces,
                                 laid.piece->form == FillerForm::rod ? "rods" : "electrodes",
                                 show(laid.piece->usable, units))
                   : fmt::format("wire feed {}", show_feed(laid.wire_feed, units));
    if (laid.current)
        text += fmt::format(", {}{}", laid.current_given ? "" : "about ", show(*laid.current));
    text += fmt::format(", travel {}", show(bore.bead.travel, units));
    if (bore.bead.travel > bore.travel_set)
        text += fmt::format(" (faster than the {} set, to even the layers)", show(bore.travel_set, units));
    return text +
           fmt::format(", pitch {}; bead {} wide, {} high; {}", show_pitch(bore.bead.pitch, units),
                       show(bore.bead.width, units), show(bore.bead.crown, units),
                       bore.torch_path == TorchPath::helix
                           ? "one helix a layer and a closing ring at the far end"
                           : fmt::format("closed rings, {:.0f}° past their start", closing_overlap_deg));
}

} // namespace

std::string settings_sentence(const BorePlan& bore, UnitSystem units) {
    return fmt::format("procedure {}, {}: {}.", printable(bore.procedure, 60), printable(bore.filler, 60),
                       settings_line(bore, units));
}

std::string_view in_words(Verdict verdict) {
    constexpr std::string_view words[] = {"recommended", "with a buffer", "not advised"}; // as Verdict
    return words[static_cast<std::size_t>(verdict)];
}

Sentences metal_sentences(const BorePlan& bore) {
    Sentences sentences{{suit_sentence(bore)}};
    if (const auto& range = bore.efficiency_range)
        sentences.push_back(
            {fmt::format("Deposited {} of it, usually {} to {} [{}].", percent(bore.deposition.efficiency),
                         percent(range->value.first), percent(range->value.second), range->source)});
    if (bore.dilution)
        sentences.push_back({dilution_sentence(*bore.dilution)});
    if (bore.layer_metals && !bore.layer_metals->layers.empty())
        sentences.push_back({ferrite_sentence(*bore.layer_metals)});
    if (!bore.no_ferrite.empty())
        sentences.push_back({fmt::format("Ferrite is not estimated: {}.", bore.no_ferrite)});
    return sentences;
}

} // namespace ringfill
