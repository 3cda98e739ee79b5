#include <ringfill/weld/spray.hpp>

namespace ringfill {

std::optional<SprayFrom> spray_from(const WireSize& size, const Gas* gas) {
    if (gas && !gas->sprays)
        return std::nullopt;
    for (const auto& [transfer, window] : size.windows) {
        if (transfer != "spray" || !window.spray_from)
            continue;
        const Sourced<Current>& printed = *window.spray_from;
        if (!gas || !gas->spray_times)
            return SprayFrom{printed.value, printed.value, printed.source};
        const auto& [low, high] = gas->spray_times->value;
        return SprayFrom{low * printed.value, high * printed.value,
                         printed.source + ", " + gas->spray_times->source};
    }
    return std::nullopt;
}

bool transfer_holds(const Procedure& procedure, const WireSize& size, const Gas* gas,
                    const std::optional<Current>& current) {
    if (!procedure.transfer_given || procedure.transfer != "spray")
        return true;
    if (gas && !gas->sprays)
        return false;
    const auto from = spray_from(size, gas);
    return !from || !current || *current >= from->does;
}

} // namespace ringfill
