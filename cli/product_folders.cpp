#include "product_folders.hpp"

namespace ringfill::cli {

const char* const built_tables = RINGFILL_TABLES;
const char* const built_plugins = RINGFILL_PLUGIN_FOLDER;
const char* const plugins_under_prefix = RINGFILL_PLUGINS_UNDER_PREFIX;
const char* const parts_under_prefix = RINGFILL_PARTS_UNDER_PREFIX;

} // namespace ringfill::cli
