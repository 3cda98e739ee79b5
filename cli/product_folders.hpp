#pragma once

namespace ringfill::cli {

// Where the product lies; the only part in which the program that is installed and the one of a build differ.
extern const char* const built_tables;         ///< the folder it was built from; empty: it is installed
extern const char* const built_plugins;        ///< likewise
extern const char* const plugins_under_prefix; ///< where an installation has them
extern const char* const parts_under_prefix;   ///< likewise

} // namespace ringfill::cli
