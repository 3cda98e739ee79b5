#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/word_of.hpp>
#include <ringfill/table/circumstance.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// When a caution is to be minded.
enum class When { before, during, after };

template <>
inline constexpr std::string_view enum_words<When>[] = {"before", "during", "after"};

/// What a caution guards, what kills at once first.
enum class Matter { life, fire, burns_poison, cracking, quality, schedule };

/// One thing that makes a caution apply. A figure is compared with its limits: from ≤ figure < under, in the
/// unit of the circumstance's name.
struct Trigger {
    const Circumstance* circumstance = nullptr; ///< one of the closed set
    std::optional<Sourced<double>> from;
    std::optional<Sourced<double>> under;

    bool holds(double figure) const {
        return (!from || figure >= from->value) && (!under || figure < under->value);
    }
};

/// How much of something the air may hold, by one agency in one year.
struct ExposureLimit {
    std::string agency;
    std::string year;
    Sourced<double> mg_m3;
    std::string as; ///< mean, ceiling, which part of the dust
};

/// A caution of the table: any of its triggers makes it apply.
struct CautionRow {
    std::string name;
    When when = When::before;
    Matter matter = Matter::life; ///< of a row that does not say
    std::vector<Trigger> triggers;
    std::string check; ///< what to look for where the job does not say, in a few words
    std::string text;  ///< with measures in braces, {35 ft}, and {clear}, {watch}
    std::map<UnitSystem, std::string> told = {}; ///< the text with its measures told
    std::vector<ExposureLimit> limits;
    std::string source;
    std::string second_source = {}; ///< may be empty
};

/// How long the fire is watched after the last heat, by one document.
struct FireRule {
    std::string name;
    Sourced<Time> after;
    Sourced<Length> clear;                   ///< of what burns, round the work
    std::optional<Sourced<Time>> checks_for; ///< after that, looks from time to time
    std::optional<Sourced<Time>> checks_every;
};

struct CautionTable {
    std::vector<FireRule> fire_rules;
    std::vector<CautionRow> rows;
    Bibliography sources; ///< the common ones and the table's own
};

/// The job's word for the longest of all rule sets, which is taken where it names none.
inline constexpr std::string_view longest_fire_rule = "longest";

/// Reads cautions.json, file after file; a later file corrects or adds row by row. It cannot make a caution
/// for every job depend on something, nor shorten a rule set under the name of its document. Throws Faulty
/// (Origin::table), also for a caution that can never apply, one that would always apply and does not say so,
/// a circumstance that is not known, a measure in braces that is none, and for no rule of the fire watch.
CautionTable read_cautions(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
