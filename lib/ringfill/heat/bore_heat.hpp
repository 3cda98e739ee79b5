#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/heat/approved.hpp>
#include <ringfill/heat/cooling_time.hpp>
#include <ringfill/heat/preheat.hpp>
#include <ringfill/survey/skim.hpp>
#include <ringfill/weld/faces_and_grooves.hpp>

namespace ringfill {

/// What one bore is welded with, as far as its heat goes.
struct HeatSettings {
    const Procedure* procedure = nullptr;
    const Filler* filler = nullptr;
    std::optional<Current> current;
    Bead bead; ///< as laid
};

/// The heat side of one bore: what goes in, how hot it must be and may get.
struct BoreHeat {
    double thermal_efficiency = 0;  ///< k
    std::optional<Current> current; ///< with the voltage: without one of them no heat input
    std::optional<Voltage> voltage;
    std::vector<LaidHeat> laid;          ///< bore, faces, grooves that are filled; empty: not known
    std::optional<EnergyPerLength> bore; ///< heat input as laid
    std::vector<EnergyPerLength> faces;  ///< in the order of the bore's faces
    std::vector<std::optional<EnergyPerLength>> grooves; ///< likewise; nothing for one that needs no filling
    std::optional<EnergyPerLength> lowest;               ///< the one preheat is judged by
    std::optional<Length> wall;                          ///< that governs
    bool wall_is_given = false;                          ///< by heat_wall of the job
    Restraint restraint = Restraint::high;
    std::optional<Sourced<double>> hydrogen_ml_100g;
    bool hydrogen_is_measured = false;
    std::string structure; ///< of the base metal
    bool unknown_metal = false;
    std::optional<std::string> doubt; ///< why it cannot be what the job calls it: no heat before it is known
    bool stainless_on_steel = false;  ///< an austenitic filler on ferritic or martensitic metal
    bool nickel_on_steel = false;     ///< a filler of 40 % nickel or more there
    bool foreign_on_steel = false;    ///< a bronze or an austenitic manganese filler there
    bool ferritic_filler = true;      ///< its metal holds hydrogen as steel does
    bool manganese_steel = false;     ///< austenitic manganese steel, which is never heated
    bool cold_iron = false;           ///< cast iron that is laid cold
    bool cools_in_the_open = false;   ///< it must not be kept hot after the weld
    std::optional<std::string> dirty_steel; ///< what of the certificate makes hot cracks
    std::optional<std::string> not_the_grade;
    Preheat preheat;
    std::optional<CoolingTime> cooling; ///< at the minimum, with the lowest heat input; ferritic steel only
};

/// From here on heat harms metal that is welded hand-warm [common practice, no source].
inline const Temperature over_hand_warm = in_si<Temperature>(323.15);

/// Where cast iron that is laid cold cracks, hotter in one place than in another [cast iron practice;
/// memory].
inline const Temperature iron_cracks_from = in_si<Temperature>(473.15);
inline const Temperature iron_cracks_to = in_si<Temperature>(723.15);

/// What an approved procedure heats that is never heated: manganese steel, by a preheat of 50 °C or more, by
/// a hold, or by an interpass maximum over its own; cast iron laid cold, between 200 and 450 °C; steel that
/// keeps its hardness only under 250 °C, over what softens it.
enum class HeatedAgainst { nothing, manganese_steel, cold_iron, softening };
HeatedAgainst heated_against(const BoreHeat& heat);

/// Whether it is one of them. Its author must confirm that before anything of it is done.
bool is_heated_against_its_rules(const BoreHeat& heat);

/// Whether the rings themselves are, by the approved preheat or interpass maximum, and not the hold alone.
bool rings_are_heated_against_its_rules(const BoreHeat& heat);

/// Works out the heat input of every pass as laid, then preheat and interpass temperature; an approved
/// procedure rules. Throws Faulty: Origin::job when a heat input lies outside the approved band or the
/// certificate cannot be one, Origin::table when the family's plugin breaks a rule.
BoreHeat bore_heat(const WornBore& bore, const HeatSettings& settings, const Site& site, const Family& family,
                   const Base& base, const Build& build, const std::vector<FacePad>& faces,
                   const std::vector<GrooveFill>& grooves);

} // namespace ringfill
