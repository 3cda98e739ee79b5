#include <algorithm>

#include <fmt/format.h>

#include <ringfill/caution/bore_rules.hpp>
#include <ringfill/heat/arc_energy.hpp>

namespace ringfill {
namespace {

/// Share of the metal laid in a second at which the layers come out even: κ*² v_max/v₀, the travel being at
/// its limit.
double even_share(const Layering& layering, const Bead& as_laid) {
    return layering.even_scale * layering.even_scale / (as_laid.scale * as_laid.scale);
}

} // namespace

Speed even_wire_feed(const Deposition& deposition, const Layering& layering, const Bead& as_laid) {
    return deposition.wire_feed * even_share(layering, as_laid);
}

std::vector<Caution> weld_cautions(const WornBore& bore, const Build& build, const Bead& as_laid,
                                   const Layering& layering, const Deposition& deposition, UnitSystem units) {
    CautionList cautions(bore, Matter::quality);
    if (bore.stock - as_laid.valley < least_clean_up)
        cautions.before(
            "Leave more stock: weld pull and re-setting the bar may leave valleys that do not clean up.",
            fmt::format("{} of stock over valleys up to {} deep", show(bore.stock, units),
                        show(as_laid.valley, units)));
    if (const Length extra = build.weld_to_radius - layering.end_radius; extra > much_extra_stock)
        cautions.add(
            When::before, Matter::schedule,
            deposition.piece
                ? fmt::format(
                      "Lay no more than {} (less current, or a thinner one) and the layers come out even.",
                      show(deposition.rate * even_share(layering, as_laid), units))
                : fmt::format("Lower the wire feed to {} and the layers come out even.",
                              show_feed(even_wire_feed(deposition, layering, as_laid), units)),
            fmt::format("at the fastest travel of {} the weld ends {} per side inside the size asked for",
                        show(as_laid.travel, units), show(extra, units)));
    return cautions.all();
}

std::vector<Caution> position_cautions(const WornBore& bore, const Procedure& procedure, const Bead& as_laid,
                                       UnitSystem units) {
    CautionList cautions(bore, Matter::quality);
    if (bore.axis == "horizontal" && as_laid.section > largest_overhead_bead)
        cautions.before("Lay a smaller bead: the axis is horizontal, so every turn passes overhead, and a "
                        "large pool sags or drips there.",
                        fmt::format("the bead has a section of {}, over {}", show(as_laid.section, units),
                                    show(largest_overhead_bead, units)));
    if (bore.axis == "horizontal" && procedure.transfer == "spray")
        cautions.before("Use short-circuit or pulsed transfer: spray welds flat only, and with a horizontal "
                        "axis every turn passes overhead.",
                        "the procedure's transfer is spray");
    return cautions.all();
}

std::vector<Caution> face_cautions(const WornBore& bore, const std::vector<FacePad>& pads, UnitSystem units) {
    CautionList cautions(bore, Matter::quality);
    for (std::size_t i = 0; i < pads.size(); ++i) {
        const Face& face = bore.faces[i];
        if (face.outer <= bore.finish_diameter || (bore.boss_diameter && face.outer > *bore.boss_diameter))
            cautions.before(
                fmt::format("Check the diameters of face {}: its pad does not lie on the boss.", i + 1),
                fmt::format("it reaches from {} to {}", show(face.inner, units), show(face.outer, units)));
        if (pads[i].extra_build > much_extra_stock)
            cautions.add(When::before, Matter::schedule,
                         fmt::format("Lay less metal a minute on face {}, or expect more facing.", i + 1),
                         fmt::format("at the fastest travel it is built {} over what is asked",
                                     show(pads[i].extra_build, units)));
    }
    return cautions.all();
}

std::vector<Caution> fusion_cautions(const WornBore& bore, Speed travel_set, const Bead& as_laid,
                                     const std::vector<FacePad>& faces) {
    Speed fastest = as_laid.travel;
    for (const FacePad& face : faces)
        fastest = std::max(fastest, face.bead.travel);
    const double share = (travel_set / fastest).value();
    CautionList cautions(bore, Matter::quality);
    if (share < least_share_for_fusion - 1e-9)
        cautions.before(
            "Check fusion on a trial ring: the travel that evens the layers takes much of the heat away.",
            fmt::format("{:.0f} % of the heat input at the travel as set, under {:.0f} %", 100 * share,
                        100 * least_share_for_fusion),
            "ISO15614-1");
    return cautions.all();
}

} // namespace ringfill
