#include <ringfill/report/text/metals_text.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/report/text/columns.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_layers = 5; // of base metal left; further ones hold next to none

std::string percent(double share) {
    return fmt::format("{:.{}f} %", 100 * share, 100 * share < 9.95 ? 1 : 0);
}

std::string suit_line(const BorePlan& bore) {
    if (!bore.suit)
        return fmt::format("{} on {}: no table says whether it suits.", bore.filler, bore.base);
    const std::string_view verdict = bore.suit->verdict == Verdict::recommended   ? "recommended"
                                     : bore.suit->verdict == Verdict::with_buffer ? "with a buffer"
                                                                                  : "not advised";
    return fmt::format("{} on {}: {}; {} [{}].", bore.filler, bore.base, verdict, bore.suit->why,
                       bore.suit->source);
}

std::string dilution_line(const Dilution& dilution) {
    std::string text = fmt::format("Dilution {}", percent(dilution.share.value));
    if (dilution.range)
        text += fmt::format(" ({} to {})", percent(dilution.range->value.first),
                            percent(dilution.range->value.second));
    text += fmt::format(" [{}]: base metal left, layer by layer,", dilution.share.source);
    for (std::size_t i = 0; i < std::min(dilution.base_left.size(), most_layers); ++i)
        text += fmt::format("{} {}", i == 0 ? "" : ",", percent(dilution.base_left[i]));
    if (dilution.base_left.size() > most_layers)
        text += ", then less";
    if (dilution.finish_layer > 0)
        text += fmt::format("; the finished surface lies in layer {}", dilution.finish_layer);
    return text + fmt::format("; from layer {} on it is the filler's own metal ({} at most).",
                              dilution.needed, percent(dilution.limit.value));
}

std::string ferrite_line(const LayerMetals& metals) {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < metals.layers.size(); ++i) {
        const Equivalents found = schaeffler(metals.layers[i]);
        std::string part = fmt::format("layer {} {:.0f} % (Cr {:.1f}, Ni {:.1f}", i + 1, ferrite(found),
                                       found.chromium, found.nickel);
        if (metals.wrc) {
            const Equivalents wrc = wrc_1992(metals.layers[i]);
            part += fmt::format("; WRC-1992 {:.1f}, {:.1f}", wrc.chromium, wrc.nickel);
        }
        parts.push_back(part + ")");
    }
    return fmt::format(
        "Ferrite by Schaeffler's equivalents and Séférian's estimate, give or take {:.0f} points, base "
        "metal by {}: {}.",
        ferrite_scatter, metals.base_from, fmt::join(parts, ", "));
}

} // namespace

std::string metals_text(const BorePlan& bore) {
    std::string text = wrapped(suit_line(bore), "  ");
    if (bore.efficiency_range)
        text += wrapped(
            fmt::format("Deposited {} of it, usually {} to {} [{}].", percent(bore.deposition.efficiency),
                        percent(bore.efficiency_range->value.first),
                        percent(bore.efficiency_range->value.second), bore.efficiency_range->source),
            "  ");
    if (bore.dilution)
        text += wrapped(dilution_line(*bore.dilution), "  ");
    if (bore.layer_metals && !bore.layer_metals->layers.empty())
        text += wrapped(ferrite_line(*bore.layer_metals), "  ");
    if (!bore.no_ferrite.empty())
        text += wrapped(fmt::format("Ferrite is not estimated: {}.", bore.no_ferrite), "  ");
    return text;
}

} // namespace ringfill
