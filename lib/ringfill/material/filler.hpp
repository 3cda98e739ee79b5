#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/described.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

using Composition = std::vector<std::pair<std::string, Sourced<double>>>; ///< percent by mass, by element

/// One row of a table of least preheat: it holds for metal within all its limits.
struct PreheatRow {
    std::optional<Sourced<Length>> up_to;             ///< wall, the limit included
    std::optional<Sourced<double>> carbon_up_to_pct;  ///< likewise
    std::optional<Sourced<double>> tensile_up_to_MPa; ///< likewise
    Sourced<Temperature> minimum; ///< of a range the upper end, of two prints of one figure the higher
    std::optional<Temperature> range_from; ///< the lower end, where the minimum is the upper one of a range
    std::optional<double> printed_degC;    ///< the minimum as the document prints it
    std::optional<double> printed_degF;    ///< likewise
    std::optional<Sourced<Temperature>> maximum; ///< interpass
    std::optional<double> printed_maximum_degC;
    std::optional<double> printed_maximum_degF;
};

/// A table of least preheat, by a document or by practice: the first row that fits holds.
struct PreheatGroup {
    std::string name;
    std::optional<Sourced<double>> hydrogen_up_to; ///< ml/100 g the table was made for, the limit included
    std::optional<Sourced<double>> hydrogen_over;  ///< it is for more hydrogen than this
    std::vector<PreheatRow> rows;
    std::vector<std::string> fillers = {}; ///< family/name that it is for; empty: all
    std::string taken_from = {};           ///< the grade that these rows were written for; empty: its own
    std::optional<Sourced<EnergyPerLength>> heat_input_from = {}; ///< it was made for no less
    std::string document = {};         ///< that it stands in, as a job names it; empty: in none
    bool only_if_named = false;        ///< an older edition or an owner's: it rules where the job names it
    bool structural = false;           ///< a table for structural steel: it rules beside no formula
    bool in_place_of_practice = false; ///< with the fillers it is for it stands instead of the grade's own
};

/// What a filler comes as: wire drawn solid, wire that is a tube with powder in it, a covered electrode, or a
/// bare rod that is added by hand.
enum class FillerForm { solid, cored, stick, rod };

/// Whether it runs off a spool.
constexpr bool is_wire(FillerForm form) {
    return form == FillerForm::solid || form == FillerForm::cored;
}

/// How fast a wire melts: feed = a I + b l I², with the stick-out l.
struct MeltingCurve {
    Sourced<double> a; ///< [mm/(A s)]
    Sourced<double> b; ///< [1/(A² s)]
};

/// Settings at which a filler of one diameter welds well.
struct Window {
    std::optional<SourcedRange<Speed>> wire_feed;
    std::optional<SourcedRange<Current>> current;
    std::optional<SourcedRange<Voltage>> voltage;
    std::optional<SourcedRange<Speed>> travel;
    std::optional<Sourced<Current>> spray_from; ///< the least current that sprays, of the window for spray
};

/// One point of a table of wire feed and current.
struct FeedPoint {
    Sourced<Speed> feed;
    Sourced<Current> current;
};

/// One point of a table of current and metal laid.
struct RatePoint {
    Sourced<Current> current;
    Sourced<MassFlow> rate;
};

/// What is known of a filler of one diameter.
struct WireSize {
    std::string name; ///< the diameter as the table writes it, in mm
    Length diameter;
    std::optional<Sourced<LinearMass>> linear_mass; ///< of cored wire
    std::optional<MeltingCurve> melting;
    std::vector<FeedPoint> feed_table; ///< rising; instead of a melting curve
    Window window;                     ///< whatever the transfer
    /// By transfer; what they leave out is in the former.
    std::vector<std::pair<std::string, Window>> windows;

    // Of one electrode or rod.
    Sourced<Length> length;
    Sourced<Length> stub;              ///< thrown away
    std::optional<Sourced<Mass>> mass; ///< of the whole, with its covering; of a bare rod it may be left out
    std::optional<Sourced<double>> per_A;        ///< metal laid by current [kg/(s A)]
    std::vector<RatePoint> rates;                ///< rising; instead of the former
    std::optional<SourcedRange<MassFlow>> range; ///< of a rod added by hand
};

/// One thing to know of a filler or a base metal, in whole sentences.
struct Advice {
    /// Soak, slow_cooling, interpass, technique or post_heat; from a rule also crack_test.
    std::string kind;
    std::string text;
    std::string source;
};

/// A filler of a family.
struct Filler {
    std::string name;
    std::string standard;
    FillerForm form = FillerForm::solid;
    std::string process;                          ///< one of process_words
    std::string group;                            ///< that rules of what suits know it by; empty: none
    std::optional<Sourced<Density>> wire_density; ///< of solid wire, rod, or an electrode's core
    Sourced<Density> deposit_density;
    /// Deposited share of the wire or rod; of an electrode, of the core that melts [ISO 2401], or of core and
    /// covering that melt.
    Sourced<double> efficiency;
    bool efficiency_of_covered = false; ///< of core and covering
    bool iron_powder = false;           ///< in the covering, so that it may lay more than its core holds
    std::optional<SourcedRange<double>> efficiency_range;
    std::vector<std::pair<std::string, Sourced<double>>> efficiency_by_gas;
    std::vector<std::pair<std::string, Sourced<double>>> efficiency_by_transfer;
    Sourced<double> bead_ratio;     ///< bead width over crown
    Sourced<Length> stick_out;      ///< of a wire
    std::vector<std::string> gases; ///< it is used with, by EN ISO 14175 designation; empty: it needs none
    Composition composition;        ///< the limits of its standard
    Composition composition_min;    ///< the least that its standard prints
    Composition typical;            ///< of its undiluted metal, where it is known
    Composition deposit; ///< of its undiluted metal, the middle of what is laid; goes before typical
    /// Diffusible, the limit of its class; nothing: no class.
    std::optional<Sourced<double>> hydrogen_ml_100g;
    std::optional<PreheatGroup> practice;              ///< least preheat that its own metal asks for
    std::optional<Sourced<Temperature>> interpass_max; ///< that its own metal bears
    std::optional<Sourced<double>> hardness_HV;        ///< of its metal as welded, where that matters
    std::vector<Advice> advice;                        ///< on how it is laid and cools
    std::vector<WireSize> sizes;                       ///< rising in diameter

    bool cored() const { return form == FillerForm::cored; }
};

// How they stand in a family's table.
namespace metal_spans {
inline constexpr Span density{500, 25'000};
inline constexpr Span percent{0, 100};
inline constexpr Span strength{0, 5'000, true};
inline constexpr Span positive{0, 1e6, true};
inline constexpr Span hydrogen{0, 100, true};
inline constexpr Span degC{-60, 700};
} // namespace metal_spans
extern const Record preheat_group_record, advice_record, filler_size_record, filler_record;

/// A list of names that only a whole family knows: its reader judges them.
constexpr Field names_of_family(std::string_view name, std::size_t most, std::string_view sample) {
    return bare_field(name, list_of(Span{}, 1, most), sample).holds(Kind::text, Shape::list);
}

/// Reads what is known of a filler of one diameter, which is its name in mm; what its form asks for and does
/// not find, and what does not go with its form, is noted.
WireSize read_filler_size(const Entry& entry, FillerForm form);

/// Names the practice of a grade or a filler, which is a table of least preheat for it alone; one that names
/// fillers is noted.
void name_practice(std::optional<PreheatGroup>& practice, std::string name, const Entry& owner);

} // namespace ringfill
