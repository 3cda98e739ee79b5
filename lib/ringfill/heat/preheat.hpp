#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/word_of.hpp>
#include <ringfill/heat/heat_case.hpp>

namespace ringfill {

/// What a method asks for.
enum class Asks {
    minimum, ///< a temperature
    none,    ///< no preheat
    unnamed, ///< preheat, without saying how much
    unknown, ///< nothing: it has no answer here
};

template <>
inline constexpr std::string_view enum_words<Asks>[] = {"minimum", "none", "preheat without a figure",
                                                        "no answer"};

/// One method's view of how hot the metal must be.
struct PreheatMethod {
    std::string name;
    Asks asks = Asks::unknown;
    std::optional<Temperature> minimum;
    std::optional<Temperature> range_from;       ///< where a row gives a range, its lower end
    std::optional<Sourced<Temperature>> maximum; ///< interpass, where its document gives one
    bool applies = false;                        ///< it may rule; otherwise it is information
    bool rules = false;                          ///< it is the one that does
    bool in_range = true;
    std::string formula; ///< of the minimum in °C; empty: looked up
    std::vector<Input> inputs;
    std::string source;
    std::string note; ///< why it is out of range, how it was looked up; may be empty
};

/// A temperature and who asks for it.
struct AskedTemperature {
    Temperature value;
    std::string by;           ///< a method, a document, the approved procedure
    std::string source;       ///< key of the bibliography
    std::string formula = {}; ///< where it was worked out here
    std::vector<Input> inputs = {};
    bool is_usual = false;  ///< by common practice, because no document gives one
    bool by_family = false; ///< by the rules of the family
};

/// Hydrogen release or another hold after the last ring.
struct PostHeat {
    AskedTemperature temperature;
    Time time;
    AnsweredFigure time_working; ///< how the time was reached; empty from the approved procedure
    bool is_approved = false;    ///< the approved procedure asks for it
};

/// What an approved procedure took the place of where its own figure is the less careful one.
struct Overruled {
    std::optional<AskedTemperature> interpass_max; ///< of a document, the tempering or practice
    std::optional<AskedTemperature> preheat_most;  ///< what softens it, under the approved preheat
    std::optional<AskedTemperature> hold_most;     ///< 50 K under tempering, under the approved hold
    std::optional<PostHeat> post_heat;             ///< the family's, hotter or longer than the approved one
};

/// The range that a filler's own metal is laid in, where it goes over what counts of it.
struct FillerRange {
    Temperature low;
    Temperature high;
    Temperature counted;
    std::string source;
};

/// What is known of the preheat of a bore. Every view and every list of what to take goes by it.
enum class PreheatState {
    figure,                ///< a minimum
    none,                  ///< dry and hand-warm is enough: the minimum is the chill-off temperature
    needed_without_figure, ///< a method asks for preheat, and none says how much
    not_known,             ///< the metal must be identified first, or no method covers it
    contradictory,         ///< the minimum lies over the interpass maximum
};

/// The temperature at which a part is dry and hand-warm, and to which a cold one is brought before any weld
/// [AWS D1.1, note to the preheat table: 70 °F (20 °C) below 32 °F; from memory, taken for all].
inline const Temperature chill_off = in_si<Temperature>(293.15);

/// How hot a bore must be and may get (section 10 of the computation).
struct Preheat {
    PreheatState state = PreheatState::not_known;
    PreheatState asked = PreheatState::not_known; ///< the state but for a window that is closed
    std::optional<std::string> doubt;        ///< why the metal cannot be what the job calls it: not_known
    std::optional<AskedTemperature> minimum; ///< what no ring begins under, whatever the state; see figure()
    std::optional<AskedTemperature> interpass_max;
    std::string approved; ///< reference of the approved procedure; empty: none
    std::vector<PreheatMethod> methods;
    std::optional<FillerRange> filler_range;
    std::vector<AnsweredFigure> values; ///< carbon equivalents and what else the family works out
    std::vector<Advice> advice;
    std::optional<PostHeat> post_heat;
    Overruled overruled;

    /// What no ring begins under: the minimum, at least dry and hand-warm where preheat is needed and nobody
    /// says how much. Nothing while it is not known.
    std::optional<Temperature> least() const {
        return minimum ? std::optional(minimum->value) : std::nullopt;
    }
    /// The minimum that may be told as a figure: nothing while preheat is needed and nobody says how much.
    std::optional<AskedTemperature> figure() const {
        return asked == PreheatState::needed_without_figure ? std::nullopt : minimum;
    }
};

/// A temperature that the family's rules give as a value [K]; its formula becomes one in degrees Celsius.
AskedTemperature asked_by_family(const AnsweredFigure& value);

/// A method outside its range that asks for this much more than the one that rules is a caution.
inline constexpr double much_more_K = 25;

/// Whether a method that applies asks for preheat without a figure, and no other one says how much.
bool lacks_figure(Temperature minimum, const std::vector<PreheatMethod>& methods);

/// Asks the tables and the rules of the family, and lets the highest applicable minimum rule:
/// a method made for this metal and wall applies; one outside its composition range is information where a
/// row of the grade's own practice holds in every respect, else it counts at the edge of its range; a wall
/// outside the range always counts at its edge. A row for less hydrogen than there is, for a grade that the
/// certificate denies, or whose list ends before the wall, still counts as the least. Where no table lists
/// the grade, its practice ends before the wall, or the certificate denies it, the row for unknown metal
/// counts as well. Without an approved minimum the answer is never below one of these, nor below the
/// chill-off temperature. There is no figure at all while the metal is in doubt.
/// @param approved its figures rule; what it leaves open follows from the rest. May be null.
/// Throws Faulty (Origin::table) when the family's plugin breaks a rule.
Preheat preheat(const HeatCase& heat_case, const Approved* approved = nullptr);

} // namespace ringfill
