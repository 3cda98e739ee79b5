#pragma once

#include <cstdint>

#include <ringfill/job/job.hpp>
#include <ringfill/units/measured_field.hpp>

// How members of the job's own types are read and given back.

namespace ringfill {

/// A price or distance: exact, as it is written, so that no digit is lost.
template <>
struct FieldOf<Decimal> : FieldOfOne<Decimal> {
    static constexpr Kind kind = Kind::number;
    static std::optional<Decimal> read(const Spot& spot, const Field& field);
    static Value give(const Field& field, const Decimal& price);
};

/// A percentage in whole thousandths of a percent.
template <>
struct FieldOf<ExactShare> {
    static constexpr Kind kind = Kind::share;
    static bool fill(const Entry& entry, const Field& field, ExactShare& to);
    static Value give(const Field& field, ExactShare share);
};

/// A time of day such as "7:30" or "07:30", from midnight; nothing when it is none.
std::optional<Time> clock_time(std::string_view text);

/// The worn surface of a bore; its length, if it is known by then, bounds the depths. Refused: a diameter
/// beside stations, neither of them, stations in different forms or numbers, depths that do not rise or lie
/// outside the bore, an offset beside radii, and one that is not smaller than the smallest radius.
void read_worn(WornBore& bore, const Entry& entry, const Field& field);
Value give_worn(const WornBore& bore);

} // namespace ringfill
