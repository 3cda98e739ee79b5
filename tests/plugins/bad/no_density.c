/* Its table is JSON, but its metal has no density. */
#include "bad.h"

#define LIGHT_TABLE                                                                                          \
    "{ \"format\": \"ringfill-family/1\", \"family\": \"bad\", \"description\": \"d\","                      \
    " \"bases\": { \"B1\": { \"standard\": \"s\", \"structure\": \"ferritic\" } } }"

const rf_material_plugin ringfill_material_v1 = {
    (uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", "1", TEXT(LIGHT_TABLE), 0};
