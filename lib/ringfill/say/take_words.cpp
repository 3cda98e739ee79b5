#include <ringfill/say/take_words.hpp>

#include <functional>

#include <fmt/format.h>

#include <range/v3/numeric/accumulate.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/say/sentence.hpp>
#include <ringfill/say/time_sentences.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {

std::string amount(double value, const Need& need, UnitSystem units) {
    if (is_unknown(need))
        return "not known";
    const std::string_view unit = need.kind.unit;
    if (need.kind == kinds::generator_fuel) // poured, in litres or gallons to a tenth
        return units == UnitSystem::inch
                   ? fmt::format("{:.1f} gal", value * factor::litre / factor::gallon_us)
                   : fmt::format("{:.1f} L", value);
    if (unit == "kg")
        return show(in_si<Mass>(value), units);
    if (unit == "L")
        return show(in_si<Volume>(value * factor::litre), units);
    return unit == "kW" ? fmt::format("{:.1f} kW", value) : fmt::format("{:.0f}", value);
}

std::string bores_in_all(const Plan& plan) {
    return counted(ranges::accumulate(plan.bores, 0, std::plus(), &BorePlan::count), "bore");
}

std::string load(const Need& need) {
    if (comes_singly(need))
        return fmt::format("{:.0f}", need.supplied);
    if (is_unknown(need))
        return "not known";
    const auto in_words = [](const PackCount& pack) {
        return fmt::format("{} × {}", pack.count, printable(pack.pack, 30));
    };
    return (need.cover.empty() ? "no pack known" : listed(need.cover, " + ", in_words)) +
           (need.unknown.empty() ? "" : ", and more, not known");
}

} // namespace ringfill
