#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/table/fuels.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/table/sticks.hpp>
#include <ringfill/table/wear_parts.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/weld/piece.hpp>

namespace ringfill {

// What the bores of a job use of each thing, and the needs that come of it. A reserve is a share taken on
// top; units are those of the user, which also say what packs are on sale.

/// One ring laid on scrap with each procedure, to see that it welds as planned.
struct TrialRing {
    std::string procedure;
    std::string bore; ///< the largest of that procedure
    Mass wire;
    Length radius = {}; ///< of that bore
};

/// The bores of a job that use one thing, counts applied.
struct BoresUse {
    std::vector<double> counts;
    std::vector<double> each; ///< for one of each bore: kg of wire, pieces or L of gas
    Time arc;
    std::int64_t starts = 0;
};

/// What they use of one filler in one diameter.
struct FillerUse : BoresUse {
    std::string filler; ///< family/name
    Length diameter;
    std::optional<PieceLaid> piece; ///< an electrode or a rod; nothing: it is wire
    LinearMass linear_mass;
    Mass laid = {};
    Mass wire = {};                     ///< laid over efficiency, and trims
    std::vector<TrialRing> trials = {}; ///< of electrodes and rods in whole pieces
    std::optional<double> price_kg = {};
    std::vector<Mass> spools = {}; ///< what the feeder takes; empty: every spool of the table
};

/// What they use of one shielding gas.
struct GasUse : BoresUse {
    std::string gas;
    std::string holds; ///< the kind of cylinder
    Volume volume;     ///< at 15 degC and 1 atm, purging and leaks included
    VolumeFlow flow;   ///< the fastest of its procedures
};

/// The temperatures one bore is held between, as far as sticks go.
struct StickUse {
    std::string bore;
    std::optional<Temperature> minimum; ///< nothing: hand-warm is enough, or no figure is known
    std::optional<Temperature> maximum;
};

/// A stretch of time in which a flame comes and goes: the warm-up, the welding with its reheats, the hold,
/// the slow cooling.
struct FlameSpell {
    std::string name;
    Energy heat; ///< into the metal
    Time time;
};

/// What one bore of the job takes in heat from a heater.
struct FuelUse {
    std::string bore;
    int count = 1;                       ///< of this bore
    Energy heat;                         ///< into the metal, for one: warm-up, reheats, post-heat
    double efficiency = 0;               ///< share of the source's heat that reaches the metal, over 0 to 1
    Power source;                        ///< given off by the source
    std::string fuel;                    ///< empty: electric, which power_needs counts
    std::string parts = {};              ///< what the heat of one is for, in words
    std::vector<FlameSpell> spells = {}; ///< of one; empty: the flame is lit all the time
    std::string unknown = {};            ///< why the heat is not known, the end of a sentence; empty: it is
};

/// How one procedure loads the welding set.
struct PowerUse {
    std::string procedure;
    Current current;
    Voltage voltage;
    Time busiest_arc; ///< the most arc in any 10 min
};

/// Share of what a welding set draws that reaches the arc [common practice, no source].
inline constexpr double set_efficiency = 0.8;

/// What the whole job draws, all bores, counts applied.
struct MainsUse {
    std::optional<Power> electric_heater; ///< what it draws; nothing: none, or a flame
    Energy arc;                           ///< in the arc, U I t
    Energy heating;                       ///< drawn by the electric heater
    Power bar_drive;                      ///< of the boring bar
    Energy boring;                        ///< drawn by it
    bool is_whole = true;                 ///< else the arc or the heater of some bore is not known

    /// In all: the arc through the set, the rest as it is.
    Energy drawn() const { return arc / set_efficiency + heating + boring; }
};

/// The wire to take: what the bores need; on top the reserve, one liner full and a trial ring a procedure.
Need wire_need(const FillerUse& use, double reserve, const Packs& packs, const WearParts& wear,
               UnitSystem units);

/// The electrodes or rods to take: what each bore needs, rounded up to whole ones; on top the reserve and a
/// trial ring a procedure, rounded up likewise; in packets of whole ones by their mass.
Need piece_need(const FillerUse& use, double reserve, const Packs& packs, UnitSystem units);

/// The shielding gas to take, by the usable content of the cylinders, and for carbon dioxide by the flow one
/// cylinder gives without freezing its regulator: then as many stand ready as the flow needs at once.
Need gas_need(const GasUse& use, double reserve, const Packs& packs, UnitSystem units);

/// Contact tips, nozzles and, past its life, a liner for one wire: ⌈arc time/life⌉ and one spare of each; one
/// liner when more wire runs than one lasts for.
std::vector<Need> wear_part_needs(const FillerUse& use, const WearParts& wear, UnitSystem units);

/// The sticks of one bore: null where no stick of the shop serves. Where one of the two limits has none, or
/// no stick stands apart from the other's, neither is taken: a thermometer reads both.
struct StickPair {
    const Stick* minimum = nullptr; ///< the next rating at or above: molten, the metal is warm enough
    const Stick* maximum = nullptr; ///< the next at or below: not molten, it is not too hot
    bool needs_thermometer = false; ///< a stick is missing, or the first is not rated under the second
};

/// Picks the sticks for one bore from those in the units asked for.
StickPair pick_sticks(const StickUse& use, const std::vector<Stick>& sticks, UnitSystem units);

/// Two of each stick that the bores need [common practice, no source], and one contact thermometer, for the
/// bores that no pair of sticks serves and as a check for the others.
std::vector<Need> stick_needs(const std::vector<StickUse>& uses, const std::vector<Stick>& sticks,
                              UnitSystem units);

/// The fuel to take, a line a fuel [kg], in the order of the bores: mass = Σ count·heat/(efficiency·net
/// heating value). The cylinders hold it by what can be drawn from them, and stand ready together in such
/// number that their steady draw gives what is burned: of a fuel that burns in air the most that a spell of
/// flame burns on average, unless all of it, reserve included, is under 0.2 kg, which a hand torch burns; of
/// one that takes oxygen always what the burner takes while it is lit, source/net heating value. Behind a
/// fuel that takes it, the oxygen [L at 15 degC and 1 atm]. Uses without heat or fuel give nothing, but one
/// whose heat is not known has its line. Formula: energy balance. Throws std::logic_error for a fuel that the
/// table does not hold and an efficiency not over 0.
/// @param ambient of the site.
std::vector<Need> fuel_needs(const std::vector<FuelUse>& uses, const Fuels& fuels, double reserve,
                             const Packs& packs, UnitSystem units, std::optional<Temperature> ambient = {});

/// One insulating blanket for each bore by name that is preheated or must cool slowly; bores of one name are
/// welded one after the other and share it [common practice, no source]. Nothing when no bore asks for one;
/// none on metal that it would harm.
std::vector<Need> blanket_needs(const std::vector<BorePlan>& bores);

/// The period in which the duty of a welding set is told, s [EN IEC 60974-1, from memory].
inline constexpr double duty_period = 600;
/// What a generator gives for a litre of its fuel, J/L: 3.0 kWh [common practice, no source].
inline constexpr double generator_J_L = 3.0 * 3.6e6;

/// Duty that a welding set must bear: the most arc in any 10 min over 10 min, rounded up to 5 %, at least 5
/// and at most 100 [%]. [EN IEC 60974-1, from memory]
double duty_pct(Time busiest_arc);

/// One welding set with its rating, the power that must be there at once [kW], and the fuel of a generator
/// where there are no mains [L] with its reserve, in cans of whole litres or US gallons. Peak = highest U I /
/// set efficiency + electric heater, as if they ran together, or the drive of the boring bar, which does not,
/// if that is more. Without a procedure nothing is taken.
std::vector<Need> power_needs(const std::vector<PowerUse>& uses, const MainsUse& mains, double reserve,
                              UnitSystem units = UnitSystem::metric);

/// What the holes need: a rod of copper or carbon for each, to keep the weld out, a drill of each diameter to
/// reopen them, a new fitting where there was one; one spare rod and fitting of each diameter [common
/// practice, no source].
std::vector<Need> hole_needs(const std::vector<WornBore>& bores);

/// Cutting edges of the boring bar, rough and finish, bore by bore, and one spare of each: the first cut over
/// rough weld may break one [common practice, no source].
std::vector<Need> insert_needs(const std::vector<BorePlan>& bores);

/// The person who watches the fire and the extinguisher in hand: neither is the one who welds, nor the one on
/// the machine.
std::vector<Need> fire_watch_needs(const FireWatch& watch);

} // namespace ringfill
