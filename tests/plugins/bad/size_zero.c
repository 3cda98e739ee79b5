/* A size of 0. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {0, RF_MINOR, "bad", "1", TEXT(GOOD_TABLE), 0};
