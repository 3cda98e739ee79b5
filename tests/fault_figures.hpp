#pragma once

#include <cctype>
#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>

namespace ringfill::testing {

/// A fault without its wording, which stands in one test alone (of a job's file in tests/bad/): its place,
/// what stands there, and every number of its sentence in turn.
inline std::string in_figures(const Fault& fault) {
    const auto is_digit = [](char sign) { return std::isdigit(static_cast<unsigned char>(sign)) != 0; };
    std::string text = to_string(fault.place) + ":" + (fault.value.empty() ? "" : " " + fault.value);
    char before = ' ';
    for (const char sign : fault.reason + " " + fault.remedy + " ") {
        const bool is_point = sign == '.' && is_digit(before);
        if (is_digit(sign) || is_point)
            text += (is_digit(before) || before == '.' ? "" : " ") + std::string(1, sign);
        before = is_digit(sign) || is_point ? sign : ' ';
    }
    return text;
}

/// A line each.
inline std::vector<std::string> in_figures(const std::vector<Fault>& faults) {
    std::vector<std::string> lines;
    for (const Fault& fault : faults)
        lines.push_back(in_figures(fault));
    return lines;
}

} // namespace ringfill::testing
