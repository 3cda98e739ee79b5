#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Feed along the bore, f n [m/s].
Speed feed_rate(Length feed, Turning turning);

/// Time of one cut, way/(f n) [s]; t = L/(f n), every machine shop book.
Time cutting_time(Length way, Length feed, Turning turning);

} // namespace ringfill
