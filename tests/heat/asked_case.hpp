#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/heat/preheat.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

using Certificate = std::vector<std::pair<std::string, double>>;

/// A grade of the product's tables as a job asks for it.
struct AskedCase {
    std::string base = "steel/S355J2";
    std::optional<double> wall_mm = 24;
    double hydrogen = 5; ///< measured; 0: that of the filler
    std::optional<double> heat_kj_mm = 0.8;
    Certificate certificate = {};
    std::string filler = "steel/ER70S-6";
    std::string document = {};
    UnitSystem units = UnitSystem::metric;
    std::optional<int> bought_after = {};
    std::optional<double> product_mm = {};
    std::optional<Approved> approved = {};

    HeatCase what() const {
        const Family& family = family_of(shop().registry, base);
        const std::string grade = base.substr(base.find('/') + 1);
        const Base& metal = *std::find_if(family.bases.begin(), family.bases.end(),
                                          [&](const Base& one) { return one.name == grade; });
        const Family& fillers = family_of(shop().registry, filler);
        const std::string name = filler.substr(filler.find('/') + 1);
        const Filler& wire = *std::find_if(fillers.fillers.begin(), fillers.fillers.end(),
                                           [&](const Filler& one) { return one.name == name; });
        WornBore bore;
        bore.composition = certificate;
        bore.bought_after = bought_after;
        if (product_mm)
            bore.product_thickness = millimetres(*product_mm);
        if (wall_mm)
            bore.heat_wall = millimetres(*wall_mm);
        Procedure procedure;
        procedure.filler = filler;
        procedure.gas = "M21";
        if (hydrogen > 0)
            procedure.hydrogen_ml_100g = hydrogen;
        std::optional<EnergyPerLength> heat;
        if (heat_kj_mm)
            heat = in_si<EnergyPerLength>(*heat_kj_mm * 1e6);
        return heat_case(bore, procedure, Site(), family, metal, wire, std::nullopt, heat, {units, document});
    }

    Preheat preheat() const { return ringfill::preheat(what(), approved ? &*approved : nullptr); }
    double minimum() const { return deg_c(preheat().minimum.value().value); }
    double maximum() const { return deg_c(preheat().interpass_max.value().value); }
};

/// A certificate that gives every element that the rules weigh.
inline Certificate certificate(double carbon, double manganese, double chromium = 0.05,
                               double molybdenum = 0.01, double nickel = 0.05, double copper = 0.10,
                               double vanadium = 0.005) {
    return {{"C", carbon},  {"Mn", manganese}, {"Cr", chromium}, {"Mo", molybdenum},
            {"Ni", nickel}, {"Cu", copper},    {"V", vanadium},  {"Si", 0.25}};
}

inline const PreheatMethod* method_named(const Preheat& preheat, const std::string& name) {
    const auto found = std::find_if(preheat.methods.begin(), preheat.methods.end(),
                                    [&](const PreheatMethod& one) { return one.name == name; });
    return found == preheat.methods.end() ? nullptr : &*found;
}

/// EN 1011-2 method B, written here apart from the library: CET, wall, hydrogen and heat input at the edge of
/// their range [°C].
double method_b_by_hand(double cet, double wall_mm, double hydrogen, double heat_kj_mm);

} // namespace ringfill::testing
