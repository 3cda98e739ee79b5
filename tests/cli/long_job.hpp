#pragma once

#include <regex>
#include <string>

#include <fmt/format.h>

#include <ringfill/job/format.hpp>

namespace ringfill::testing {

/// The starter job under another title and with many bores.
/// @param has_boss without one their heat is not followed, which takes most of the time.
inline std::string long_job(const std::string& title, int bores, bool has_boss = true) {
    const std::string old_title = "Swing-arm pivots, gravel dredger 3";
    std::string text = starter_job(UnitSystem::metric);
    text.replace(text.find(old_title), old_title.size(), title);
    const std::size_t begin = text.find("\"bores\": [") + 10;
    const std::string starter_bore = text.substr(begin, text.find("\n  } ],", begin) + 4 - begin);
    std::string one = starter_bore;
    if (!has_boss)
        one = std::regex_replace(one, std::regex("\"boss_diameter\": [^,]*,"), "");
    std::string all;
    for (int i = 0; i < bores; ++i) {
        std::string bore = one;
        bore.replace(bore.find("arm root"), 8, fmt::format("bore {}", i));
        all += bore + ",";
    }
    return text.replace(begin, starter_bore.size(), all);
}

} // namespace ringfill::testing
