#pragma once

#include <ringfill/material/answer.hpp>
#include <ringfill/material/plugin_file.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// Asks a plugin and checks what it says: finite numbers in range, known names, sources of the bibliography,
/// clean text. A plugin without a rule, or without one for this question, gives an answer that is not
/// supported. Throws Faulty (Origin::table), one fault that names file, topic, grade and what is wrong.
FamilyAnswer ask(const Plugin& plugin, const Question& question, const Bibliography& sources);

} // namespace ringfill
