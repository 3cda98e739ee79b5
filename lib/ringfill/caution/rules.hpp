#pragma once

#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/caution/caution.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/table/cutting.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

// The cautions that a plan's own figures decide. A rule adds those that apply to a list.

/// What a sentence gets of a value: a quantity as the user reads it, anything else as it is.
template <class Value>
decltype(auto) shown(const Value& value, UnitSystem units) {
    if constexpr (requires { show(value, units); })
        return show(value, units);
    else
        return (value);
}
template <class Value>
using Shown = decltype(shown(std::declval<const Value&>(), UnitSystem()));

/// The cautions of one bore, one procedure or the job, in the order they are found.
struct CautionList {
    UnitSystem units = UnitSystem::metric;
    Matter matter = Matter::quality; ///< what they guard, where it is not said with one of them
    std::vector<Subject> about = {}; ///< empty: the whole job
    std::vector<Caution> found = {};

    /// One that applies, by common practice unless its source is set. Both sentences may take any of the
    /// values; quantities among them are shown in the user's units.
    template <class... Values>
    Caution& add(When when, Matter guards, fmt::format_string<Shown<Values>...> text,
                 fmt::format_string<Shown<Values>...> because, const Values&... values) {
        found.push_back({about, when, guards, Applies::yes, fmt::format(text, shown(values, units)...),
                         fmt::format(because, shown(values, units)...), "practice"});
        return found.back();
    }

    /// The same of what is done before the work.
    template <class... Values>
    Caution& before(fmt::format_string<Shown<Values>...> text, fmt::format_string<Shown<Values>...> because,
                    const Values&... values) {
        return add(When::before, matter, text, because, values...);
    }

    /// The same by a source.
    template <class... Values>
    void before_by(const std::string& source, fmt::format_string<Shown<Values>...> text,
                   fmt::format_string<Shown<Values>...> because, const Values&... values) {
        before(text, because, values...).source = source;
    }
};

/// One bore with its work planned, as the rules judge it.
struct RuledBore {
    const WornBore& bore;
    const Settings& settings;
    const BorePlan& plan;
    UnitSystem units;

    const Procedure& procedure() const { return *settings.procedure; }
};

/// What must be said first of a bore's heat, before anything else in every view: metal that has to be
/// identified, metal that an approved procedure heats against its rules, a minimum over its maximum, and no
/// figure at all.
void heat_stops(CautionList& stops, const RuledBore& on);

/// Of the survey and the skim: too few readings to see the wear, readings that may be mistyped, a finished
/// weld so thin that the tool works in the fused line, an uncleaned surface, a thin wall, a groove deeper
/// than the weld.
void survey_rules(CautionList& cautions, const RuledBore& on);

/// The least stock that must stay over the deepest valley between beads, 0.5 mm [common practice, no source].
inline const Length least_clean_up = millimetres(0.5);

/// Extra stock per side that is worth a caution, over 1 mm [common practice, no source].
inline const Length much_extra_stock = millimetres(1);

/// Share of the metal laid in a second, and so of the wire feed, at which the layers would come out even at
/// the fastest travel: κ*² v_max/v₀, the travel being at its limit.
double even_share(const Layering& layering, const Bead& as_laid);

/// Of the layers: valleys that the boring may not clean up, and much extra stock because the travel could not
/// be faster.
void weld_rules(CautionList& cautions, const RuledBore& on);

/// The largest bead section that holds overhead, 20 mm² [common practice, no source].
inline const Area largest_overhead_bead = in_si<Area>(20e-6);

/// Of a horizontal axis, where every turn of the torch passes overhead: a bead too large to hold there, and
/// spray transfer.
void position_rules(CautionList& cautions, const RuledBore& on);

/// Of the faces: a pad that does not lie on the boss, and much built over what was asked.
void face_rules(CautionList& cautions, const RuledBore& on);

/// A filler and a base metal of different families need more than this plan knows.
void family_rules(CautionList& cautions, const RuledBore& on);

/// A filler that is not advised on the metal of a bore, that wants a buffer, or of which no table says
/// anything; none where it is recommended. One that is itself a filler of the buffer is told how its first
/// layer becomes one.
void suit_rules(CautionList& cautions, const RuledBore& on);

/// A filler of another family than the bore that does not come to its own metal before the finished surface.
void dilution_rules(CautionList& cautions, const RuledBore& on);

/// The least ferrite that keeps austenitic weld metal from cracking while it freezes, 3 to 4 ferrite numbers;
/// the lower end is taken for percent [Valiente Bermejo 2012, read in the abstract].
inline constexpr double least_ferrite = 3;

/// A first layer of austenitic metal that is estimated to hold less.
void ferrite_rules(CautionList& cautions, const RuledBore& on);

/// What else can go wrong with its preheat: methods that ask for more than what rules, an approved procedure
/// that goes further than a document, the family or the metal allows, knowledge that is missing.
void preheat_rules(CautionList& cautions, const RuledBore& on);

/// Its part on the approved procedure.
void overruled_rules(CautionList& cautions, const RuledBore& on);
/// How fast it cools beside the weld, and how hard it turns.
void cooling_rules(CautionList& cautions, const BoreHeat& heat);

/// What the heat balance of a bore warns of: a heater that cannot reach or hold a temperature, with the power
/// needed and given, a boss that does not cool to where the work may go on, and one so light that a ring
/// takes it far over its maximum.
void balance_rules(CautionList& cautions, const RuledBore& on);

/// A pass laid so fast that its heat input falls under three quarters of that at the travel as set: fusion is
/// in doubt (section 9 of the computation). One caution a bore, for its fastest pass.
void fusion_rules(CautionList& cautions, const RuledBore& on);

/// Of the boring: the bar's lowest speed is too fast, valleys of the weld stand past the finish, little weld
/// is left under a groove.
void boring_rules(CautionList& cautions, const RuledBore& on);

/// Of the whole job not to finish or measure while hot, with the bore that grows most; none without bores.
void hot_finish_rules(CautionList& cautions, const std::vector<BorePlan>& bores, const Cutting& cutting);

/// What cold and wet ask for before the first arc [AWS D1.1: 0 °F (−18 °C) at the weld ends the work, below
/// 32 °F (0 °C) warm to 70 °F (20 °C); from memory; 5 °C: common practice, no source].
/// @param in_doubt bores whose metal must be identified first, and are neither warmed nor dried with a flame.
/// @param all_in_doubt there is no other bore.
void cold_rules(CautionList& cautions, const Site& site, const std::vector<std::string>& in_doubt,
                bool all_in_doubt);

/// What the approved procedure of a procedure asks for, told in every view; none where there is none. A
/// minimum over its maximum is called contradictory, and neither is changed.
void approved_rules(CautionList& cautions, const Procedure& procedure);

/// Covered electrodes with a limit of hydrogen keep to it only when dry.
void form_rules(CautionList& cautions, const Procedure& procedure, const Filler& filler);

/// Why metal that an approved procedure heats against its rules is not; empty where it does not.
struct NeverHeated {
    std::string words; ///< "manganese steel is not heated"
    std::string because;
    std::string source;
};
NeverHeated never_heated(const BoreHeat& heat, UnitSystem units);

/// What else its figures need said: a boss outside the range that the balance was tried on, two runs far
/// apart, dwells told much longer than needed.
std::vector<std::string> balance_notes(const std::string& bore, const HeatBalance& balance, UnitSystem units);

} // namespace ringfill
