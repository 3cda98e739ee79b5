#pragma once

#include <ringfill/caution/caution.hpp>
#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/document/value.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// A caution of the result file; one that the job leaves open also has what to check and which field says it.
Value caution_object(const Caution& caution);

/// The fire watch of the result file, in seconds from the start of the first day; its periods are absent
/// without a day.
Value fire_watch_object(const FireWatch& watch);

/// The sources by their keys: title, edition, place, kind and how it is known.
Value sources_object(const Bibliography& sources);

} // namespace ringfill
