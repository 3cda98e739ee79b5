#include <catch2/catch.hpp>

#include <cmath>

#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

constexpr double pi = 3.14159265358979323846;

/// Second method: sections 2 to 6 in plain numbers (mm, s, kg), with bisection for the scale.
struct ByHand {
    double scale = 1;
    int layers = 0;
    int rings = 0;
    double path = 0;
    double laid = 0;
    double arc = 0;
    double wire = 0;

    static double end(double r, double height, int n) {
        for (int i = 0; i < n; ++i)
            r = std::sqrt(r * r - 2 * height * r);
        return r;
    }

    /// A solid wire of 7850 kg/m3 at 92 %, width three times the crown, pitch two thirds of the width.
    ByHand(double skim, double target, double welded_length, double wire_mm, double feed, double travel) {
        const double linear_mass = pi / 4 * wire_mm * wire_mm * 7850e-9; // kg/mm
        const double section = linear_mass * feed * 0.92 / (7850e-9 * travel);
        const double width = std::sqrt(4.5 * section);
        const double height = section / (width * 2 / 3);
        while (end(skim, height, layers) > target)
            ++layers;
        double low = 0;
        double high = 1;
        for (int i = 0; i < 100; ++i)
            (end(skim, (low + high) / 2 * height, layers) > target ? low : high) = (low + high) / 2;
        scale = std::max(high, std::sqrt(0.75));
        rings = static_cast<int>(std::ceil(welded_length / (scale * width * 2 / 3)));
        for (double r = skim; path == 0 || layers > laid_layers; r = end(r, scale * height, 1), ++laid_layers)
            path += rings * 2 * pi * r * 37 / 36;
        laid = 7850e-9 * scale * scale * section * path;
        arc = path / (travel / scale / scale);
        wire = laid / 0.92 + layers * 100 * linear_mass;
    }

  private:
    int laid_layers = 0;
};

} // namespace

TEST_CASE("a plan is what the same sections give in plain numbers") {
    for (const double feed_m_min : {4.0, 6.5, 8.0, 11.0}) {
        INFO(feed_m_min << " m/min");
        const std::string fed =
            usual + fmt::format(R"(, "wire_feed": "{} m/min", "current": "180 A")", feed_m_min);
        const Plan found = plan(job_from(job_text(fed, bore_text("arm root"))), shop());
        const BorePlan& bore = found.bores.front();
        // r_max = 46.7 + 0.4 and a skim of 0.5; 90/2 less a stock of 2; 100 and twice an overhang of 3.
        const ByHand hand(47.6, 43, 106, 1.0, feed_m_min * 1e3 / 60, 350.0 / 60);
        CHECK(bore.layering.layers == hand.layers);
        CHECK_THAT(bore.bead.scale, WithinRel(hand.scale, 1e-9));
        REQUIRE(bore.layers.size() == static_cast<std::size_t>(hand.layers));
        CHECK(bore.layers.front().rings == hand.rings);
        CHECK_THAT(bore.metal.laid.value(), WithinRel(hand.laid, 1e-9));
        CHECK_THAT(bore.metal.arc.value(), WithinRel(hand.arc, 1e-9));
        CHECK_THAT(bore.metal.wire.value(), WithinRel(hand.wire, 1e-9));
        CHECK_THAT(bore.metal.kept.value(),
                   WithinRel(7850e-9 * pi * (47.6 * 47.6 - 45.0 * 45.0) * 100, 1e-12));
    }
}
