#include <ringfill/caution/weld_rules.hpp>

#include <fmt/format.h>

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

MassFlow even_rate(const Deposition& deposition, const Layering& layering, const Bead& as_laid) {
    return deposition.rate * even_share(layering, as_laid);
}

std::vector<Caution> weld_cautions(const WornBore& bore, const Build& build, const Bead& as_laid,
                                   const Layering& layering, const Deposition& deposition, UnitSystem units) {
    std::vector<Caution> cautions;
    if (bore.stock - as_laid.valley < least_clean_up)
        cautions.push_back(
            {bore.name, "before", "yes",
             "Leave more stock: weld pull and re-setting the bar may leave valleys that do not clean up.",
             fmt::format("{} of stock over valleys up to {} deep", show(bore.stock, units),
                         show(as_laid.valley, units)),
             "practice"});
    if (const Length extra = build.weld_to_radius - layering.end_radius; extra > much_extra_stock)
        cautions.push_back(
            {bore.name, "before", "yes",
             deposition.piece
                 ? fmt::format(
                       "Lay no more than {} (less current, or a thinner one) and the layers come out even.",
                       show(even_rate(deposition, layering, as_laid), units))
                 : fmt::format("Lower the wire feed to {} and the layers come out even.",
                               show_feed(even_wire_feed(deposition, layering, as_laid), units)),
             fmt::format("at the fastest travel of {} the weld ends {} per side inside the size asked for",
                         show(as_laid.travel, units), show(extra, units)),
             "practice"});
    return cautions;
}

} // namespace ringfill
