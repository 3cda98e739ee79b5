#include <ringfill/plan/plan_metals.hpp>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

/// The fillers that a rule names for the buffer: those of a group, or one by its name; the name of a group
/// that no filler here has stands as it is.
std::vector<std::string> buffer_fillers(const Suit& rule, const Registry& registry) {
    std::vector<std::string> names;
    for (const std::string& wanted : rule.buffer) {
        const std::size_t before = names.size();
        for (const Family& family : registry.families)
            for (const Filler& filler : family.fillers)
                if (const std::string name = fmt::format("{}/{}", family.name, filler.name);
                    filler.group == wanted || name == wanted)
                    names.push_back(name);
        if (names.size() == before)
            names.push_back(wanted);
    }
    return names;
}

std::optional<Sourced<std::pair<double, double>>> efficiency_range(const Settings& settings,
                                                                   const Shop& shop) {
    const Filler& filler = *settings.filler;
    if (filler.efficiency_range)
        return filler.efficiency_range;
    if (filler.form == FillerForm::stick && !filler.efficiency_of_covered)
        return std::nullopt; // the ranges of processes are of core and covering
    const ProcessRow* row =
        efficiency_row(shop.processes, filler.process, transfer_held(settings), settings.procedure->gas);
    return row ? row->efficiency : std::nullopt;
}

} // namespace

void plan_metals(BorePlan& plan, const WornBore& bore, const Settings& settings, const Shop& shop,
                 const Base& base) {
    const Filler& filler = *settings.filler;
    plan.base = bore.base;
    plan.efficiency_range = efficiency_range(settings, shop);
    if (const Suit* rule = find_suit(shop.suits, {plan.filler, filler.group}, {bore.base, base.group})) {
        plan.suit = *rule;
        plan.buffer = buffer_fillers(*rule, shop.registry);
    }
    plan.dilution =
        dilution(*settings.procedure, filler, shop.processes, plan.layers, plan.build.finish_radius);
    if (!plan.dilution)
        return;
    plan.layer_metals = layer_metals(bore, base, filler, *plan.dilution);
    plan.no_ferrite = no_ferrite(bore, base, filler);
}

} // namespace ringfill
