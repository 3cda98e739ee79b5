#pragma once

#include <string>

#include <fmt/format.h>

#include <ringfill/job/format.hpp>

namespace ringfill::testing {

/// The starter job under another title and with many bores.
inline std::string long_job(const std::string& title, int bores) {
    const std::string old_title = "Swing-arm pivots, gravel dredger 3";
    std::string text = starter_job(UnitSystem::metric);
    text.replace(text.find(old_title), old_title.size(), title);
    const std::size_t begin = text.find("\"bores\": [") + 10;
    const std::string one = text.substr(begin, text.find("\n  } ],", begin) + 4 - begin);
    std::string all;
    for (int i = 0; i < bores; ++i) {
        std::string bore = one;
        bore.replace(bore.find("arm root"), 8, fmt::format("bore {}", i));
        all += bore + ",";
    }
    return text.replace(begin, one.size(), all);
}

} // namespace ringfill::testing
