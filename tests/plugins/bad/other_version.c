/* Built for another version of the interface only. */
#include "bad.h"

extern __attribute__((visibility("default"))) const int ringfill_material_v2;
const int ringfill_material_v2 = 2;
