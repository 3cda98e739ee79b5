#include <ringfill/caution/position_rules.hpp>

#include <fmt/format.h>

namespace ringfill {

std::vector<Caution> position_cautions(const WornBore& bore, const Procedure& procedure, const Bead& as_laid,
                                       UnitSystem units) {
    std::vector<Caution> cautions;
    if (bore.axis != "horizontal")
        return cautions;
    if (as_laid.section > largest_overhead_bead)
        cautions.push_back(
            {bore.name, "before", "yes",
             "Lay a smaller bead: the axis is horizontal, so every turn passes overhead, and a large pool "
             "sags or drips there.",
             fmt::format("the bead has a section of {}, over {}", show(as_laid.section, units),
                         show(largest_overhead_bead, units)),
             "practice"});
    if (procedure.transfer == "spray")
        cautions.push_back(
            {bore.name, "before", "yes",
             "Use short-circuit or pulsed transfer: spray welds flat only, and with a horizontal axis "
             "every turn passes overhead.",
             "the procedure's transfer is spray", "practice"});
    return cautions;
}

} // namespace ringfill
