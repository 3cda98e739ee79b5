#pragma once

#include <optional>
#include <string>

#include <ringfill/heat/base_composition.hpp>
#include <ringfill/heat/deposit_analysis.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/material/answer.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/units/show.hpp>
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
    bool hydrogen_is_assumed = false; ///< neither the job nor the filler's class says
    bool certified = false;           ///< the certificate gives every element that the rules weigh
    bool cap_assumes_year =
        false; ///< its carbon is bounded as that of metal of the standard's present edition
    bool stainless_on_steel = false; ///< an austenitic filler on ferritic or martensitic metal
    bool nickel_on_steel = false;    ///< a filler of 40 % nickel or more there
    bool foreign_on_steel = false;   ///< a bronze or an austenitic manganese filler there
    bool ferritic_filler = true;     ///< its metal holds hydrogen as steel does
    /// Why the mill certificate is not of the grade: "C 0.50 % is over …".
    std::optional<std::string> not_the_grade;
};

/// What the job as a whole says of how its heat is judged.
struct HeatRules {
    UnitSystem units = UnitSystem::metric; ///< whose steps computed figures are rounded to
    std::string document;                  ///< that the job works by; empty: it names none
};

/// The largest index that a composition within its limits reaches [%], where those limits are of more than
/// single elements; what is absent follows from the composition.
struct ReachedIndices {
    std::optional<double> ce_iiw;
    std::optional<double> cet;
    std::optional<double> pcm;
    std::optional<double> chemical_carbon;
};

/// A composition of the base metal, that of its largest CET, and the largest of each index.
struct TakenComposition {
    Shares shares;
    ReachedIndices reached;
};

/// What governs how hot one bore must be: metal, wall, filler, heat.
struct HeatCase : HeatFacts {
    HeatRules rules;
    const Family* family = nullptr;
    const Base* base = nullptr;
    const Filler* filler = nullptr;
    std::string filler_name;                      ///< family/name
    Shares composition;                           ///< of the base metal
    ReachedIndices reached;                       ///< likewise
    std::optional<TakenComposition> of_the_grade; ///< without the certificate, where that denies the grade
    DepositAnalysis deposit;
    const HeatGroup* group = nullptr; ///< what it has in common with others; null: not known
    bool as_quenched = false;         ///< unknown metal that its certificate shows as quenched plate
    std::optional<Length> combined;   ///< 2 × wall, at most 100 mm
    std::optional<EnergyPerLength> lowest_heat_input; ///< as laid
    std::optional<Temperature> ambient;
    std::optional<std::string> doubt; ///< why it cannot be what the job calls it, see identity_doubt()

    bool is_unknown_metal() const { return base->name == unknown_metal; }
    bool is_quenched() const { return as_quenched || (group && group->quenched); }
    bool is_hardenable() const { return as_quenched || (group && group->hardenable); }
    /// A filler of another kind on steel, laid with its own limits from the second layer on.
    bool is_dissimilar() const { return stainless_on_steel || nickel_on_steel || foreign_on_steel; }
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
                   std::optional<EnergyPerLength> lowest_heat_input, const HeatRules& rules = {});

/// Hydrogen of a filler whose class sets no limit [ml/100 g; memory].
inline constexpr double most_hydrogen_ml_100g = 30;

/// The question on one topic as the family's plugin is asked it.
Question question_on(const std::string& topic, const HeatCase& heat_case);

} // namespace ringfill
