#include <ringfill/report/text/passes_text.hpp>

#include <fmt/format.h>

#include <range/v3/view/enumerate.hpp>

#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/time_text.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/weld_sentences.hpp>

namespace ringfill {
namespace {

std::string torch_range(const PassRow& pass) {
    const std::string from = fmt::format("{:.2f}", pass.first_torch.value() * 60);
    const std::string to = fmt::format("{:.2f}", pass.last_torch.value() * 60);
    return (from == to ? from : from + "–" + to) + " rev/min";
}

std::string rings_of(const PassRow& pass) {
    if (!pass.rings)
        return "fill";
    return pass.kind == PassKind::face ? fmt::format("{} × {}", pass.layers, *pass.rings)
                                       : std::to_string(*pass.rings);
}

std::string pass_table(const BorePlan& bore, UnitSystem units) {
    std::vector<std::vector<std::string>> rows{{"pass", "from", "to", "rings", "torch", "metal", "arc"}};
    const auto diameter = [&](const std::optional<Length>& one) { return one ? show(*one, units) : ""; };
    for (const PassRow& pass : pass_rows(bore))
        rows.push_back({fmt::format("{} {}", pass.name(), pass.number), diameter(pass.from),
                        diameter(pass.to), rings_of(pass), torch_range(pass), show(pass.laid, units),
                        show(pass.arc)});
    return table(rows, {false, true, true, true, true, true, true});
}

} // namespace

std::vector<PassRow> pass_rows(const BorePlan& bore) {
    std::vector<PassRow> rows;
    for (const auto& [i, fill] : ranges::views::enumerate(bore.grooves))
        if (fill.volume > Volume())
            rows.push_back({PassKind::groove, i + 1, fill.travel, fill.torch, fill.torch, fill.path,
                            fill.laid, fill.arc});
    for (const auto& [i, layer] : ranges::views::enumerate(bore.layers))
        rows.push_back({PassKind::layer, i + 1, bore.bead.travel, layer.torch, layer.torch, layer.path,
                        layer.laid, layer.arc, 1, layer.rings, bore.bead.pitch, 2.0 * layer.radius_before,
                        2.0 * layer.radius_after});
    for (const auto& [i, face] : ranges::views::enumerate(bore.faces))
        rows.push_back({PassKind::face, i + 1, face.bead.travel, face.first_torch(), face.last_torch(),
                        face.path, face.laid, face.arc, face.layers, face.rings, face.bead.pitch,
                        2.0 * face.first_radius, 2.0 * face.last_radius});
    return rows;
}

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
