#pragma once

#include <optional>
#include <vector>

#include <ringfill/boring/deposit.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/table/cutting.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// How the bar is run on one deposit: the table, with what the job says in its place under the source "job".
struct BarSettings : Cutting {
    std::optional<Length> stroke;
    std::vector<Turning> bar_speeds;
    Deposit deposit;
    CuttingTool tool = CuttingTool::carbide;
    Sourced<Speed> cutting_speed;
    Sourced<Speed> skin_speed; ///< of the skim and the first cut after the weld
    Sourced<Length> feed;      ///< per revolution
    Sourced<Time> edge_life;   ///< cutting time of one edge

    /// Of a deposit that hardens under the edge the last two cuts are deep, and none follows without feed-in.
    bool cuts_to_the_end() const { return hardens_under_the_edge(deposit.group); }
};

/// A deposit that hardens under the edge is cut no less than the table's least, unless the job says so.
BarSettings bar_settings(const BoringBar& bar, const Cutting& cutting, const Deposit& deposit);

/// How fast the bar turns.
struct BarSpeed {
    Turning computed; ///< v_c/(π D), by the cutting speed alone; n = 1000 v/(π D) in rev/min of m/min and mm,
                      ///< every machine shop book
    Turning used;          ///< the speed of the bar that is taken
    bool listed = false;   ///< the job lists the speeds of the bar
    bool too_fast = false; ///< its lowest speed passes the cutting speed
};

/// Cutting speed on a diameter, π D n [m/s].
Speed cutting_speed_at(Turning turning, Length diameter);

/// The highest of the bar's speeds that does not pass the cutting speed, within 1e-9 of it; if all pass it
/// the lowest. Without a list the computed one.
BarSpeed bar_speed(Speed cutting_speed, Length diameter, const std::vector<Turning>& listed);

/// Feed along the bore, f n [m/s].
Speed feed_rate(Length feed, Turning turning);

/// Time of one cut, way/(f n) [s]; t = L/(f n), every machine shop book.
Time cutting_time(Length way, Length feed, Turning turning);

} // namespace ringfill
