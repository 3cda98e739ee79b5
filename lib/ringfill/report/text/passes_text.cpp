#include <ringfill/report/text/passes_text.hpp>

#include <fmt/format.h>

#include <range/v3/view/enumerate.hpp>

#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/time_text.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/weld_sentences.hpp>

namespace ringfill {
namespace {

std::string torch_range(Turning first, Turning last) {
    const std::string from = fmt::format("{:.2f}", first.value() * 60);
    const std::string to = fmt::format("{:.2f}", last.value() * 60);
    return (from == to ? from : from + "–" + to) + " rev/min";
}

/// What is welded of a bore in the sequence of the work: grooves, bore, faces.
std::string pass_table(const BorePlan& bore, UnitSystem units) {
    Rows rows{{"pass", "from", "to", "rings", "torch", "metal", "arc"}};
    for (const auto& [i, fill] : ranges::views::enumerate(bore.grooves))
        if (fill.volume > Volume())
            rows.push_back({fmt::format("groove {}", i + 1), "", "", "fill",
                            torch_range(fill.torch, fill.torch), show(fill.laid, units), show(fill.arc)});
    for (const auto& [i, layer] : ranges::views::enumerate(bore.layers))
        rows.push_back({fmt::format("layer {}", i + 1), show(2.0 * layer.radius_before, units),
                        show(2.0 * layer.radius_after, units), std::to_string(layer.rings),
                        torch_range(layer.torch, layer.torch), show(layer.laid, units), show(layer.arc)});
    for (const auto& [i, face] : ranges::views::enumerate(bore.faces))
        rows.push_back({fmt::format("face {}", i + 1), show(2.0 * face.first_radius, units),
                        show(2.0 * face.last_radius, units), fmt::format("{} × {}", face.layers, face.rings),
                        torch_range(face.first_torch(), face.last_torch()), show(face.laid, units),
                        show(face.arc)});
    return table(rows, {false, true, true, true, true, true, true});
}

} // namespace

std::string passes_text(const Plan& plan, const Style& style) {
    const UnitSystem units = plan.units;
    return bore_by_bore(plan, style, [&](const BorePlan& bore) {
        std::string text = wrapped(settings_sentence(bore, units)) + wrapped(metal_sentences(bore));
        for (const auto& [i, face] : ranges::views::enumerate(bore.faces))
            text += wrapped(fmt::format("face {}: travel {}, pitch {}.", i + 1, show(face.bead.travel, units),
                                        show_pitch(face.bead.pitch, units)));
        return text + pass_table(bore, units) + time_text(bore, units) + bore_clock(plan, bore);
    });
}

} // namespace ringfill
