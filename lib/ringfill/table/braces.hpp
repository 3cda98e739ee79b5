#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/units/show.hpp>

namespace ringfill {

/// Words that may stand in braces in a caution beside measures; whoever tells the caution fills them in.
inline constexpr std::string_view words_in_braces[] = {"clear", "watch"};

/// The first text in braces that is neither a length, a temperature, a mass, a speed, a flow nor one of
/// words_in_braces; nothing when all are. A brace without its partner counts too.
std::optional<std::string> wrong_brace(std::string_view text);

/// A text with its measures told in the units of a job: {35 ft} rounded up, {at most 35 ft} rounded down. Its
/// words stay in their braces.
std::string with_measures(std::string_view text, UnitSystem units);

/// A text with what stands in its braces replaced by what `word` says.
std::string with_words(std::string_view text, const std::function<std::string(std::string_view)>& word);

/// A length to be kept away, rounded up: 10.7 m, 36 ft; under a metre 305 mm, 12 in.
std::string show_clear(Length length, UnitSystem units);

} // namespace ringfill
