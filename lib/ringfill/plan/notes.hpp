#pragma once

#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// What is out of the usual in one bore's plan, in sentences.
std::vector<std::string> bore_notes(const WornBore& bore, const BorePlan& planned, UnitSystem units);

/// Bores of one line share a set-up of the bar.
std::vector<std::string> line_notes(const Job& job);

} // namespace ringfill
