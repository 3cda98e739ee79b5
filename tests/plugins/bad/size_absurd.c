/* A size that no struct of ours can have. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {4000000000u, RF_MINOR, "bad", "1", TEXT(GOOD_TABLE), 0};
