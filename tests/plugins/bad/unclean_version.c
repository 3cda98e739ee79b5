/* A version that would disturb a terminal. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {
    (uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", "1\033[2J", TEXT(GOOD_TABLE), 0};
