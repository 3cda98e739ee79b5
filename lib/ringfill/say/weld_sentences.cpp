#include <ringfill/say/weld_sentences.hpp>

#include <tuple>

#include <fmt/format.h>

#include <range/v3/view/take.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_layers = 5; // of base metal left; further ones hold next to none

std::string percent(double share) {
    return fmt::format("{:.{}f} %", 100 * share, 100 * share < 9.95 ? 1 : 0);
}

std::string suit_sentence(const BorePlan& bore) {
    return fmt::format(
        "{} on {}: {}.", bore.filler, bore.base,
        bore.suit ? fmt::format("{}; {} [{}]", word_of(bore.suit->verdict), bore.suit->why, bore.suit->source)
                  : "no table says whether it suits");
}

std::string dilution_sentence(const Dilution& dilution) {
    const auto& [share, range, left] = std::tie(dilution.share, dilution.range, dilution.base_left);
    return fmt::format(
        "Dilution {}{} [{}]: base metal left, layer by layer, {}{}{}; from layer {} on it is the filler's "
        "own metal ({} at most).",
        percent(share.value),
        range ? fmt::format(" ({} to {})", percent(range->value.first), percent(range->value.second)) : "",
        share.source, listed(left | ranges::views::take(most_layers), ", ", percent),
        left.size() > most_layers ? ", then less" : "",
        dilution.finish_layer > 0
            ? fmt::format("; the finished surface lies in layer {}", dilution.finish_layer)
            : "",
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

/// "wire feed 8.0 m/min", or what is laid of electrodes or rods.
std::string rate_words(const BorePlan& bore, UnitSystem units) {
    const Deposition& laid = bore.deposition;
    if (!laid.piece)
        return fmt::format("wire feed {}", show_feed(laid.wire_feed, units));
    return fmt::format("{} laid by {} {}, one lays {}", show(laid.rate, units), bore.metal.pieces,
                       laid.piece->form == FillerForm::rod ? "rods" : "electrodes",
                       show(laid.piece->usable, units));
}

} // namespace

std::string settings_sentence(const BorePlan& bore, UnitSystem units) {
    const auto& [bead, laid] = std::tie(bore.bead, bore.deposition);
    return fmt::format(
        "procedure {}, {}: {}{}, travel {}{}, pitch {}; bead {} wide, {} high; {}.",
        printable(bore.procedure, 60), printable(bore.filler, 60), rate_words(bore, units),
        laid.current ? fmt::format(", {}{}", laid.current_given ? "" : "about ", show(*laid.current)) : "",
        show(bead.travel, units),
        bead.travel > bore.travel_set
            ? fmt::format(" (faster than the {} set, to even the layers)", show(bore.travel_set, units))
            : "",
        show_pitch(bead.pitch, units), show(bead.width, units), show(bead.crown, units),
        bore.torch_path == TorchPath::helix
            ? "one helix a layer and a closing ring at the far end"
            : fmt::format("closed rings, {:.0f}° past their start", closing_overlap_deg));
}

Sentences metal_sentences(const BorePlan& bore) {
    Sentences sentences{{suit_sentence(bore)}};
    const auto add = [&](std::string text) { sentences.push_back({std::move(text)}); };
    if (const auto& range = bore.efficiency_range)
        add(fmt::format("Deposited {} of it, usually {} to {} [{}].", percent(bore.deposition.efficiency),
                        percent(range->value.first), percent(range->value.second), range->source));
    if (bore.dilution)
        add(dilution_sentence(*bore.dilution));
    if (bore.layer_metals && !bore.layer_metals->layers.empty())
        add(ferrite_sentence(*bore.layer_metals));
    if (!bore.no_ferrite.empty())
        add(fmt::format("Ferrite is not estimated: {}.", bore.no_ferrite));
    return sentences;
}

} // namespace ringfill
