#include <ringfill/heat/hardness.hpp>

#include <algorithm>
#include <cmath>

namespace ringfill {
namespace {

constexpr double nitrogen_pct = 0.006;
constexpr double most_yurioka_carbon_pct = 0.8;
constexpr double most_yurioka_alloy_pct = 5;

double per_cent(const Shares& shares, std::string_view element) {
    return share_of(shares, element);
}

/// What boron adds to the first equivalent.
double boron_term(double boron_pct) {
    const double ppm = boron_pct * 1e4;
    const double free = (0.02 - nitrogen_pct) / 0.02;
    return ppm <= 1 ? 0 : ppm <= 2 ? 0.03 * free : ppm <= 3 ? 0.06 * free : 0.09 * free;
}

/// The cooling times between which hardness falls, and the hardness at both ends.
struct Ends {
    double martensite_s;
    double bainite_s;
    double martensite_HV;
    double bainite_HV;
};

Ends ends_of(const Shares& shares) {
    const auto pct = [&](std::string_view element) { return per_cent(shares, element); };
    const double c = pct("C");
    const double cp = c <= 0.3 ? c : c / 6 + 0.25;
    const double ce_1 = cp + pct("Si") / 24 + pct("Mn") / 6 + pct("Cu") / 15 + pct("Ni") / 12 +
                        pct("Cr") * (1 - 0.16 * std::sqrt(pct("Cr"))) / 8 + pct("Mo") / 4 +
                        boron_term(pct("B"));
    const double ce_2 = c + pct("Si") / 24 + pct("Mn") / 5 + pct("Cu") / 10 + pct("Ni") / 18 + pct("Cr") / 5 +
                        pct("Mo") / 2.5 + pct("V") / 5 + pct("Nb") / 3;
    const double ce_3 = cp + pct("Mn") / 3.6 + pct("Cu") / 20 + pct("Ni") / 9 + pct("Cr") / 5 + pct("Mo") / 4;
    return {std::exp(10.6 * ce_1 - 4.8), std::exp(6.2 * ce_3 + 0.74), 884 * c * (1 - 0.3 * c * c) + 294,
            145 + 130 * std::tanh(2.65 * ce_2 - 0.69)};
}

} // namespace

std::optional<double> yurioka_HV(const Shares& shares, double t85_s) {
    double alloy = 0;
    for (const std::string_view element : {"Mn", "Cr", "Ni", "Mo", "Cu", "V"})
        alloy += per_cent(shares, element);
    if (per_cent(shares, "C") > most_yurioka_carbon_pct || alloy > most_yurioka_alloy_pct || !(t85_s > 0))
        return std::nullopt;
    const Ends ends = ends_of(shares);
    if (t85_s <= ends.martensite_s)
        return ends.martensite_HV;
    if (t85_s >= ends.bainite_s)
        return ends.bainite_HV;
    const double part =
        4 * std::log(t85_s / ends.martensite_s) / std::log(ends.bainite_s / ends.martensite_s) - 2;
    const double between = (ends.martensite_HV + ends.bainite_HV) / 2 -
                           (ends.martensite_HV - ends.bainite_HV) / 2.2 * std::atan(part);
    return std::clamp(between, std::min(ends.bainite_HV, ends.martensite_HV), ends.martensite_HV);
}

std::optional<Hardness> hardness_beside_weld(const HeatCase& heat_case, std::optional<Time> t85) {
    if (!t85 || heat_case.base->structure != "ferritic" || heat_case.composition.empty())
        return std::nullopt;
    const auto found = yurioka_HV(heat_case.composition, t85->value());
    if (!found)
        return std::nullopt;
    Hardness hardness{
        *found, t85->value() <= ends_of(heat_case.composition).martensite_s, {}, heat_case.certified};
    if (heat_case.group)
        hardness.most_HV = heat_case.group->hardness_max_HV;
    return hardness;
}

} // namespace ringfill
