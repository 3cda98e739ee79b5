#pragma once

#include <string>

#include <ringfill/material/answer.hpp>

namespace ringfill {

/// An answer as a text that is the same for two answers only when they are, to the last bit of every number.
std::string to_the_bit(const FamilyAnswer& answer);

} // namespace ringfill
