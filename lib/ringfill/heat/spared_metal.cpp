#include <ringfill/heat/spared_metal.hpp>

#include <array>
#include <utility>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double low_degC = 250;

bool under(const std::optional<Sourced<Temperature>>& known) {
    return known && deg_c(known->value) < low_degC;
}

} // namespace

std::string_view why_not_for_filler(std::string_view structure) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 4> spared = {
        {{"austenitic", "austenitic metal is harmed by heat"},
         {"nickel", "nickel metal is harmed by heat"},
         {"copper", "held hot, bronze tears as it shrinks"},
         {"cast_iron", "cast iron is welded cold or hot as its own practice says"}}};
    for (const auto& [name, why] : spared)
        if (name == structure)
            return why;
    return {};
}

bool cools_in_the_open(const Base& base) {
    return base.structure == "austenitic" || base.structure == "nickel" || base.structure == "copper" ||
           under(base.softens_over) || under(base.tempering);
}

} // namespace ringfill
