#include <ringfill/weld/bore_metals.hpp>

namespace ringfill {
BoreMetals bore_metals(const GivenBore& given, const BoreWeld& weld, const WeldTables& tables) {
    const auto& [bore, settings, base] = given;
    const Filler& filler = *settings.filler;
    BoreMetals metals;
    metals.efficiency_range = settings.efficiency_range;
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
