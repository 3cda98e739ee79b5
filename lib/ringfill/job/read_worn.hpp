#pragma once

#include <optional>

#include <ringfill/document/entry.hpp>
#include <ringfill/job/worn_bore.hpp>

namespace ringfill {

/// The worn surface of a bore of that length (nothing if the length itself is faulty). Refused: a diameter
/// beside stations, neither of them, stations in different forms or numbers, depths that do not rise or lie
/// outside the bore, an offset beside radii, and an offset that is not smaller than the smallest radius.
std::optional<Worn> read_worn(const Entry& entry, std::optional<Length> length);

} // namespace ringfill
