#include <fmt/format.h>

#include <ringfill/take/group.hpp>
#include <ringfill/take/needs.hpp>

namespace ringfill {
namespace {

/// A stick whose rating is a figure of the other scale may differ from it in the last digit, K.
constexpr double same_rating = 1e-6;

Need instrument(NeedKind kind, NeedSize size, double count, std::string why, std::string source) {
    return by_the_piece(need_of(kind, {}, size, {{"count", count, "pieces"}}, {1, "min(count, 1)"},
                                {count - 1, "count - need"}, std::move(why), std::move(source)));
}

/// What one stick is for, bore by bore.
struct StickReason {
    const Stick* stick = nullptr;
    std::string why;
};

void add_reason(std::vector<StickReason>& reasons, const Stick* stick, const std::string& why) {
    StickReason& reason = group_by(reasons, &StickReason::stick, stick);
    reason.why += (reason.why.empty() ? "" : "; ") + why;
}

} // namespace

StickPair pick_sticks(const StickUse& use, const std::vector<Stick>& sticks, UnitSystem units) {
    StickPair pair;
    for (const Stick& stick : sticks) { // rising
        if (!stick.stocked || stick.units != units)
            continue;
        if (use.minimum && !pair.minimum && stick.rating.value.value() >= use.minimum->value() - same_rating)
            pair.minimum = &stick;
        if (use.maximum && stick.rating.value.value() <= use.maximum->value() + same_rating &&
            (!pair.maximum || stick.rating.value > pair.maximum->rating.value))
            pair.maximum = &stick;
    }
    pair.needs_thermometer =
        (use.minimum && !pair.minimum) || (use.maximum && !pair.maximum) ||
        (pair.minimum && pair.maximum && pair.minimum->rating.value >= pair.maximum->rating.value);
    if (pair.needs_thermometer) // one alone misleads: the maximum's would melt on metal at its minimum
        pair.minimum = pair.maximum = nullptr;
    return pair;
}

std::vector<Need> stick_needs(const std::vector<StickUse>& uses, const std::vector<Stick>& sticks,
                              UnitSystem units) {
    std::vector<StickReason> reasons;
    std::string by_thermometer;
    for (const StickUse& use : uses) {
        const StickPair pair = pick_sticks(use, sticks, units);
        if (pair.minimum)
            add_reason(reasons, pair.minimum,
                       fmt::format("melts when {} is warm enough ({} at least)", use.bore,
                                   show_exact(*use.minimum, units)));
        if (pair.maximum)
            add_reason(reasons, pair.maximum,
                       fmt::format("must not melt on {} before a ring ({} at most)", use.bore,
                                   show_exact(*use.maximum, units)));
        if (pair.needs_thermometer)
            by_thermometer += (by_thermometer.empty() ? "" : ", ") + use.bore;
    }
    std::vector<Need> lines;
    for (const auto& [stick, why] : reasons) {
        lines.push_back(instrument(kinds::temperature_stick, stick->rating.value, 2,
                                   why + "; two of each, one breaks", stick->rating.source));
        lines.back().name = stick->name;
    }
    if (!reasons.empty() || !by_thermometer.empty())
        lines.push_back(
            instrument(kinds::thermometer, {}, 1,
                       by_thermometer.empty()
                           ? "to check the sticks and to read between their ratings"
                           : fmt::format("no pair of sticks serves {}: measure there", by_thermometer),
                       "practice"));
    return lines;
}

} // namespace ringfill
