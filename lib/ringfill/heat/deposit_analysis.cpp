#include <ringfill/heat/deposit_analysis.hpp>

#include <algorithm>

namespace ringfill {
namespace {

constexpr double most_wire_carbon_pct = 0.12; // where makers hold the carbon of wire; memory
constexpr double iron_carbon_pct = 1.2;       // tool steel and iron begin; likewise
constexpr double most_chromium_pct =
    16; // over it austenitic; 13 % Cr hardens in air [common practice, no source]
constexpr double most_alloy_pct = 10;       // of Ni or Mn: no ferritic steel; likewise
constexpr double most_copper_metal_pct = 5; // of Al, Sn or Cu; likewise

/// The share of its manganese that is left of a solid wire [memory].
double manganese_left(const std::string& gas) {
    return gas == "C1" ? 0.75 : gas == "M20" || gas == "M21" ? 0.85 : 0.90;
}

Shares middle_of_class(const Filler& filler, const std::string& gas) {
    Shares shares = plain_shares(filler.composition);
    for (auto& [element, percent] : shares) {
        if (const auto* least = value_named(filler.composition_min, element))
            percent = (percent + least->value) / 2;
        if (element == "Mn")
            percent *= manganese_left(gas);
        if (element == "C")
            percent = std::min(percent, most_wire_carbon_pct);
    }
    return shares;
}

std::string why_left_out(const Filler& filler, const Shares& shares) {
    if (filler.practice)
        return "its own metal asks for itself";
    if (const auto* carbon = value_named(filler.composition, "C"); carbon && carbon->value >= iron_carbon_pct)
        return "it is no ferritic metal";
    if (share_of(shares, "Cr") > most_chromium_pct)
        return "it is no ferritic metal";
    for (const char* element : {"Ni", "Mn"})
        if (share_of(shares, element) > most_alloy_pct)
            return "it is no ferritic metal";
    for (const char* element : {"Al", "Sn", "Cu"})
        if (share_of(shares, element) > most_copper_metal_pct)
            return "it is no ferritic metal";
    return {};
}

} // namespace

DepositAnalysis deposit_analysis(const Procedure& procedure, const Filler& filler) {
    DepositAnalysis found;
    const bool is_bare = filler.form == FillerForm::solid || filler.form == FillerForm::rod;
    if (!procedure.deposit.empty()) {
        found.shares = procedure.deposit;
        found.known_by = "measured";
    } else if (!filler.deposit.empty()) {
        found.shares = plain_shares(filler.deposit);
        found.known_by = "usual";
    } else if (is_bare) {
        found.shares = middle_of_class(filler, procedure.gas);
        found.known_by = "the middle of its class";
    } else {
        found.shares = plain_shares(filler.composition);
        found.known_by = "the limits of its class";
    }
    fill_up(found.shares, filler.typical);
    found.left_out = why_left_out(filler, found.shares);
    return found;
}

} // namespace ringfill
