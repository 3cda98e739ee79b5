#include <ringfill/caution/ferrite_rules.hpp>

#include <fmt/format.h>

namespace ringfill {

std::vector<Caution> ferrite_cautions(const WornBore& bore, const Dilution& dilution,
                                      const LayerMetals& metals) {
    if (metals.layers.empty())
        return {};
    const double first = ferrite(schaeffler(metals.layers.front()));
    if (first >= least_ferrite)
        return {};
    return {
        {bore.name, "before", "yes",
         "Melt in less of the base metal with the first layer (less current, the arc on the bead before), "
         "and test "
         "it with dye: without ferrite it cracks hot, and on hard steel it may be part martensite.",
         fmt::format(
             "with {:.0f} % of the base metal in it the first layer is estimated to hold {:.0f} % ferrite, "
             "give or take {:.0f} points; 3 to 4 are the least",
             100 * dilution.share.value, first, ferrite_scatter),
         "ferrite-least"}};
}

} // namespace ringfill
