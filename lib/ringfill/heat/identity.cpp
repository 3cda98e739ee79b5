#include <ringfill/heat/identity.hpp>

#include <string_view>
#include <utility>

#include <fmt/format.h>

#include <ringfill/heat/base_composition.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

using Limit = std::pair<std::string_view, double>;

/// What a grade may hold of a hardening element that its standard does not name, percent: more would make it
/// another steel [EN 10020:2000, table 1, limits of non-alloy steel; from memory].
constexpr Limit unnamed_limits[] = {{"C", 0.0},   {"Mn", 1.65}, {"Cr", 0.30}, {"Ni", 0.30}, {"Mo", 0.08},
                                    {"Cu", 0.40}, {"V", 0.10},  {"Nb", 0.06}, {"B", 0.0008}};
constexpr Limit ferritic_limits[] = {{"Cr", 10}, {"Ni", 10}, {"Mn", 10}};
constexpr double most_carbon_pct = 1.2;
constexpr double lean_manganese_pct = 5; // lean manganese steel begins, where carbon is not low
constexpr double low_carbon_pct = 0.5;
constexpr Limit least_in_steel[] = {{"C", 0.02}, {"Mn", 0.1}};

std::string name_of(const Base& base) {
    return base.name == unknown_metal ? "4140, which unknown metal counts as" : base.name;
}

/// How far over a maximum a certificate may be of the grade all the same: a product analysis may pass the
/// ladle's by a little [common practice, no source].
constexpr double carbon_tolerance_pct = 0.02;
constexpr double other_tolerance = 1.1;

/// Carbon this far under the grade is of another steel [common practice, no source].
constexpr double far_under_pct = 0.10;
/// Where the standard gives no least carbon, that of a medium carbon steel lies this share under its most.
constexpr double medium_carbon_pct = 0.30;
constexpr double usual_least_share = 0.8;

/// "C 0.5 % is over the 0.48 % of C45", where a certificate holds more than a limit.
std::optional<std::string> over(const WornBore& bore, std::string_view element, double limit,
                                const std::string& of) {
    const double* percent = value_named(bore.composition, element);
    if (!percent || *percent <= limit + 1e-9)
        return std::nullopt;
    return fmt::format("{} {:.4g} % is over the {:.4g} % of {}", element, *percent, limit, of);
}

/// What a certificate may show of an element before it is of another grade; stainless steel is told by its
/// limit.
double tolerated(const Base& base, std::string_view element, double limit) {
    if (base.structure != "ferritic")
        return limit;
    return element == "C" ? limit + carbon_tolerance_pct : limit * other_tolerance;
}

/// The first hardening element over the grade's limit. What a ferritic grade does not name has a limit too;
/// stainless steel is told by what it names.
std::optional<std::string> over_grade(const WornBore& bore, const Base& base) {
    for (const auto& [element, unnamed] : unnamed_limits) {
        const auto* named = value_named(base.composition, element);
        if (!named && base.structure != "ferritic")
            continue;
        const double limit = named ? named->value : unnamed;
        const double* percent = value_named(bore.composition, element);
        if (percent && *percent > tolerated(base, element, limit) + 1e-9)
            return over(bore, element, limit, name_of(base));
    }
    return std::nullopt;
}

/// Carbon far under what the grade holds: "C 0.1 % is far under the 0.43 % of 1045".
std::optional<std::string> far_under(const WornBore& bore, const Base& base) {
    const double* carbon = value_named(bore.composition, "C");
    const auto* least = value_named(base.composition_min, "C");
    const auto* most = value_named(base.composition, "C");
    if (!carbon || !most || base.name == unknown_metal)
        return std::nullopt;
    if (!least && most->value < medium_carbon_pct)
        return std::nullopt;
    const double limit = least ? least->value : usual_least_share * most->value;
    if (*carbon >= limit - far_under_pct)
        return std::nullopt;
    return fmt::format("C {:.4g} % is far under the {:.4g} % of {}", *carbon, limit, base.name);
}

std::optional<std::string> under_grade(const WornBore& bore, const Base& base) {
    for (const auto& [element, least] : base.composition_min)
        if (const double* percent = value_named(bore.composition, element);
            percent && *percent < least.value - 1e-9)
            return fmt::format("its certificate says otherwise: {} {:.4g} % is under the {:.4g} % of {}",
                               element, *percent, least.value, base.name);
    return std::nullopt;
}

std::optional<std::string> magnet_against(const WornBore& bore, const Base& base) {
    if (bore.magnetic == false && holds_magnet(base))
        return "a magnet does not hold, so it is no ferritic and no martensitic steel";
    if (bore.magnetic == false && base.structure == "cast_iron")
        return "a magnet does not hold, so it is no grey and no nodular iron";
    if (bore.magnetic == true && base.structure == "austenitic")
        return "a magnet holds, so it is no austenitic metal";
    return std::nullopt;
}

std::optional<std::string> no_ferritic_steel(const WornBore& bore) {
    constexpr std::string_view said = "with the {:.4g} % {} of its certificate it is no ferritic steel";
    for (const auto& [element, limit] : ferritic_limits)
        if (const double* percent = value_named(bore.composition, element); percent && *percent > limit)
            return fmt::format(said, *percent, element);
    const double* carbon = value_named(bore.composition, "C");
    if (carbon && *carbon >= most_carbon_pct)
        return fmt::format(said, *carbon, "C");
    const double* manganese = value_named(bore.composition, "Mn");
    if (manganese && *manganese >= lean_manganese_pct && !(carbon && *carbon <= low_carbon_pct))
        return fmt::format(said, *manganese, "Mn");
    return std::nullopt;
}

} // namespace

bool holds_magnet(const Base& base) {
    return base.structure == "ferritic" || base.structure == "martensitic";
}

std::optional<std::string> identity_doubt(const WornBore& bore, const Base& base) {
    if (auto against = magnet_against(bore, base))
        return against;
    if (base.structure == "ferritic")
        return no_ferritic_steel(bore);
    if (auto found = over_grade(bore, base))
        return fmt::format("its certificate says otherwise: {}", *found);
    return under_grade(bore, base);
}

std::optional<std::string> not_of_grade(const WornBore& bore, const Base& base) {
    if (base.composition.empty() || base.structure != "ferritic")
        return std::nullopt;
    if (base.name == unknown_metal && is_full_certificate(bore))
        return std::nullopt; // it is worked out by it, whatever it is
    if (auto found = over_grade(bore, base))
        return found;
    return far_under(bore, base);
}

std::optional<std::string> dirty_steel(const WornBore& bore, const Base& base) {
    for (const std::string_view element : {"P", "S"})
        if (const auto* limit = value_named(base.composition, element))
            if (auto found = over(bore, element, limit->value, base.name))
                return found;
    return std::nullopt;
}

std::vector<Fault> certificate_faults(const WornBore& bore, const Base& base) {
    std::vector<Fault> faults;
    if (base.structure != "ferritic")
        return faults;
    for (const auto& [element, least] : least_in_steel)
        if (const double* percent = value_named(bore.composition, element); percent && *percent < least)
            faults.push_back(fault_at_path(
                fmt::format("{}.composition.{}", bore.path, element), fmt::format("{:.4g}", *percent),
                fmt::format("is less than the {:.3g} % that every machine steel holds", least),
                "write percent by mass as the certificate prints it, or leave the element out"));
    return faults;
}

std::string_view why_not_for_filler(std::string_view structure) {
    constexpr std::pair<std::string_view, std::string_view> spared[] = {
        {"austenitic", "austenitic metal is harmed by heat"},
        {"nickel", "nickel metal is harmed by heat"},
        {"copper", "held hot, bronze tears as it shrinks"},
        {"cast_iron", "cast iron is welded cold or hot as its own practice says"}};
    for (const auto& [name, why] : spared)
        if (name == structure)
            return why;
    return {};
}

bool cools_in_the_open(const Base& base) {
    const auto is_low = [](const auto& known) { return known && deg_c(known->value) < 250; };
    return base.structure == "austenitic" || base.structure == "nickel" || base.structure == "copper" ||
           is_low(base.softens_over) || is_low(base.tempering);
}

} // namespace ringfill
