#include <ringfill/boring/cutting_time.hpp>

namespace ringfill {

Speed feed_rate(Length feed, Turning turning) {
    return feed * turning;
}

Time cutting_time(Length way, Length feed, Turning turning) {
    return way / feed_rate(feed, turning);
}

} // namespace ringfill
