#include <ringfill/report/text/passes_text.hpp>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/caution_list.hpp>
#include <ringfill/report/text/columns.hpp>
#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/metals_text.hpp>
#include <ringfill/report/text/note_list.hpp>
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

std::vector<std::vector<std::string>> pass_rows(const BorePlan& bore, UnitSystem units) {
    std::vector<std::vector<std::string>> rows{{"pass", "from", "to", "rings", "torch", "metal", "arc"}};
    for (std::size_t i = 0; i < bore.grooves.size(); ++i)
        if (const GrooveFill& fill = bore.grooves[i]; fill.volume > Volume())
            rows.push_back({fmt::format("groove {}", i + 1), "", "", "fill",
                            torch_range(fill.torch, fill.torch), show(fill.laid, units), show(fill.arc)});
    for (std::size_t i = 0; i < bore.layers.size(); ++i) {
        const Layer& layer = bore.layers[i];
        rows.push_back({fmt::format("layer {}", i + 1), show(2.0 * layer.radius_before, units),
                        show(2.0 * layer.radius_after, units), fmt::format("{}", layer.rings),
                        torch_range(layer.torch, layer.torch), show(layer.laid, units), show(layer.arc)});
    }
    for (std::size_t i = 0; i < bore.faces.size(); ++i) {
        const FacePad& face = bore.faces[i];
        rows.push_back({fmt::format("face {}", i + 1), show(2.0 * face.first_radius, units),
                        show(2.0 * face.last_radius, units), fmt::format("{} × {}", face.layers, face.rings),
                        torch_range(face.first_torch(), face.last_torch()), show(face.laid, units),
                        show(face.arc)});
    }
    return rows;
}

std::string bore_passes(const Plan& plan, const BorePlan& bore, const Style& style) {
    const UnitSystem units = plan.units;
    std::string text = style.strong(fmt::format(
        "{}{}", printable(bore.name, 60), bore.count > 1 ? fmt::format(", each of {}", bore.count) : ""));
    text += '\n';
    text += wrapped(settings_sentence(bore, units), "  ");
    text += metals_text(bore);
    for (const FacePad& face : bore.faces)
        text += wrapped(fmt::format("face {}: travel {}, pitch {}.", &face - bore.faces.data() + 1,
                                    show(face.bead.travel, units), show_pitch(face.bead.pitch, units)),
                        "  ");
    for (const std::string& line :
         columns(pass_rows(bore, units), {false, true, true, true, true, true, true}))
        text += fmt::format("  {}\n", line);
    return text + time_text(bore, units) + bore_clock(plan, bore) + "\n";
}

} // namespace

std::string settings_sentence(const BorePlan& bore, UnitSystem units) {
    return fmt::format("procedure {}, {}: {}.", printable(bore.procedure, 60), printable(bore.filler, 60),
                       settings_line(bore, units));
}

std::string passes_text(const Plan& plan, const Style& style) {
    std::string text = style.strong(wrapped(printable(plan.title), ""));
    text += heat_head(plan, style) + "\n";
    for (const BorePlan& bore : plan.bores)
        text += bore_passes(plan, bore, style);
    return text + caution_list(plan, style) + "\n" + note_list(plan, style) + closing_line();
}

} // namespace ringfill
