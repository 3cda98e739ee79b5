#include <ringfill/caution/cold_rules.hpp>

#include <fmt/format.h>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

const Temperature too_cold = celsius(-18);
const Temperature freezing = celsius(0);
const Temperature damp = celsius(5);
const Temperature warmed_to = celsius(20);

std::string ambient_of(const Site& site, UnitSystem units) {
    return fmt::format("the job says {} at the site", show(*site.ambient, units));
}

} // namespace

std::vector<Caution> cold_cautions(const Site& site, UnitSystem units,
                                   const std::vector<std::string>& in_doubt, bool all_in_doubt) {
    std::vector<Caution> cautions;
    const std::string but =
        in_doubt.empty() ? std::string()
                         : fmt::format(" Not {}: its metal is identified first.", fmt::join(in_doubt, ", "));
    const auto tell = [&](std::string text, std::string because, std::string source) {
        cautions.push_back(
            {"the job", "before", "yes", std::move(text), std::move(because), std::move(source)});
    };
    const bool wet = site.wet.value_or(false);
    if (site.ambient && *site.ambient < too_cold)
        tell(fmt::format(
                 "Do not weld in this cold: put up a shelter and heat it first, until it is over {} at "
                 "the weld.",
                 show(too_cold, units)),
             ambient_of(site, units), "D1.1-ambient");
    if (all_in_doubt)
        return cautions;
    if (site.ambient && *site.ambient < freezing)
        tell(fmt::format("Warm every boss to {} at least before the first arc and hold it there, even where "
                         "no preheat is asked for.{}",
                         show_minimum(warmed_to, units), but),
             ambient_of(site, units), "D1.1-ambient");
    if (wet || (site.ambient && *site.ambient < damp))
        tell("Warm the metal until it is dry and hand-warm: damp steel cracks and makes pores." + but,
             wet ? std::string("the job says it is wet") : ambient_of(site, units), "practice");
    return cautions;
}

} // namespace ringfill
