#pragma once

#include <string>
#include <string_view>
#include <variant>

#include <catch2/catch.hpp>

#include <ringfill/units/measure.hpp>

namespace ringfill::testing {

/// The value a text measures; a refusal fails the test.
inline double si_of(std::string_view text, Kind kind) {
    const auto result = measure(text, kind);
    if (const auto* fault = std::get_if<NotMeasured>(&result))
        FAIL(text << ' ' << fault->reason << "; " << fault->remedy);
    return std::get<double>(result);
}

/// Why a text is refused and what to write instead, or "accepted".
inline std::string refused(std::string_view text, Kind kind) {
    const auto result = measure(text, kind);
    const auto* fault = std::get_if<NotMeasured>(&result);
    return fault ? fault->reason + "; " + fault->remedy : "accepted";
}

} // namespace ringfill::testing
