#pragma once

#include <numbers>

#include <ringfill/document/field.hpp>

namespace ringfill::spans {

// What is not absurd, in SI. Skim, stock, overhang, offset and depth may be 0; what is divided by, or counted
// in, begins well over it: next to nothing would make a figure of the plan no number.
inline constexpr double absurd_length = 10; // m

inline constexpr Span size{1e-6, absurd_length};  // m, from 0.001 mm
inline constexpr Span plate{1e-4, absurd_length}; // m; metal that carries heat off
inline constexpr Span distance{0, absurd_length};
inline constexpr Span wire{1e-4, 0.01}; // m, a thin hair to a thick rod
inline constexpr Span name{1, 80};
inline constexpr Span title{1, 20'000};
inline constexpr Span count{1, 10'000};
inline constexpr Span percent{0, 100};
inline constexpr Span ratio{0.001, 1};
inline constexpr Span dilution{0.001, 0.9};
inline constexpr Span recovery{0.001, 2.5};
inline constexpr Span share{0, 10};
inline constexpr Span shape{0.001, 50};
inline constexpr Span speed{1e-3 / 60, 10};                // m/s, 1 mm/min to 600 m/min
inline constexpr Span current{1, 2'000};                   // A
inline constexpr Span voltage{1, 200};                     // V
inline constexpr Span flow{1e-4 / 60, 0.01};               // m3/s, 0.1 to 600 L/min
inline constexpr Span laid_rate{1e-3 / 3600, 50.0 / 3600}; // kg/s, 1 g/h to 50 kg/h
inline constexpr Span gas_time{0, 600};                    // s
inline constexpr Span time{0.06, 864'000};                 // s, 0.001 min to ten days
inline constexpr Span power{1, 1e6};                       // W
inline constexpr Span carry_off{0, 1e5};                   // W/K
inline constexpr Span hydrogen{0.01, 20};                  // ml in 100 g, the most that a rule was made for
inline constexpr Span heat_input{1e3, 1e8};                // J/m, 0.001 to 100 kJ/mm
inline constexpr Span temperature{213.15, 973.15};         // K, -60 to 700 degC
inline constexpr Span turn{0, 2 * std::numbers::pi};
inline constexpr Span working_day{3'600, 86'400}; // s, one hour to a whole day
inline constexpr Span change_over{0, 28'800};     // s, up to eight hours
inline constexpr Span clock{4, 5};                // characters
inline constexpr Span turning{1e-4, 100};         // rev/s
inline constexpr Span mass{0.1, 2'000};           // kg
inline constexpr Span room{0.1, 1e7};             // m3
inline constexpr Span price{0, 1e8};
inline constexpr Span road{0, 40'000};       // km or miles, round the earth
inline constexpr Span road_time{0, 864'000}; // s, ten days

} // namespace ringfill::spans
