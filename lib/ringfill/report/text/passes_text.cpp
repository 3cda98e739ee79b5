#include <ringfill/report/text/passes_text.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/frame.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/report/text/time_text.hpp>

namespace ringfill {
namespace {

/// What stays the same through all layers of a bore.
std::string settings_line(const BorePlan& bore, UnitSystem units) {
    const Deposition& laid = bore.deposition;
    std::string text =
        laid.piece ? fmt::format("{} laid by {} {}, one lays {}", show(laid.rate, units), bore.metal.pieces,
                                 laid.piece->form == FillerForm::rod ? "rods" : "electrodes",
                                 show(laid.piece->usable, units))
                   : fmt::format("wire feed {}", show_feed(laid.wire_feed, units));
    if (bore.deposition.current)
        text += fmt::format(", {}{}", bore.deposition.current_given ? "" : "about ",
                            show(*bore.deposition.current));
    text += fmt::format(", travel {}", show(bore.bead.travel, units));
    if (bore.bead.travel > bore.travel_set)
        text += fmt::format(" (faster than the {} set, to even the layers)", show(bore.travel_set, units));
    text += fmt::format(", pitch {}; bead {} wide, {} high; {}", show_pitch(bore.bead.pitch, units),
                        show(bore.bead.width, units), show(bore.bead.crown, units),
                        bore.torch_path == TorchPath::helix
                            ? std::string("one helix a layer and a closing ring at the far end")
                            : fmt::format("closed rings, {:.0f}° past their start", closing_overlap_deg));
    return text;
}

std::string torch_range(Turning first, Turning last) {
    const std::string from = fmt::format("{:.2f}", first.value() * 60);
    const std::string to = fmt::format("{:.2f}", last.value() * 60);
    return from == to ? from + " rev/min" : fmt::format("{}–{} rev/min", from, to);
}

std::string rings_of(const PassRow& pass) {
    if (!pass.rings)
        return "fill";
    return pass.kind == PassKind::face ? fmt::format("{} × {}", pass.layers, *pass.rings)
                                       : fmt::format("{}", *pass.rings);
}

std::string pass_table(const BorePlan& bore, UnitSystem units) {
    std::vector<std::vector<std::string>> rows{{"pass", "from", "to", "rings", "torch", "metal", "arc"}};
    const auto diameter = [&](const std::optional<Length>& one) { return one ? show(*one, units) : ""; };
    for (const PassRow& pass : pass_rows(bore))
        rows.push_back({fmt::format("{} {}", name_of(pass.kind), pass.number), diameter(pass.from),
                        diameter(pass.to), rings_of(pass), torch_range(pass.first_torch, pass.last_torch),
                        show(pass.laid, units), show(pass.arc)});
    return table(rows, {false, true, true, true, true, true, true});
}

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

std::string bore_passes(const Plan& plan, const BorePlan& bore, const Style& style) {
    const UnitSystem units = plan.units;
    std::string text = bore_heading(bore, style);
    text += wrapped(settings_sentence(bore, units), "  ") + metals_text(bore);
    for (const FacePad& face : bore.faces)
        text += wrapped(fmt::format("face {}: travel {}, pitch {}.", &face - bore.faces.data() + 1,
                                    show(face.bead.travel, units), show_pitch(face.bead.pitch, units)),
                        "  ");
    return text + pass_table(bore, units) + time_text(bore, units) + bore_clock(plan, bore) + "\n";
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

std::string_view name_of(PassKind kind) {
    switch (kind) {
    case PassKind::groove:
        return "groove";
    case PassKind::layer:
        return "layer";
    default:
        return "face";
    }
}

std::vector<PassRow> pass_rows(const BorePlan& bore) {
    std::vector<PassRow> rows;
    for (std::size_t i = 0; i < bore.grooves.size(); ++i)
        if (const GrooveFill& fill = bore.grooves[i]; fill.volume > Volume())
            rows.push_back({PassKind::groove,
                            i + 1,
                            {},
                            {},
                            1,
                            {},
                            {},
                            fill.travel,
                            fill.torch,
                            fill.torch,
                            fill.path,
                            fill.laid,
                            fill.arc});
    for (std::size_t i = 0; i < bore.layers.size(); ++i) {
        const Layer& layer = bore.layers[i];
        rows.push_back({PassKind::layer, i + 1, 2.0 * layer.radius_before, 2.0 * layer.radius_after, 1,
                        layer.rings, bore.bead.pitch, bore.bead.travel, layer.torch, layer.torch, layer.path,
                        layer.laid, layer.arc});
    }
    for (std::size_t i = 0; i < bore.faces.size(); ++i) {
        const FacePad& face = bore.faces[i];
        rows.push_back({PassKind::face, i + 1, 2.0 * face.first_radius, 2.0 * face.last_radius, face.layers,
                        face.rings, face.bead.pitch, face.bead.travel, face.first_torch(), face.last_torch(),
                        face.path, face.laid, face.arc});
    }
    return rows;
}

std::string settings_sentence(const BorePlan& bore, UnitSystem units) {
    return fmt::format("procedure {}, {}: {}.", printable(bore.procedure, 60), printable(bore.filler, 60),
                       settings_line(bore, units));
}

std::string passes_text(const Plan& plan, const Style& style) {
    std::string text = view_head(plan, style);
    for (const BorePlan& bore : plan.bores)
        text += bore_passes(plan, bore, style);
    return text + view_end(plan, style);
}

} // namespace ringfill
