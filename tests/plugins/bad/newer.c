/* Breaks no rule: built for a newer minor version, with a field that this program does not know. */
#include <ringfill/material/abi.h>

#define TEXT(words)                                                                                          \
    { words, sizeof(words) - 1 }

typedef struct newer_plugin {
    rf_material_plugin known;
    uint64_t added;
} newer_plugin;

extern __attribute__((visibility("default"))) const newer_plugin ringfill_material_v1;
const newer_plugin ringfill_material_v1 = {
    {(uint32_t)sizeof(newer_plugin), RF_MINOR + 7, "bad", "9", TEXT("{}"), 0}, UINT64_MAX};
