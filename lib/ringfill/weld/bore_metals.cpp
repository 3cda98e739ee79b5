#include <ringfill/weld/bore_metals.hpp>

namespace ringfill {
BoreMetals bore_metals(const GivenBore& given, const BoreWeld& weld, const Shop& shop) {
    const auto& [bore, settings, base] = given;
    const Filler& filler = *settings.filler;
    BoreMetals metals;
    metals.efficiency_range = settings.efficiency_range;
    metals.suit = suit_of(shop.registry, shop.suits, {weld.filler, filler.group}, {bore.base, base.group});
    if (metals.suit)
        metals.buffer = buffer_fillers(*metals.suit, shop.registry);
    metals.dilution =
        dilution(*settings.procedure, filler, shop.processes, weld.layers, weld.build.finish_radius);
    if (!metals.dilution)
        return metals;
    metals.layer_metals = layer_metals(bore, base, filler, *metals.dilution);
    metals.no_ferrite = no_ferrite(bore, base, filler);
    return metals;
}

} // namespace ringfill
