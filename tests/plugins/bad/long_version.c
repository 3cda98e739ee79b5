/* A version of 41 bytes. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {
    (uint32_t)sizeof(rf_material_plugin),        RF_MINOR,         "bad",
    "01234567890123456789012345678901234567890", TEXT(GOOD_TABLE), 0};
