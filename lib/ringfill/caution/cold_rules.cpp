#include <ringfill/caution/cold_rules.hpp>

#include <fmt/format.h>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

const Temperature too_cold = celsius(-18);
const Temperature freezing = celsius(0);
const Temperature damp = celsius(5);

std::string ambient_of(const Site& site, UnitSystem units) {
    return fmt::format("the job says {} at the site", show(*site.ambient, units));
}

} // namespace

std::vector<Caution> cold_cautions(const Site& site, UnitSystem units) {
    const auto job = [](std::string text, std::string because, std::string source) {
        return Caution{"the job", "before", "yes", std::move(text), std::move(because), std::move(source)};
    };
    if (site.ambient && *site.ambient < too_cold)
        return {
            job("Do not weld in this cold: put up a shelter and heat it first, until it is over −18 °C at "
                "the weld.",
                ambient_of(site, units), "D1.1-ambient")};
    if (site.ambient && *site.ambient < freezing)
        return {job("Warm every boss to 20 °C at least before the first arc and hold it there, even where no "
                    "preheat is asked for.",
                    ambient_of(site, units), "D1.1-ambient")};
    if (site.wet.value_or(false) || (site.ambient && *site.ambient < damp))
        return {job("Dry the metal with a flame until it is hand-warm: damp steel cracks and makes pores.",
                    site.wet.value_or(false) ? "the job says it is wet" : ambient_of(site, units),
                    "practice")};
    return {};
}

} // namespace ringfill
