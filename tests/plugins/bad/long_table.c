/* A table larger than any may be; it is refused before it is read. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {(uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", "1",
                                                 {GOOD_TABLE, RF_TABLE_LONGEST + 1},   0};
