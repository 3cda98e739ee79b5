#include <algorithm>

#include <ringfill/caution/rules.hpp>
#include <ringfill/heat/arc_energy.hpp>

namespace ringfill {
namespace {

/// The largest bead laid in a bore: of its layers, of a face, or of a groove, which is filled unscaled.
Area largest_section(const RuledBore& on) {
    Area largest = on.plan.bead.section;
    for (const FacePad& face : on.plan.faces)
        largest = std::max(largest, face.bead.section);
    for (const GrooveFill& groove : on.plan.grooves)
        if (groove.volume > Volume())
            largest = std::max(largest, on.settings.unscaled_bead.section);
    return largest;
}

} // namespace

double even_share(const Layering& layering, const Bead& as_laid) {
    return layering.even_scale * layering.even_scale / (as_laid.scale * as_laid.scale);
}

void weld_rules(CautionList& cautions, const RuledBore& on) {
    const auto& [bore, settings, plan, units] = on;
    const Deposition& deposition = plan.deposition;
    if (bore.stock - plan.bead.valley < least_clean_up)
        cautions.before(
            "Leave more stock: weld pull and re-setting the bar may leave valleys that do not clean up.",
            "{} of stock over valleys up to {} deep", bore.stock, plan.bead.valley);
    const double share = even_share(plan.layering, plan.bead);
    if (const Length extra = plan.build.weld_to_radius - plan.layering.end_radius; extra > much_extra_stock)
        cautions.add(When::before, Matter::schedule, "{} and the layers come out even.",
                     "at the fastest travel of {1} the weld ends {2} per side inside the size asked for",
                     deposition.piece ? fmt::format("Lay no more than {} (less current, or a thinner one)",
                                                    show(deposition.rate * share, units))
                                      : fmt::format("Lower the wire feed to {}",
                                                    show_feed(deposition.wire_feed * share, units)),
                     plan.bead.travel, extra);
}

void position_rules(CautionList& cautions, const RuledBore& on) {
    if (on.bore.axis != "horizontal")
        return;
    if (const Area section = largest_section(on); section > largest_overhead_bead)
        cautions.before("Lay a smaller bead: the axis is horizontal, so every turn passes overhead, and a "
                        "large pool sags or drips there.",
                        "the bead has a section of {}, over {}", section, largest_overhead_bead);
    if (on.procedure().transfer == "spray")
        cautions.before("Use short-circuit or pulsed transfer: spray welds flat only, and with a horizontal "
                        "axis every turn passes overhead.",
                        "the procedure's transfer is spray");
}

void face_rules(CautionList& cautions, const RuledBore& on) {
    const WornBore& bore = on.bore;
    for (std::size_t i = 0; i < on.plan.faces.size(); ++i) {
        const auto& [inner, outer, build] = bore.faces[i];
        if (outer <= bore.finish_diameter || (bore.boss_diameter && outer > *bore.boss_diameter))
            cautions.before("Check the diameters of face {}: its pad does not lie on the boss.",
                            "it reaches from {1} to {2}", i + 1, inner, outer);
        if (const Length extra = on.plan.faces[i].extra_build; extra > much_extra_stock)
            cautions.add(When::before, Matter::schedule,
                         "Lay less metal a minute on face {}, or expect more facing.",
                         "at the fastest travel it is built {1} over what is asked", i + 1, extra);
    }
}

void fusion_rules(CautionList& cautions, const RuledBore& on) {
    Speed fastest = on.plan.bead.travel;
    for (const FacePad& face : on.plan.faces)
        fastest = std::max(fastest, face.bead.travel);
    const double share = (on.plan.travel_set / fastest).value();
    if (share < least_share_for_fusion - 1e-9)
        cautions.before_by(
            "ISO15614-1",
            "Check fusion on a trial ring: the travel that evens the layers takes much of the heat away.",
            "{:.0f} % of the heat input at the travel as set, under {:.0f} %", 100 * share,
            100 * least_share_for_fusion);
}

} // namespace ringfill
