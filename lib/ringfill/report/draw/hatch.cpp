#include <ringfill/report/draw/hatch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace ringfill {
namespace {

/// Lines shorter than this are left out [mm].
constexpr double least_length = 0.05;

/// A direction on the paper and the one square to it.
struct Frame {
    double along_x;
    double along_y;

    double along(PaperPoint p) const { return p.x * along_x + p.y * along_y; }
    double across(PaperPoint p) const { return p.y * along_x - p.x * along_y; }
    PaperPoint at(double along, double across) const {
        return {along * along_x - across * along_y, along * along_y + across * along_x};
    }
};

/// Where a line of the hatching meets the edges.
std::vector<double> meetings(const std::vector<std::vector<PaperPoint>>& outlines, const Frame& frame,
                             double across) {
    std::vector<double> met;
    for (const auto& outline : outlines)
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const PaperPoint& a = outline[i];
            const PaperPoint& b = outline[(i + 1) % outline.size()];
            const double from = frame.across(a) - across;
            const double to = frame.across(b) - across;
            if ((from < 0) == (to < 0))
                continue;
            met.push_back(frame.along(a) + (frame.along(b) - frame.along(a)) * from / (from - to));
        }
    std::ranges::sort(met);
    return met;
}

} // namespace

std::string hatch(const std::vector<std::vector<PaperPoint>>& outlines, const Hatching& hatching) {
    const double angle = -hatching.degrees * std::numbers::pi / 180; // y runs down
    const Frame frame{std::cos(angle), std::sin(angle)};
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const auto& outline : outlines)
        for (const PaperPoint& p : outline) {
            low = std::min(low, frame.across(p));
            high = std::max(high, frame.across(p));
        }
    std::string commands;
    const double first = std::ceil(low / hatching.spacing);
    const double last = std::floor(high / hatching.spacing);
    if (first > last)
        return commands;
    const int more = static_cast<int>(last - first); // as many as fit on the paper
    for (int line = 0; line <= more; ++line) {
        const double across = (first + line) * hatching.spacing;
        const auto met = meetings(outlines, frame, across);
        for (std::size_t i = 0; i + 1 < met.size(); i += 2)
            if (met[i + 1] - met[i] > least_length)
                commands += open_path({frame.at(met[i], across), frame.at(met[i + 1], across)});
    }
    return commands;
}

} // namespace ringfill
