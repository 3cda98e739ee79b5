#pragma once

#include <cstddef>
#include <string_view>

namespace ringfill {

/// The words of an enumeration in its order: it is printed by them, and they are the choices of a schema.
template <class Enumeration>
inline constexpr std::string_view enum_words[] = {""};

template <class Enumeration>
constexpr std::string_view word_of(Enumeration value) {
    return enum_words<Enumeration>[static_cast<std::size_t>(value)];
}

} // namespace ringfill
