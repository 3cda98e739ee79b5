#include <ringfill/take/take_sticks.hpp>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

namespace ringfill {
namespace {

/// A stick whose rating is a figure of the other scale may differ from it in the last digit, K.
constexpr double rounding = 1e-6;

Need pieces(std::string item, double count, std::string why, std::string source) {
    Need line;
    line.item = std::move(item);
    line.need = 1;
    line.reserve = count - 1;
    line.unit = "pieces";
    line.supplied = count;
    line.why = std::move(why);
    line.source = std::move(source);
    line.for_measuring = true;
    line.working = {{"need", "min(count, 1)", {{"count", count, "pieces"}}, 1, "pieces", "practice"},
                    {"reserve",
                     "count - need",
                     {{"count", count, "pieces"}, {"need", 1, "pieces"}},
                     line.reserve,
                     "pieces",
                     "practice"}};
    work_supply(line, {line.supplied}, {1});
    return line;
}

/// What one stick is for, bore by bore.
struct StickReason {
    const Stick* stick;
    std::string why;
};

void add_reason(std::vector<StickReason>& reasons, const Stick* stick, const std::string& why) {
    if (!stick)
        return;
    for (StickReason& known : reasons)
        if (known.stick == stick) {
            known.why += "; " + why;
            return;
        }
    reasons.push_back({stick, why});
}

} // namespace

StickPair pick_sticks(const StickUse& use, const std::vector<Stick>& sticks, UnitSystem units) {
    StickPair pair;
    for (const Stick& stick : sticks) { // rising
        if (!stick.stocked || stick.units != units)
            continue;
        if (use.minimum && !pair.minimum && stick.rating.value() >= use.minimum->value() - rounding)
            pair.minimum = &stick;
        if (use.maximum && stick.rating.value() <= use.maximum->value() + rounding)
            pair.maximum = &stick;
    }
    pair.needs_thermometer = (use.minimum && !pair.minimum) || (use.maximum && !pair.maximum) ||
                             (pair.minimum && pair.maximum && pair.minimum->rating >= pair.maximum->rating);
    if (pair.needs_thermometer) // one alone misleads: the maximum's would melt on metal that is at its
                                // minimum
        pair.minimum = pair.maximum = nullptr;
    return pair;
}

std::vector<Need> take_sticks(const std::vector<StickUse>& uses, const std::vector<Stick>& sticks,
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
            by_thermometer += fmt::format("{}{}", by_thermometer.empty() ? "" : ", ", use.bore);
    }
    auto lines = reasons | ranges::views::transform([](const StickReason& reason) {
                     return pieces(reason.stick->name, 2, reason.why + "; two of each, one breaks",
                                   reason.stick->source);
                 }) |
                 ranges::to<std::vector>();
    if (!reasons.empty() || !by_thermometer.empty()) {
        lines.push_back(
            pieces("contact thermometer", 1,
                   by_thermometer.empty()
                       ? std::string("to check the sticks and to read between their ratings")
                       : fmt::format("no pair of sticks serves {}: measure there", by_thermometer),
                   "practice"));
        lines.back().charge = Charge::tool;
    }
    return lines;
}

} // namespace ringfill
