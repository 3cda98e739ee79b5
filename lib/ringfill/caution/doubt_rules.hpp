#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/caution/doubt.hpp>
#include <ringfill/caution/rules.hpp>

namespace ringfill {

/// From how much to how much a figure is usual, in its SI unit.
struct Usual {
    double low;
    double high;

    bool holds(double value) const { return value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9); }
};

/// A table's range with a third of room at both ends: two thirds of its low end to four thirds of its high.
template <class Quantity>
std::optional<Usual> with_room(const std::optional<SourcedRange<Quantity>>& range) {
    if (!range)
        return std::nullopt;
    const auto in_si_unit = [](const auto& end) {
        if constexpr (requires { end.value(); })
            return end.value();
        else
            return end;
    };
    return Usual{in_si_unit(range->value.first) * 2 / 3, in_si_unit(range->value.second) * 4 / 3};
}

/// How a figure in its SI unit is shown.
using Figure = std::string (*)(double, UnitSystem);

inline std::string length_text(double metres, UnitSystem units) {
    const Length length = in_si<Length>(metres);
    return length < millimetres(1) ? show_pitch(length, units) : show(length, units);
}

/// The figure of a quantity that the job gives, in its SI unit.
template <class Quantity>
std::optional<double> si_number(const std::optional<Quantity>& given) {
    return given ? std::optional(given->value()) : std::nullopt;
}

/// The doubts of one object of the job, in the order they are found.
struct DoubtList {
    UnitSystem units = UnitSystem::metric;
    std::string path = {}; ///< of the object
    std::vector<Doubt> found = {};

    /// One a field: the first that is found.
    void add(const std::string& field, std::string value, std::string usual, std::string like = {});

    /// One that lies outside what is usual; where a decimal point may have slipped, what it may be.
    /// @param why the end of the sentence on what is usual.
    void judge(const std::string& field, std::optional<double> value, const std::optional<Usual>& usual,
               Figure shown, const std::string& why = {});
};

/// Of a procedure: volts, amps, feed, travel, gas, stick-out, bead, pitch, efficiency, size of the wire.
void arc_doubts(DoubtList& doubts, const Settings& settings);

/// Of a procedure: its hydrogen, and what it has approved.
void approved_doubts(DoubtList& doubts, const Procedure& procedure, const std::vector<BorePlan>& bores);

/// Of a mill certificate: an element far from what the grade holds.
void certificate_doubts(DoubtList& doubts, const WornBore& bore, const Base& base);

/// Of the readings: one that stands alone, one inside the finished size, a survey that covers little.
void reading_doubts(DoubtList& doubts, const WornBore& bore);

/// Of the finished size against limits, readings, wear and build-up.
void size_doubts(DoubtList& doubts, const WornBore& bore, const BorePlan& plan,
                 const std::vector<SizeStep>& steps);

/// Of the other lengths of a bore.
void length_doubts(DoubtList& doubts, const WornBore& bore, const BorePlan& plan);

/// Of the whole job: air, heater, cutting, prices.
void work_doubts(DoubtList& doubts, const PlannedWork& work, const Shop& shop);

} // namespace ringfill
