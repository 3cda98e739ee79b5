#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// A field that the job leaves open, and the cautions that hang on it, one for each thing to look for.
struct OpenField {
    std::string field;
    std::vector<const Caution*> cautions;
};
std::vector<OpenField> open_fields(const std::vector<Caution>& cautions);

/// The keys of the sources of a caution, each in brackets.
std::string source_keys(const Caution& caution);

/// What the job leaves open, a sentence for each of its fields.
std::vector<std::string> not_stated(const std::vector<Caution>& cautions);

/// What stands where no day is laid out, and what follows the hours of the watch.
inline constexpr std::string_view no_watch_by_the_clock =
    "By the clock: not known, because no day is laid out; the notes say why.";
inline constexpr std::string_view watch_moves_with_the_heat =
    "in all. Drying, burning off grease, and any grinding or trimming with sparks start the minutes anew: "
    "count from the last heat as it was. The boss may be hot long after the watch.";

/// Who watches, until how long after the last heat, and by which rule: what stands before the time and after
/// it.
std::pair<std::string_view, std::string> who_watches(const FireWatch& watch);

/// The fire watch in sentences: who, until when, by which rule, and from when to when by the clock.
Sentences fire_watch_sentences(const Plan& plan);

} // namespace ringfill
