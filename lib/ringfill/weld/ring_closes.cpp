#include <ringfill/weld/ring_closes.hpp>

#include <fmt/format.h>

#include <ringfill/units/show.hpp>

namespace ringfill {

Fault ring_closes(const WornBore& bore, const Bead& bead) {
    return fault_at_path(
        bore.path, {},
        fmt::format("{} closes before it is built up, or takes far too many layers, with layers {} high",
                    bore.name, show(bead.layer_height(), UnitSystem::metric)),
        "choose a bead that fits the bore: another wire feed or travel");
}

} // namespace ringfill
