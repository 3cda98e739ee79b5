// The same layout as C++ sees it, and what C++ adds: a function that may throw does not fit the interface.
#include <cassert>
#include <cstddef>
#include <type_traits>

#include "abi_layout.h"

using MayThrow = rf_status (*)(const rf_sink*, const rf_question*);
using Promises = rf_status (*)(const rf_sink*, const rf_question*) noexcept;
static_assert(!std::is_convertible_v<MayThrow, rf_answer>, "a function that may throw fits rf_answer");
static_assert(std::is_convertible_v<Promises, rf_answer>,
              "a function that promises not to throw does not fit");

using SinkMayThrow = void (*)(void*, const rf_figure*);
static_assert(!std::is_convertible_v<SinkMayThrow, decltype(rf_sink::method)>);
static_assert(!std::is_convertible_v<SinkMayThrow, decltype(rf_sink::value)>);

static_assert(std::is_trivially_copyable_v<rf_material_plugin> &&
              std::is_standard_layout_v<rf_material_plugin>);
static_assert(std::is_trivially_copyable_v<rf_figure> && std::is_standard_layout_v<rf_figure>);
