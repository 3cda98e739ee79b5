#include <ringfill/heat/base_composition.hpp>

#include <algorithm>
#include <string_view>
#include <utility>

#include <range/v3/algorithm/all_of.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// What steel holds of elements that its standard does not name [%; memory].
constexpr std::pair<std::string_view, double> usual_residuals[] = {{"Si", 0.60}, {"Cr", 0.15}, {"Ni", 0.15},
                                                                   {"Cu", 0.25}, {"Mo", 0.04}, {"V", 0.02}};

/// What standards add to the cap for copper and silicon [EN 10025-2:2004, 7.2.4 and 7.2.5; read].
constexpr double cap_allowance_pct = 0.02;

constexpr std::string_view full_certificate[] = {"C", "Mn", "Cr", "Mo", "Ni", "Cu", "V"};

/// The thickest product that the part can be cut from [mm]; nothing while the wall is not known.
std::optional<double> product_thickness_mm(const WornBore& bore, std::optional<Length> wall) {
    if (bore.product_thickness)
        return mm(*bore.product_thickness);
    if (!wall)
        return std::nullopt;
    const Length half_boss = bore.boss_diameter ? *bore.boss_diameter / 2.0 : Length();
    return mm(std::max({*wall, bore.length, half_boss}));
}

/// The row of a composition by thickness; of one that is not known none, and the grade's own maxima count.
const LadleRow* ladle_row(const Base& base, std::optional<double> thickness_mm) {
    constexpr double last_digit = 1 + 1e-9;
    if (thickness_mm)
        for (const LadleRow& row : base.by_thickness)
            if (!row.up_to_mm || *thickness_mm <= *row.up_to_mm * last_digit)
                return &row;
    return nullptr;
}

std::optional<CarbonCap> carbon_cap(const WornBore& bore, const Base& base,
                                    std::optional<double> thickness_mm) {
    if (bore.carbon_equivalent_pct)
        return CarbonCap{*bore.carbon_equivalent_pct, "job"};
    const ThicknessRow* row = row_for(base.cev_max, thickness_mm);
    if (!row)
        return std::nullopt;
    if (base.cev_since && bore.bought_after && *bore.bought_after < base.cev_since->value)
        return std::nullopt;
    return CarbonCap{row->value + cap_allowance_pct, row->source,
                     base.cev_since && !base.cev_by_name && !bore.bought_after};
}

} // namespace

bool is_full_certificate(const WornBore& bore) {
    return ranges::all_of(full_certificate, [&](std::string_view element) {
        return value_named(bore.composition, element) != nullptr;
    });
}

BaseComposition base_composition(const WornBore& bore, const Base& base, std::optional<Length> wall) {
    BaseComposition found;
    found.limits.certified = bore.composition;
    found.limits.most = plain_shares(base.composition);
    found.limits.least = plain_shares(base.composition_min);
    found.is_full = is_full_certificate(bore);
    if (base.structure != "ferritic")
        return found;
    const std::optional<double> thickness = product_thickness_mm(bore, wall);
    if (const LadleRow* row = ladle_row(base, thickness))
        for (const auto& [element, percent] : row->composition)
            if (double* most = value_named(found.limits.most, element))
                *most = percent.value;
    if (!found.limits.most.empty() || !found.limits.certified.empty())
        for (const auto& [element, percent] : usual_residuals)
            if (!value_named(found.limits.most, element))
                found.limits.most.emplace_back(element, percent);
    found.cap = carbon_cap(bore, base, thickness);
    if (found.cap)
        found.limits.cap_pct = found.cap->pct;
    return found;
}

} // namespace ringfill
