#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>

namespace ringfill::testing {

/// A caution on one line, every part of it.
inline std::string told(const Caution& caution) {
    return names_of(caution.about) + " | " + std::string(name_of(caution.when)) + " | " +
           std::string(name_of(caution.applies)) + " | " + caution.text + " | " + caution.because + " | " +
           caution.source;
}

inline std::vector<std::string> told(const std::vector<Caution>& cautions) {
    std::vector<std::string> lines;
    for (const Caution& caution : cautions)
        lines.push_back(told(caution));
    return lines;
}

using Lines = std::vector<std::string>;

} // namespace ringfill::testing
