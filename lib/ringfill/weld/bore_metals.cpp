#include <ringfill/weld/bore_metals.hpp>

namespace ringfill {
namespace {

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
    metals.suit =
        suit_of(tables.registry, tables.suits, {weld.filler, filler.group}, {bore.base, base.group});
    if (metals.suit)
        metals.buffer = buffer_fillers(*metals.suit, tables.registry);
    metals.dilution =
        dilution(*settings.procedure, filler, tables.processes, weld.layers, weld.build.finish_radius);
    if (!metals.dilution)
        return metals;
    metals.layer_metals = layer_metals(bore, base, filler, *metals.dilution);
    metals.no_ferrite = no_ferrite(bore, base, filler);
    return metals;
}

} // namespace ringfill
