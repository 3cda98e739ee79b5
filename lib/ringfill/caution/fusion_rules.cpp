#include <ringfill/caution/fusion_rules.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/heat/arc_energy.hpp>

namespace ringfill {

std::vector<Caution> fusion_cautions(const WornBore& bore, Speed travel_set, const Bead& as_laid,
                                     const std::vector<FacePad>& faces) {
    Speed fastest = as_laid.travel;
    for (const FacePad& face : faces)
        fastest = std::max(fastest, face.bead.travel);
    const double share = (travel_set / fastest).value();
    if (!(share < least_share_for_fusion - 1e-9))
        return {};
    return {{bore.name, "before", "yes",
             "Check fusion on a trial ring: the travel that evens the layers takes much of the heat away.",
             fmt::format("{:.0f} % of the heat input at the travel as set, under {:.0f} %", 100 * share,
                         100 * least_share_for_fusion),
             "ISO15614-1"}};
}

} // namespace ringfill
