#pragma once

#include <string_view>

#include <ringfill/material/family.hpp>

namespace ringfill {

/// Why metal of this structure is not heated for what is laid on it, as the end of a sentence: its own
/// practice alone says how hot it is welded. Empty for ferritic and martensitic steel, which bear the heat.
std::string_view why_not_for_filler(std::string_view structure);

/// Whether metal must not be kept hot once it is welded: austenitic, nickel and copper metal, and steel that
/// softens under 250 °C, or was tempered under 250 °C, as the rules of steel have it [common practice, no
/// source].
bool cools_in_the_open(const Base& base);

} // namespace ringfill
