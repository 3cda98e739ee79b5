# Installs BUILD into FOLDER, builds the project of SOURCE against it, and runs the installed program on its families.
# Arguments: BUILD, SOURCE, ROOT, FOLDER, GENERATOR, CXX, C.
set(prefix ${FOLDER}/installed)
set(built ${FOLDER}/consumer)
file(REMOVE_RECURSE ${FOLDER})

function(run)
  execute_process(COMMAND ${ARGN} RESULT_VARIABLE status OUTPUT_VARIABLE out ERROR_VARIABLE out)
  if(NOT status EQUAL 0)
    list(JOIN ARGN " " command)
    message(FATAL_ERROR "${command}\nends with ${status}:\n${out}")
  endif()
  set(out "${out}" PARENT_SCOPE)
endfunction()

function(expect text)
  string(FIND "${out}" "${text}" place)
  if(place EQUAL -1)
    message(FATAL_ERROR "\"${text}\" is not in:\n${out}")
  endif()
endfunction()

# A plan in JSON of the job with its filler and base metal; more arguments go to the program.
function(plan filler base)
  file(READ ${SOURCE}/job.json job)
  string(REPLACE FILLER ${filler} job "${job}")
  string(REPLACE BASE ${base} job "${job}")
  file(WRITE ${FOLDER}/job.json "${job}")
  run(${prefix}/bin/ringfill take --json ${ARGN} ${FOLDER}/job.json)
  set(out "${out}" PARENT_SCOPE)
endfunction()

# The page of the README that plans with the library: no more than 15 lines of it.
file(READ ${ROOT}/README.md page)
string(FIND "${page}" "```cpp\n" begin)
math(EXPR begin "${begin} + 7")
string(SUBSTRING "${page}" ${begin} -1 page)
string(FIND "${page}" "```" end)
string(SUBSTRING "${page}" 0 ${end} page)
file(WRITE ${FOLDER}/page.cpp "${page}")
string(REGEX REPLACE "\n\n+" "\n" lines "${page}")
string(REGEX REPLACE "[^\n]" "" lines "${lines}")
string(LENGTH "${lines}" count)
if(count LESS 10 OR count GREATER 15)
  message(FATAL_ERROR "the README has a page of C++ of ${count} lines, not of 15:\n${page}")
endif()

run(${CMAKE_COMMAND} --install ${BUILD} --prefix ${prefix})
# What is installed knows nothing of the folder it was built in.
file(STRINGS ${prefix}/bin/ringfill told REGEX "${BUILD}/plugins|${ROOT}/tables")
if(told)
  message(FATAL_ERROR "the installed program looks into the build: ${told}")
endif()
foreach(file bin/ringfill share/man/man1/ringfill.1 share/man/man5/ringfill-job.5 share/bash-completion/completions/ringfill
    share/ringfill/ringfill-job.schema.json share/ringfill/ringfill-plan.schema.json share/ringfill/tables/packs.json share/doc/ringfill/copyright
    share/doc/ringfill/examples/dredger-pivots.json include/ringfill/ringfill.hpp include/ringfill/material/abi.h include/ringfill/version.hpp
    include/ringfill-plugin/support/sink.hpp)
  if(NOT EXISTS ${prefix}/${file})
    message(FATAL_ERROR "${file} is not installed")
  endif()
endforeach()
# Of the headers only the public door, what it includes and the interface of plugins: no stage of a plan, no report.
file(GLOB rooms RELATIVE ${prefix}/include/ringfill ${prefix}/include/ringfill/*/)
if(NOT rooms STREQUAL "document;fault;heat;job;material;ringfill.hpp;table;units;version.hpp")
  message(FATAL_ERROR "the installed headers are of ${rooms}")
endif()
run(${CMAKE_COMMAND} -G ${GENERATOR} -S ${SOURCE} -B ${built} -D CMAKE_PREFIX_PATH=${prefix} -D CMAKE_BUILD_TYPE=Release
  -D CMAKE_CXX_COMPILER=${CXX} -D CMAKE_C_COMPILER=${C} -D PAGE=${FOLDER}/page.cpp)
run(${CMAKE_COMMAND} --build ${built})
run(${built}/linked)
expect("90.4 mm")

# The page plans the sample as the program does, built with CMake and with pkg-config.
set(sample ${prefix}/share/doc/ringfill/examples/dredger-pivots.json)
run(${prefix}/bin/ringfill take ${sample})
string(REGEX MATCH "[0-9.]+ kg of wire · [^\n]*of arc" figures "${out}")
if(NOT figures)
  message(FATAL_ERROR "the program tells no wire and arc:\n${out}")
endif()
file(STRINGS ${built}/folders folders)
string(REGEX REPLACE "\n+$" "" taken "${out}")
run(${built}/page ${sample} ${folders})
expect("${taken}\n")
expect("\"format\": \"ringfill-plan/1\"")
file(GLOB pc ${prefix}/lib*/pkgconfig ${prefix}/lib/*/pkgconfig)
set(ENV{PKG_CONFIG_PATH} ${pc})
run(sh -c "exec \"$0\" -std=c++20 -o \"$1/page\" \"$1/page.cpp\" $(pkg-config --cflags --libs ringfill)" ${CXX} ${FOLDER})
run(sh -c "exec \"$0/page\" \"$1\" \"$(pkg-config --variable=tables ringfill)\" \"$(pkg-config --variable=plugins ringfill)\"" ${FOLDER} ${sample})
expect("${taken}\n")

# Its own families stand beside the installed program, and the tables are the installed ones: one laid there is known.
file(COPY ${SOURCE}/tables/families/jetty.json DESTINATION ${prefix}/share/ringfill/tables/families)
run(${prefix}/bin/ringfill materials)
expect("/installed/lib/ringfill")
expect("jetty")
file(REMOVE ${prefix}/share/ringfill/tables/families/jetty.json)

run(${prefix}/bin/ringfill materials --check ${built}/plugins/quarry.family)
run(${prefix}/bin/ringfill materials --check ${built}/plugins/pontoon.family)

# A family with a rule: the rule rules, its own suits are known, its electrodes are counted.
plan(quarry/E-Q7 quarry/Q7 --plugins ${built}/plugins)
string(JSON minimum GET "${out}" bores 0 heat preheat_min_degC)
string(JSON verdict GET "${out}" bores 0 suits verdict)
string(JSON pieces GET "${out}" bores 0 metal pieces)
string(JSON laid GET "${out}" bores 0 metal laid_kg)
if(NOT minimum EQUAL 190 OR NOT verdict STREQUAL "recommended" OR NOT pieces GREATER 10)
  message(FATAL_ERROR "the quarry rule gave ${minimum} degC, ${verdict}, ${pieces} electrodes for ${laid} kg")
endif()

# A family that is a table alone, as a plugin; nobody has said whether the filler suits.
plan(quarry/E-Q7 pontoon/P1 --plugins ${built}/plugins)
string(JSON minimum GET "${out}" bores 0 heat preheat_min_degC)
if(NOT minimum EQUAL 120)
  message(FATAL_ERROR "the pontoon table gave ${minimum} degC")
endif()
expect("no table says")

# A family without a library and a new filler, both from a folder of tables: no compiler.
plan(steel/E-ours jetty/J3 --tables ${SOURCE}/tables)
string(JSON minimum GET "${out}" bores 0 heat preheat_min_degC)
string(JSON verdict GET "${out}" bores 0 suits verdict)
if(NOT minimum EQUAL 110 OR NOT verdict STREQUAL "recommended")
  message(FATAL_ERROR "the user's tables gave ${minimum} degC and ${verdict}")
endif()
