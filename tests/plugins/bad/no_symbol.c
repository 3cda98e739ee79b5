/* A shared library that is no plugin. */
#include "bad.h"

extern __attribute__((visibility("default"))) const int something_else;
const int something_else = 1;
