#include <ringfill/caution/form_rules.hpp>

#include <fmt/format.h>

namespace ringfill {

std::vector<Caution> form_cautions(const Procedure& procedure, const Filler& filler) {
    if (filler.form != FillerForm::stick || !filler.hydrogen_ml_100g)
        return {};
    return {{procedure.name, "before", "yes",
             "Dry the electrodes as their maker says and take them from a heated quiver: preheat here is "
             "reckoned for "
             "dry ones.",
             procedure.hydrogen_ml_100g
                 ? fmt::format("the {:.3g} ml/100 g measured for {} hold only for electrodes as dry as those",
                               *procedure.hydrogen_ml_100g, procedure.filler)
                 : fmt::format("the {:.3g} ml/100 g of {} is the limit of its class for dry electrodes",
                               filler.hydrogen_ml_100g->value, procedure.filler),
             "practice"}};
}

} // namespace ringfill
