#pragma once

#include <string>
#include <vector>

#include <ringfill/table/cautions.hpp>

namespace ringfill {

// What is worked out from a plan's own figures is a rule in code (rules.hpp); what hangs on
// the site, the fuel, the current or the metals is a row of tables/cautions.json. A row names circumstances,
// a closed set (table/circumstance.hpp) that caution/judged.cpp answers with yes, no or unknown; what the
// job leaves open is unknown, never no. To add one, write the row and its pair of jobs in
// tests/caution/table_cautions_test.cpp: one where it applies and one, different in one field, where it does
// not. At most six rows may be always. The fire watch (fire_watch.hpp) follows the fire steps of the
// day: a new step with flame, arc or sparks must be marked so.

/// A part of the job that a caution concerns.
enum class Concern { procedure, bore };

struct Subject {
    Concern kind = Concern::bore;
    std::string name;

    bool operator==(const Subject&) const = default;
};

/// Whether a caution applies, or may because the job does not say.
enum class Applies { yes, unknown };

template <>
inline constexpr std::string_view enum_words<Applies>[] = {"yes", "unknown"};

/// Something that can go wrong or hurt, told before it does.
struct Caution {
    std::vector<Subject> about; ///< what it concerns; empty: the whole job
    When when = When::before;
    Matter matter = Matter::quality;
    Applies applies = Applies::yes;
    std::string text;                           ///< what to do
    std::string because;                        ///< the numbers that make it apply
    std::string source;                         ///< key of the bibliography
    std::string check = {};                     ///< when unknown: what to look for, in a few words
    std::string field = {};                     ///< when unknown: the field of the job that would settle it
    std::vector<std::string> more_sources = {}; ///< of the limits that the text names
};

/// The names of what a caution concerns, "fixed lug, moving lug", or "the job".
std::string names_of(const std::vector<Subject>& about);

} // namespace ringfill
