#pragma once

#include <vector>

#include <ringfill/survey/skim.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How the figures of a survey were reached (survey.*).
std::vector<Working> survey_working(const WornBore& bore, const Survey& survey);

/// How the figures of the skim and the build were reached (build.*, but for the extra stock, which the layers
/// make).
std::vector<Working> build_working(const WornBore& bore, const Survey& survey, const Build& build);

} // namespace ringfill
