#include <ringfill/caution/face_rules.hpp>

#include <fmt/format.h>

#include <ringfill/caution/weld_rules.hpp>

namespace ringfill {

std::vector<Caution> face_cautions(const WornBore& bore, const std::vector<FacePad>& pads, UnitSystem units) {
    std::vector<Caution> cautions;
    const auto add = [&](std::string text, std::string because) {
        cautions.push_back({bore.name, "before", "yes", std::move(text), std::move(because), "practice"});
    };
    for (std::size_t i = 0; i < pads.size(); ++i) {
        const Face& face = bore.faces[i];
        if (face.outer <= bore.finish_diameter || (bore.boss_diameter && face.outer > *bore.boss_diameter))
            add(fmt::format("Check the diameters of face {}: its pad does not lie on the boss.", i + 1),
                fmt::format("it reaches from {} to {}", show(face.inner, units), show(face.outer, units)));
        if (pads[i].extra_build > much_extra_stock)
            add(fmt::format("Lay less metal a minute on face {}, or expect more facing.", i + 1),
                fmt::format("at the fastest travel it is built {} over what is asked",
                            show(pads[i].extra_build, units)));
    }
    return cautions;
}

} // namespace ringfill
