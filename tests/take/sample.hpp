#pragma once

#include <ringfill/take/take.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill::testing {

inline Mass kg(double value) {
    return in_si<Mass>(value);
}

inline Time hours(double value) {
    return in_si<Time>(value * factor::hour);
}

inline Volume litres(double value) {
    return in_si<Volume>(value * factor::litre);
}

inline VolumeFlow litres_a_minute(double value) {
    return in_si<VolumeFlow>(value * factor::litre / factor::minute);
}

inline WirePack spool(const std::string& name, UnitSystem units, double content_kg) {
    WirePack pack;
    pack.name = name;
    pack.units = units;
    pack.content = {kg(content_kg), "a"};
    return pack;
}

inline GasPack cylinder(const std::string& name, UnitSystem units, const std::string& holds, double content_L,
                        double usable_share) {
    GasPack pack;
    pack.name = name;
    pack.units = units;
    pack.holds = holds;
    pack.content = {litres(content_L), "a"};
    pack.usable_share = {usable_share, "a"};
    if (holds == "carbon_dioxide")
        pack.draw = {litres_a_minute(10), "a"};
    return pack;
}

/// Spools and cylinders in round numbers, for both sides of the ocean.
inline Packs round_packs() {
    constexpr auto mm = UnitSystem::metric;
    constexpr auto inch = UnitSystem::inch;
    Packs packs;
    packs.wire = {spool("5 kg spool", mm, 5), spool("15 kg spool", mm, 15),
                  spool("10 lb spool", inch, 4.535)};
    packs.gas = {cylinder("small mixture", mm, "argon_mixture", 2000, 0.9),
                 cylinder("large mixture", mm, "argon_mixture", 10'000, 0.9),
                 cylinder("small dioxide", mm, "carbon_dioxide", 5000, 0.8),
                 cylinder("large dioxide", mm, "carbon_dioxide", 20'000, 0.8),
                 cylinder("inch mixture", inch, "argon_mixture", 9000, 0.9)};
    return packs;
}

inline WearParts round_lives() {
    return {{hours(2), "tips"}, {hours(20), "nozzles"}, {kg(100), "liners"}, {in_si<Length>(4), "liners"}};
}

/// 5.5 kg of 1.2 mm wire for 5 kg laid in 12 starts and 5 hours; a trial ring takes 0.11 kg.
inline FillerUse wire_use() {
    FillerUse use;
    use.filler = "steel/X1";
    use.diameter = millimetres(1.2);
    use.linear_mass = in_si<LinearMass>(0.01);
    use.laid = kg(5);
    use.wire = kg(5.5);
    use.arc = hours(5);
    use.starts = 12;
    use.trials = {{"main", "arm root", kg(0.11)}};
    return use;
}

/// 1000 L of a gas at 14.4 L/min in an hour and 12 starts.
inline GasUse gas_use(const std::string& gas, const std::string& holds) {
    GasUse use;
    use.gas = gas;
    use.holds = holds;
    use.volume = litres(1000);
    use.flow = litres_a_minute(14.4);
    use.arc = hours(1);
    use.starts = 12;
    return use;
}

inline std::string item(const Need& line, UnitSystem units = UnitSystem::metric) {
    return item_text(line, units);
}

inline std::string unit(const Need& line) {
    return std::string(line.kind.unit);
}

/// A cover in words: "2 x 5 kg spool, 1 x 15 kg spool".
inline std::string cover_in_words(const Need& line) {
    std::string text;
    for (const PackCount& pack : line.cover)
        text += (text.empty() ? "" : ", ") + std::to_string(pack.count) + " x " + pack.pack;
    return text;
}

} // namespace ringfill::testing
