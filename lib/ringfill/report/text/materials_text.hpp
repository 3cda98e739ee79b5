#pragma once

#include <string>

#include <ringfill/material/registry.hpp>

namespace ringfill {

/// The families that stand ready: where each comes from, its base metals and fillers.
std::string families_text(const Registry& registry);

/// One family: its description, and each base metal and filler with its standard.
std::string family_text(const Family& family);

/// One base metal or filler: every value with its source and how it is known.
std::string base_text(const Family& family, const Base& base);
std::string filler_text(const Family& family, const Filler& filler);

} // namespace ringfill
