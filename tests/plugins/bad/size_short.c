/* A struct shorter than the first release has it. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {40, RF_MINOR, "bad", "1", TEXT(GOOD_TABLE), 0};
