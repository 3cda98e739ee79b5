#pragma once

#include <vector>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How the figures of a bore's boring were reached (boring.*).
std::vector<Working> boring_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan,
                                    const Cutting& cutting);

/// How each cut and each facing was reached (cuts[i].*, facing[i].*).
std::vector<Working> cuts_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan,
                                  const Cutting& cutting);

/// How a speed of the bar was reached on a diameter.
Working rpm_working(const BarSettings& settings, const BarSpeed& bar, Length diameter);

} // namespace ringfill
