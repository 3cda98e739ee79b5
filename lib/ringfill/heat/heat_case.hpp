#pragma once

#include <optional>
#include <string>

#include <ringfill/job/procedure.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/material/answer.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/weld/dilution.hpp>

namespace ringfill {

/// How freely the metal can follow the weld as it shrinks.
enum class Restraint { low = 1, medium, high };

/// What is known of a bore's metal, wall and filler, as far as its heat goes.
struct HeatFacts {
    std::optional<Length> wall; ///< that governs
    Restraint restraint = Restraint::high;
    std::optional<Sourced<double>> hydrogen_ml_100g;
    bool hydrogen_is_measured = false;
    bool stainless_on_steel = false; ///< an austenitic filler on ferritic or martensitic metal
    bool nickel_on_steel = false;    ///< a filler of 40 % nickel or more there
    bool foreign_on_steel = false;   ///< a bronze or an austenitic manganese filler there
    bool ferritic_filler = true;     ///< its metal holds hydrogen as steel does
    /// Why the mill certificate is not of the grade: "C 0.50 % is over …".
    std::optional<std::string> not_the_grade;
};

/// What governs how hot one bore must be: metal, wall, filler, heat.
struct HeatCase : HeatFacts {
    const Family* family = nullptr;
    const Base* base = nullptr;
    const Filler* filler = nullptr;
    std::string filler_name;                          ///< family/name
    Shares composition;                               ///< of the base metal
    std::optional<Length> combined;                   ///< 2 × wall, at most 100 mm
    std::optional<EnergyPerLength> lowest_heat_input; ///< as laid
    std::optional<Temperature> ambient;
    std::optional<std::string> doubt; ///< why it cannot be what the job calls it, see identity_doubt()

    bool is_unknown_metal() const { return base->name == unknown_metal; }
};

/// The wall over which heat flows off as from a thick body; then the combined thickness is the most.
inline const Length thick_wall = millimetres(50);

/// Over this wall the boss cannot follow the weld: restraint is high, else medium.
inline const Length rigid_wall = millimetres(25);

/// Puts together what governs a bore. The mill certificate replaces the table's composition element by
/// element.
/// @param wall after the skim, where the boss is known; heat_wall of the job goes before it.
HeatCase heat_case(const WornBore& bore, const Procedure& procedure, const Site& site, const Family& family,
                   const Base& base, const Filler& filler, std::optional<Length> wall,
                   std::optional<EnergyPerLength> lowest_heat_input);

/// The question on one topic as the family's plugin is asked it.
Question question_on(const std::string& topic, const HeatCase& heat_case);

} // namespace ringfill
