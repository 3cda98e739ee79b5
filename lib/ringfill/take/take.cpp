#include <ringfill/take/take.hpp>

#include <range/v3/action/push_back.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/take/take_gas.hpp>
#include <ringfill/take/take_pieces.hpp>
#include <ringfill/take/take_wear_parts.hpp>
#include <ringfill/take/take_wire.hpp>

namespace ringfill {

std::vector<Need> take(const std::vector<WireUse>& wires, const std::vector<PieceUse>& pieces,
                       const std::vector<GasUse>& gases, double reserve, const Packs& packs,
                       const WearParts& wear, UnitSystem units) {
    auto lines = wires | ranges::views::transform([&](const WireUse& wire) {
                     return take_wire(wire, reserve, packs, wear, units);
                 }) |
                 ranges::to<std::vector>();
    for (const PieceUse& one : pieces)
        lines.push_back(take_pieces(one, reserve, packs, units));
    for (const GasUse& gas : gases)
        lines.push_back(take_gas(gas, reserve, packs, units));
    for (const WireUse& wire : wires)
        ranges::push_back(lines, take_wear_parts(wire, wear, units));
    return lines;
}

} // namespace ringfill
