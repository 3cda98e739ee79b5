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
    std::optional<Temperature> minimum;          ///< exact
    std::optional<Temperature> counts;           ///< as it is compared and shown: as printed, or rounded up
    std::optional<Temperature> range_from;       ///< where a row gives a range, its lower end
    std::optional<Sourced<Temperature>> maximum; ///< interpass, where its document gives one
    bool applies = false;                        ///< it may rule; otherwise it is information
    bool rules = false;                          ///< it is the one that does
    bool in_range = true;
    bool is_formula = false;         ///< of the family's rules, rather than a row of a table
    bool second_opinion = false;     ///< told beside those that rule
    bool as_hot_as_it_bears = false; ///< it asks for more, and the plate bears no more
    std::string formula;             ///< of the minimum in °C; empty: looked up
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
    bool gave_way = false;  ///< such a maximum, higher than usual because the minimum asks for it
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
    std::optional<AskedTemperature> rings_most;    ///< what softens it, under the approved interpass maximum
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

/// What would let a bore be welded with less preheat.
enum class LoweredBy { certificate, drier_filler, more_heat_input };
template <>
inline constexpr std::string_view enum_words<LoweredBy>[] = {"certificate", "drier_filler",
                                                             "more_heat_input"};

struct Lowering {
    LoweredBy by;
    double kelvin; ///< by so much; of a certificate at most
    double
        figure; ///< with so much hydrogen [ml/100 g], or heat input [J/m]; of a certificate K for 0.01 % CET
};

/// What holds from the second layer on where the filler is of another kind than the steel under it.
struct LaterLayers {
    AskedTemperature minimum;
    AskedTemperature maximum;
};

/// No faster cooling than this, down to a temperature.
struct CoolingRate {
    double K_per_h;
    Temperature down_to;
    std::string why; ///< the end of a sentence
    std::string source;
};

/// What is known of the preheat of a bore. Every view and every list of what to take goes by it.
enum class PreheatState {
    figure,                ///< a minimum
    none,                  ///< dry and hand-warm is enough: the minimum is the chill-off temperature
    needed_without_figure, ///< a method asks for preheat, and none says how much
    not_known,             ///< the metal must be identified first, or no method covers it
    contradictory, ///< no ring could begin between minimum and maximum, or an approved figure harms it
};
template <>
inline constexpr std::string_view enum_words<PreheatState>[] = {"figure", "none", "needed_without_figure",
                                                                "not_known", "contradictory"};

/// The temperature at which a part is dry and hand-warm, and to which a cold one is brought before any weld
/// [AWS D1.1, note to the preheat table: 70 °F (20 °C) below 32 °F; from memory, taken for all].
inline const Temperature chill_off = in_si<Temperature>(293.15);

/// How hot a bore must be and may get (section 10 of the computation).
struct Preheat {
    PreheatState state = PreheatState::not_known;
    PreheatState asked = PreheatState::not_known; ///< the state but for what is contradictory
    std::optional<std::string> doubt;        ///< why the metal cannot be what the job calls it: not_known
    std::optional<AskedTemperature> minimum; ///< what no ring begins under, whatever the state; see figure()
    std::optional<AskedTemperature> interpass_max;
    std::string approved;            ///< reference of the approved procedure; empty: none
    bool approved_confirmed = false; ///< its author has confirmed what would be stopped
    std::string welding_rules;       ///< the document that the job works by; empty: it names none
    bool unlisted_rules = false;     ///< that document does not name the metal, and does not rule
    bool no_figure = false;          ///< the family says that no figure holds, whatever a table has
    bool closed = false;             ///< between its minimum and its maximum no ring could begin
    bool narrow = false;             ///< it is open, but under 25 K
    std::vector<PreheatMethod> methods;
    std::vector<Lowering> lowered_by;
    std::optional<LaterLayers> later;
    std::optional<CoolingRate> slow_cooling;
    std::vector<HeatTreatment> heat_treatment; ///< after welding, by document and edition
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

/// A second opinion within its own range that asks for this much more than what rules is a caution [K]; the
/// lower figure over a wall of 25 mm [own choice].
inline constexpr double much_more_K = 50;
inline constexpr double much_more_thick_K = 25;

/// A window between minimum and maximum under this is closed: no ring could begin; one under the other is
/// told [K; own choice].
inline constexpr double least_window_K = 15;
inline constexpr double narrow_window_K = 25;

/// Asks the tables and the rules of the family and lets the highest that applies rule, see
/// preheat_methods.hpp. Never below the chill-off temperature without an approved minimum. There is no figure
/// at all while the metal is in doubt.
/// @param approved its figures rule; what it leaves open follows from the rest. May be null.
/// Throws Faulty (Origin::table) when the family's plugin breaks a rule.
Preheat preheat(const HeatCase& heat_case, const Approved* approved = nullptr);

} // namespace ringfill
