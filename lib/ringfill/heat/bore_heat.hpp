#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/heat/arc_energy.hpp>
#include <ringfill/heat/hardness.hpp>
#include <ringfill/heat/preheat.hpp>
#include <ringfill/units/quantity.hpp>
#include <ringfill/weld/bore_weld.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How far from the edge of the weld the temperature is read, on the face towards the welder: 4 t, at most 50
/// mm, for walls up to 50 mm; thicker, 75 mm [m; ISO 13916:1996 clause 4.1, read in a reproduction].
Length measuring_distance(Length wall);

/// That of walls over 50 mm.
inline const Length thick_wall_distance = millimetres(75);

/// How far the preheat must reach from the weld in every direction: the wall, at least 3 in [m; AWS D1.1
/// clause 5.6, read in a quotation].
Length heated_zone(Length wall);

/// How long to wait after taking the heat away before a reading on the heated face holds: 2 min for each 25
/// mm of wall [ISO 13916, from memory].
Time equalising_time(Length wall);

/// One kind of pass and the heat input it is laid with.
struct LaidHeat {
    std::string pass; ///< "bore", "face 1", "groove 2"
    EnergyPerLength heat_input;
    Speed travel = {};
    std::string figure = {}; ///< its path under the bore
};

/// A fault for each heat input as laid that lies outside the band of the approved procedure, naming both.
std::vector<Fault> band_faults(const std::string& bore, const Procedure& procedure,
                               const std::vector<LaidHeat>& laid);

/// The heat side of one bore: what goes in, how hot it must be and may get.
struct BoreHeat : HeatFacts {
    double thermal_efficiency = 0;  ///< k
    std::optional<Current> current; ///< with the voltage: without one of them no heat input
    std::optional<Voltage> voltage;
    std::vector<LaidHeat> laid;          ///< bore, faces, grooves that are filled; empty: not known
    std::optional<EnergyPerLength> bore; ///< heat input as laid
    std::vector<EnergyPerLength> faces;  ///< in the order of the bore's faces
    std::vector<std::optional<EnergyPerLength>> grooves; ///< likewise; nothing for one that needs no filling
    std::optional<EnergyPerLength> lowest_of_faces;
    std::optional<EnergyPerLength> lowest_of_grooves;
    std::optional<EnergyPerLength> lowest; ///< of all, the one preheat is judged by
    bool wall_is_given = false;            ///< by heat_wall of the job
    std::string structure;                 ///< of the base metal
    bool unknown_metal = false;
    bool manganese_steel = false;           ///< austenitic manganese steel, which is never heated
    bool cold_iron = false;                 ///< cast iron that is laid cold
    bool cools_in_the_open = false;         ///< it must not be kept hot after the weld
    std::optional<std::string> dirty_steel; ///< what of the certificate makes hot cracks
    Preheat preheat;
    bool quenched = false;                                          ///< quenched or wear plate
    std::optional<Sourced<std::pair<double, double>>> t85_window_s; ///< that the grade asks for
    std::optional<Hardness> hardness;                               ///< beside the weld
    std::optional<CoolingTime> cooling; ///< at the minimum, with the lowest heat input; ferritic steel only
};

/// The heat input that brings the cooling time to a value, for the wall and the minimum of a bore whose
/// cooling time is known [J/m].
EnergyPerLength heat_input_for(const BoreHeat& heat, double t85_s);

/// From here on heat harms metal that is welded hand-warm [common practice, no source].
inline const Temperature over_hand_warm = in_si<Temperature>(323.15);

/// Where cast iron that is laid cold cracks, hotter in one place than in another [cast iron practice;
/// memory].
inline const Temperature iron_cracks_from = in_si<Temperature>(473.15);
inline const Temperature iron_cracks_to = in_si<Temperature>(723.15);

/// What an approved procedure heats that is never heated: manganese steel, by a preheat of 50 °C or more, by
/// a hold, or by an interpass maximum over its own; cast iron laid cold, between 200 and 450 °C; hardened
/// steel, over what softens it, or of which nobody knows that, over the maximum of its group by 50 K. Nothing
/// once its author has confirmed it.
enum class HeatedAgainst { nothing, manganese_steel, cold_iron, softening };
HeatedAgainst heated_against(const BoreHeat& heat);

/// Whether it is one of them. Its author must confirm that before anything of it is done.
bool is_heated_against_its_rules(const BoreHeat& heat);

/// Works out the heat input of every pass as laid, then preheat and interpass temperature; an approved
/// procedure rules. Throws Faulty: Origin::job when a heat input lies outside the approved band or the
/// certificate cannot be one, Origin::table when the family's plugin breaks a rule.
BoreHeat bore_heat(const GivenBore& given, const BoreWeld& weld, const Site& site, const Family& family,
                   const HeatRules& rules = {});

/// How every figure of a bore's heat was reached, by paths under the bore.
std::vector<Working> heat_working(const WornBore& bore, const BoreWeld& weld, const BoreHeat& heat);

} // namespace ringfill
