/* Breaks no rule by itself: it is built twice, and both claim one family. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {
    (uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", "1", TEXT(GOOD_TABLE), 0};
