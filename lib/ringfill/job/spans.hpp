#pragma once

#include <numbers>

#include <ringfill/document/field.hpp>

namespace ringfill::spans {

// What is not absurd, in SI, where it stands in more than one field. Skim, stock, overhang, offset and depth
// may be 0; what is divided by, or counted in, begins well over it: next to nothing would make a figure of
// the plan no number.
inline constexpr double absurd_length = 10; // m

inline constexpr Span size{1e-6, absurd_length};  // m, from 0.001 mm
inline constexpr Span plate{1e-4, absurd_length}; // m; metal that carries heat off
inline constexpr Span distance{0, absurd_length};
inline constexpr Span name{1, 80};
inline constexpr Span count{1, 10'000};
inline constexpr Span ratio{0.001, 1};
inline constexpr Span share{0, 10};
inline constexpr Span speed{1e-3 / 60, 10};        // m/s, 1 mm/min to 600 m/min
inline constexpr Span current{1, 2'000};           // A
inline constexpr Span gas_time{0, 600};            // s
inline constexpr Span time{0.06, 864'000};         // s, 0.001 min to ten days
inline constexpr Span temperature{213.15, 973.15}; // K, -60 to 700 degC
inline constexpr Span turn{0, 2 * std::numbers::pi};
inline constexpr Span room{0.1, 1e7}; // m3
inline constexpr Span price{0, 1e8};

} // namespace ringfill::spans
