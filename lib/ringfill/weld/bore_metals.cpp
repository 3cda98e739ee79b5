#include <ringfill/weld/bore_metals.hpp>

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
                                                                   const WeldTables& tables) {
    const Filler& filler = *settings.filler;
    if (filler.efficiency_range)
        return filler.efficiency_range;
    if (filler.form == FillerForm::stick && !filler.efficiency_of_covered)
        return std::nullopt; // the ranges of processes are of core and covering
    const ProcessRow* row =
        efficiency_row(tables.processes, filler.process, transfer_held(settings), settings.procedure->gas);
    return row ? row->efficiency : std::nullopt;
}

} // namespace

BoreMetals bore_metals(const WornBore& bore, const BoreWeld& weld, const Settings& settings, const Base& base,
                       const WeldTables& tables) {
    const Filler& filler = *settings.filler;
    BoreMetals metals;
    metals.efficiency_range = efficiency_range(settings, tables);
    if (const Suit* rule = find_suit(tables.suits, {weld.filler, filler.group}, {bore.base, base.group})) {
        metals.suit = *rule;
        metals.buffer = buffer_fillers(*rule, tables.registry);
    }
    metals.dilution =
        dilution(*settings.procedure, filler, tables.processes, weld.layers, weld.build.finish_radius);
    if (!metals.dilution)
        return metals;
    metals.layer_metals = layer_metals(bore, base, filler, *metals.dilution);
    metals.no_ferrite = no_ferrite(bore, base, filler);
    return metals;
}

} // namespace ringfill
