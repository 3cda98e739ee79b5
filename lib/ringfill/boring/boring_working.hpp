#pragma once

#include <vector>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How the figures of a bore's boring were reached (boring.*).
std::vector<Working> boring_working(const WeldedBore& welded, const BoringPlan& plan, const Cutting& cutting);

/// How each cut was reached (cuts[i].*).
std::vector<Working> cuts_working(const WeldedBore& welded, const BoringPlan& plan, const Cutting& cutting);

/// How each facing was reached (facing[i].*).
std::vector<Working> facing_working(const WeldedBore& welded, const BoringPlan& plan, const Cutting& cutting);

/// How roughness, limits and the diameter to bore to were reached.
std::vector<Working> size_working(const WeldedBore& welded, const BoringPlan& plan, const Cutting& cutting);

/// How each gauge reading was reached (gauge[i].*).
std::vector<Working> gauge_working(const BoringPlan& plan);

/// How a speed of the bar was reached on a diameter.
Working rpm_working(const BarSettings& settings, const BarSpeed& bar, Length diameter);

} // namespace ringfill
