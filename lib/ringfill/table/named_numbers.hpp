#pragma once

#include <string_view>
#include <vector>

namespace ringfill {

/// A number in a name, and the word right behind it: 150 and "°C" of "150 °C stick". The word ends at a blank
/// or a sign such as a bracket; a degree sign belongs to it.
struct NamedNumber {
    double number = 0;
    std::string_view word;
};

/// The numbers of a name, in their order. Digits that stand in a word, as in ER70S, are none.
std::vector<NamedNumber> numbers_in(std::string_view name);

} // namespace ringfill
