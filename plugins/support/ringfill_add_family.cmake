# ringfill_add_family(NAME TABLE FILE [SOURCES FILE...] [VERSION TEXT])
#
# Adds the target NAME_family, which builds the plugin NAME.family for the material family NAME in the folder
# plugins/ of the build. TABLE is the family's table; it is embedded when the plugin is built, and built anew when it
# changes. With SOURCES (C or C++) one of them defines the rule:
#
#   extern "C" rf_status NAME_answer(const rf_sink*, const rf_question*) noexcept;
#
# Without, the table says it all. VERSION is told to people; left out, it is the project's.
include_guard(GLOBAL)

# Such a flag changes the arithmetic of the whole program when the plugin is loaded, so it would be refused.
function(ringfill_refuse_fast_math name)
  get_directory_property(options COMPILE_OPTIONS)
  get_cmake_property(variables VARIABLES)
  list(FILTER variables INCLUDE REGEX "^CMAKE_(C|CXX)_FLAGS(_[A-Z]+)?$")
  foreach(variable IN LISTS variables)
    list(APPEND options ${${variable}})
  endforeach()
  if(options MATCHES "-(ffast-math|Ofast|funsafe-math-optimizations)")
    message(FATAL_ERROR "The family ${name} would be built with -${CMAKE_MATCH_1}, which changes the floating-point "
      "mode of the program that loads it; take that flag out.")
  endif()
endfunction()

function(ringfill_add_family name)
  cmake_parse_arguments(PARSE_ARGV 1 family "" "TABLE;VERSION" "SOURCES")
  if(family_UNPARSED_ARGUMENTS)
    message(FATAL_ERROR "ringfill_add_family(${name}) does not take: ${family_UNPARSED_ARGUMENTS}")
  endif()
  if(NOT name MATCHES "^[a-z][a-z0-9_]*$")
    message(FATAL_ERROR "The family name \"${name}\" is not a lower-case letter and then letters, digits and _")
  endif()
  if(NOT family_TABLE)
    message(FATAL_ERROR "ringfill_add_family(${name}) needs its TABLE")
  endif()
  if(NOT family_VERSION)
    set(family_VERSION "${PROJECT_VERSION}")
  endif()
  if(NOT family_VERSION)
    message(FATAL_ERROR "ringfill_add_family(${name}) needs a VERSION, as the project has none")
  endif()
  if(family_VERSION MATCHES "[\"\\;]")
    message(FATAL_ERROR "The VERSION of ringfill_add_family(${name}) holds a quote, a backslash or a semicolon")
  endif()
  ringfill_refuse_fast_math(${name})
  cmake_path(ABSOLUTE_PATH family_TABLE)

  set(generated ${CMAKE_CURRENT_BINARY_DIR}/${name}_family.c)
  if(family_SOURCES)
    set(answer ${name}_answer)
  else()
    set(answer "")
  endif()
  add_custom_command(OUTPUT ${generated}
    COMMAND ${CMAKE_COMMAND} -D NAME=${name} -D VERSION=${family_VERSION} -D TABLE=${family_TABLE} -D ANSWER=${answer}
      -D OUTPUT=${generated} -P ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/embed_table.cmake
    DEPENDS ${family_TABLE} ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/embed_table.cmake
    COMMENT "Embedding the table of ${name}" VERBATIM)

  add_library(${name}_family MODULE ${generated} ${family_SOURCES})
  set_property(GLOBAL APPEND PROPERTY ringfill_families ${name}_family)
  target_link_libraries(${name}_family PRIVATE ringfill::plugin_interface)
  if(TARGET ringfill_light_options)
    target_link_libraries(${name}_family PRIVATE ringfill_light_options)
  endif()
  set_target_properties(${name}_family PROPERTIES
    OUTPUT_NAME ${name} PREFIX "" SUFFIX ".family" LIBRARY_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/plugins
    C_STANDARD 11 C_STANDARD_REQUIRED ON CXX_STANDARD 20 CXX_STANDARD_REQUIRED ON CXX_EXTENSIONS OFF
    C_VISIBILITY_PRESET hidden CXX_VISIBILITY_PRESET hidden VISIBILITY_INLINES_HIDDEN ON
    LINK_DEPENDS ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/family.map)
  if(RINGFILL_UNITY AND TARGET ringfill_light_options) # our own tree alone: a stranger's sources need not bear it
    set_target_properties(${name}_family PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 0)
  endif()
  target_link_options(${name}_family PRIVATE
    -Wl,--version-script=${CMAKE_CURRENT_FUNCTION_LIST_DIR}/family.map -Wl,-z,nodelete -Wl,-z,now)
  # clang leaves the symbols of its sanitizers to the program.
  if(NOT (RINGFILL_SANITIZE AND CMAKE_CXX_COMPILER_ID MATCHES "Clang"))
    target_link_options(${name}_family PRIVATE -Wl,-z,defs)
  endif()
endfunction()
