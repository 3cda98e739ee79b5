/* A family name that could not stand in a job. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {
    (uint32_t)sizeof(rf_material_plugin), RF_MINOR, "Bad-1", "1", TEXT(GOOD_TABLE), 0};
