#include "advice.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>

#include <fmt/format.h>

#include "carbon_equivalent.hpp"
#include "tempered.hpp"

namespace ringfill::steel {
namespace {

constexpr double soak_min_per_mm = 2.0 / 25;

constexpr double slow_from_carbon_pct = 0.30;
constexpr double slow_from_ce_pct = 0.60;
constexpr double slowest_K_per_h = 50;

constexpr double wait_from_ce_pct = 0.40;
constexpr double wait_long_over_ce_pct = 0.60;

/// The higher of CE(IIW) and CEN, or nothing when the composition does not give them.
std::optional<double> highest_equivalent(const Asked& asked) {
    if (!why_not_usable(asked.base).empty())
        return std::nullopt;
    return settled(std::max(ce_iiw(asked.base), cen(asked.base)));
}

/// Why metal must cool no faster than 50 K/h, or nothing.
std::string why_slow(const Composition& base) {
    if (base.pct("C") > slow_from_carbon_pct)
        return fmt::format("its C of {} % is over {} %", show_pct(base.pct("C")),
                           show_pct(slow_from_carbon_pct));
    if (std::string why = why_not_usable(base); !why.empty())
        return why;
    const double ce = settled(ce_iiw(base));
    return ce >= slow_from_ce_pct ? fmt::format("its CE(IIW) of {} % is not under {} %", show_pct(ce),
                                                show_pct(slow_from_ce_pct))
                                  : std::string();
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

Advised slow_cooling(const Asked& asked) {
    if (tempered_low(asked))
        return {{{"slow_cooling",
                  fmt::format("Let it cool in still air after the last ring, without a blanket: {}.",
                              why_tempered_low(asked)),
                  "practice"}},
                {}};
    const std::string cover = "Cover the part with a dry insulating blanket after the last ring and let it "
                              "cool out of the draught";
    const std::string why = why_slow(asked.base);
    if (why.empty())
        return {{{"slow_cooling", cover + ".", "practice"}}, {}};
    Advised told;
    told.advice.push_back({"slow_cooling",
                           fmt::format("{}, no faster than {} K/h: {}.", cover, slowest_K_per_h, why),
                           "practice"});
    told.values.push_back({"cooling_max_K_per_h", slowest_K_per_h, "", {}, "practice", why});
    return told;
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
    for (Advised part : {soak(asked), slow_cooling(asked), post_heat(asked), crack_test(asked)}) {
        std::move(part.advice.begin(), part.advice.end(), std::back_inserter(all.advice));
        std::move(part.values.begin(), part.values.end(), std::back_inserter(all.values));
    }
    return all;
}

} // namespace ringfill::steel
