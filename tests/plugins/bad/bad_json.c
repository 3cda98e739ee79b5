/* A table that is not JSON. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {(uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", "1",
                                                 TEXT("{ \"format\": ringfill }"),     0};
