#include <ringfill/weld/torch_fit.hpp>

#include <fmt/format.h>

#include <ringfill/units/show.hpp>

namespace ringfill {

std::vector<Fault> torch_faults(const WornBore& bore, const Torch& torch, const Build& build,
                                const Layering& layering, UnitSystem units) {
    std::vector<Fault> faults;
    if (torch.smallest_bore && 2.0 * layering.end_radius < *torch.smallest_bore)
        faults.push_back(
            fault_at_path("torch.smallest_bore", {},
                          fmt::format("is {}, but {} is built up to {}", show(*torch.smallest_bore, units),
                                      bore.name, show(2.0 * layering.end_radius, units)),
                          "take a smaller torch head, or leave less stock"));
    if (torch.reach && build.welded_length > *torch.reach)
        faults.push_back(
            fault_at_path("torch.reach", {},
                          fmt::format("is {}, but {} is welded over {}", show(*torch.reach, units), bore.name,
                                      show(build.welded_length, units)),
                          "take a longer torch head, or weld the bore from both ends as two bores"));
    return faults;
}

} // namespace ringfill
