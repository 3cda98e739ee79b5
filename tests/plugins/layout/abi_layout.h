/* The static asserts that both languages share. */
#ifndef RINGFILL_ABI_LAYOUT_H
#define RINGFILL_ABI_LAYOUT_H

#include <ringfill/material/abi.h>

#define SIZE(type, bytes) static_assert(sizeof(type) == (bytes), "size of " #type)
#define AT(type, field, bytes) static_assert(offsetof(type, field) == (bytes), #type "." #field)

SIZE(rf_text, 16);
AT(rf_text, data, 0);
AT(rf_text, size, 8);

SIZE(rf_number, 24);
AT(rf_number, name, 0);
AT(rf_number, value, 16);

SIZE(rf_input, 40);
AT(rf_input, symbol, 0);
AT(rf_input, value, 16);
AT(rf_input, unit, 24);

SIZE(rf_figure, 96);
AT(rf_figure, size, 0);
AT(rf_figure, flags, 4);
AT(rf_figure, name, 8);
AT(rf_figure, number, 24);
AT(rf_figure, formula, 32);
AT(rf_figure, inputs, 48);
AT(rf_figure, input_count, 56);
AT(rf_figure, source, 64);
AT(rf_figure, note, 80);

SIZE(rf_sink, 48);
AT(rf_sink, size, 0);
AT(rf_sink, reserved, 4);
AT(rf_sink, context, 8);
AT(rf_sink, value, 16);
AT(rf_sink, method, 24);
AT(rf_sink, advice, 32);
AT(rf_sink, fault, 40);

SIZE(rf_question, 72);
AT(rf_question, size, 0);
AT(rf_question, reserved, 4);
AT(rf_question, topic, 8);
AT(rf_question, grade, 24);
AT(rf_question, filler, 40);
AT(rf_question, numbers, 56);
AT(rf_question, number_count, 64);

SIZE(rf_material_plugin, 48);
AT(rf_material_plugin, size, 0);
AT(rf_material_plugin, minor, 4);
AT(rf_material_plugin, family, 8);
AT(rf_material_plugin, version, 16);
AT(rf_material_plugin, table, 24);
AT(rf_material_plugin, answer, 40);

SIZE(rf_status, 4);
static_assert(RF_DONE == 0 && RF_REFUSED == 1 && RF_UNSUPPORTED == 2, "statuses");
static_assert(RF_OUT_OF_COMPOSITION == 1 && RF_OUT_OF_THICKNESS == 2 && RF_AT_EDGE == 4 &&
                  RF_NONE_NEEDED == 8 && RF_NO_FIGURE == 16 && RF_SECOND_OPINION == 32 && RF_NOT_USABLE == 64,
              "flags");

#endif
