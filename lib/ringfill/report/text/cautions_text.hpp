#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/style.hpp>

namespace ringfill {

/// What can hurt on the job: the fire watch by the clock, the cautions with their sources, and how each
/// source is known.
std::string cautions_text(const Plan& plan, const Style& style);

/// What stands where no day is laid out, and what follows the hours of the watch.
std::string_view no_watch_by_the_clock();
std::string_view watch_moves_with_the_heat();

/// The fire watch in sentences: who, until when, by which rule, and from when to when by the clock.
std::vector<std::string> fire_watch_sentences(const Plan& plan);

} // namespace ringfill
