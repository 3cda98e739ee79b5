#include "advice.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>

#include <fmt/format.h>

#include "carbon_equivalent.hpp"

namespace ringfill::steel {
namespace {

constexpr double soak_min_per_mm = 2.0 / 25;

constexpr double wait_from_ce_pct = 0.40;
constexpr double wait_long_over_ce_pct = 0.60;

/// The higher of CE(IIW) and CEN, or nothing when the composition does not give them.
std::optional<double> highest_equivalent(const Asked& asked) {
    if (!why_not_usable(asked.base).empty())
        return std::nullopt;
    return settled(std::max(ce_of(asked), cen(asked.base)));
}

Advised wait(double hours, const std::string& why, const std::string& source) {
    Advised told;
    told.advice.push_back(
        {"crack_test",
         fmt::format("Wait {:.0f} h from cold before the crack test, because cracks by hydrogen "
                     "come late: {}.",
                     hours, why),
         source});
    told.values.push_back(
        {"crack_test_wait_s", hours * 3600, fmt::format("{:.0f}*3600", hours), {}, source, why});
    return told;
}

} // namespace

Advised soak(const Asked& asked) {
    std::string text =
        "Heat until the face away from the flame is at the preheat and stays there. Where only the "
        "heated face can be read, take the flame away and wait 2 min for every 25 mm (1 in) of wall "
        "before you read it";
    if (asked.wall_mm)
        text += fmt::format(", here {:.0f} min", std::ceil(settled(*asked.wall_mm * soak_min_per_mm)));
    return {{{"soak", text + ".", "ISO13916"}}, {}};
}

Advised crack_test(const Asked& asked) {
    const auto equivalent = highest_equivalent(asked);
    if (asked.yield_MPa && *asked.yield_MPa > high_yield_MPa)
        return wait(
            48,
            fmt::format("its yield strength of {:.4g} MPa is over {} MPa", *asked.yield_MPa, high_yield_MPa),
            "D10.10");
    if (!equivalent)
        return wait(48, why_not_usable(asked.base), "D10.10");
    if (*equivalent > wait_long_over_ce_pct)
        return wait(48,
                    fmt::format("its carbon equivalent of {} % is over {} %", show_pct(*equivalent),
                                show_pct(wait_long_over_ce_pct)),
                    "D10.10");
    if (*equivalent >= wait_from_ce_pct && !asked.yield_MPa)
        return wait(48, "its yield strength is not known", "D10.10");
    if (*equivalent >= wait_from_ce_pct)
        return wait(24,
                    fmt::format("its carbon equivalent of {} % is not under {} %", show_pct(*equivalent),
                                show_pct(wait_from_ce_pct)),
                    "practice");
    if (!asked.yield_MPa)
        return {
            {{"crack_test",
              fmt::format("If its yield strength, which is not known here, is over {} MPa, wait 48 h from "
                          "cold before the crack test.",
                          high_yield_MPa),
              "D10.10"}},
            {}};
    return {};
}

Advised advice(const Asked& asked) {
    Advised all;
    for (Advised part : {soak(asked), crack_test(asked)}) {
        std::move(part.advice.begin(), part.advice.end(), std::back_inserter(all.advice));
        std::move(part.values.begin(), part.values.end(), std::back_inserter(all.values));
    }
    return all;
}

} // namespace ringfill::steel
