/* A family name of 41 letters. */
#include "bad.h"

const rf_material_plugin ringfill_material_v1 = {(uint32_t)sizeof(rf_material_plugin),
                                                 RF_MINOR,
                                                 "abcdefghijklmnopqrstuvwxyzabcdefghijklmno",
                                                 "1",
                                                 TEXT(GOOD_TABLE),
                                                 0};
