/* Needs a function that nobody has. */
#include "bad.h"

extern rf_status nowhere_answer(const rf_sink* sink, const rf_question* question);

PLUGIN_WITH(nowhere_answer);
