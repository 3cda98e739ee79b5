/* A table in another encoding. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {(uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", "1",
                                                 TEXT("{ \"a\": \"\xfc\" }"),          0};
