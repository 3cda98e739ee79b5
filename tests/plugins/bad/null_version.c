/* No version. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {
    (uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", 0, TEXT(GOOD_TABLE), 0};
