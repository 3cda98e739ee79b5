# Writes the C source of what a plugin exports: NAME, VERSION, the bytes of TABLE, and the rule ANSWER if it is named.
file(READ ${TABLE} bytes HEX)
if(bytes STREQUAL "")
  message(FATAL_ERROR "The table ${TABLE} is empty")
endif()
string(REGEX REPLACE "(..)" "0x\\1," bytes "${bytes}")
string(REGEX REPLACE "([^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n][^\n])"
  "\\1\n" bytes "${bytes}")
if(ANSWER)
  set(declaration "extern rf_status ${ANSWER}(const rf_sink *sink, const rf_question *question);\n\n")
else()
  set(ANSWER "0")
  set(declaration "")
endif()
file(WRITE ${OUTPUT}
  "/* Made by embed_table.cmake. */\n"
  "#include <ringfill/material/abi.h>\n\n"
  "static const unsigned char table[] = {\n${bytes}};\n\n"
  "${declaration}"
  "extern __attribute__((visibility(\"default\"))) const rf_material_plugin ringfill_material_v1;\n"
  "const rf_material_plugin ringfill_material_v1 = {\n"
  "    (uint32_t)sizeof(rf_material_plugin), RF_MINOR, \"${NAME}\", \"${VERSION}\",\n"
  "    {(const char *)table, sizeof table}, ${ANSWER}};\n")
