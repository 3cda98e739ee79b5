#include <catch2/catch.hpp>

#include <ringfill/weld/deposition.hpp>
#include <ringfill/weld/wire.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

constexpr double printed_A = 220;

WireSize size() {
    WireSize one;
    one.diameter = mm(1.2);
    Window spray;
    spray.spray_from = Sourced<Current>{in_si<Current>(printed_A), "printed"};
    one.windows = {{"spray", spray}};
    return one;
}

Gas gas(bool sprays) {
    Gas one;
    one.name = "G";
    one.sprays = sprays;
    one.spray_times = Sourced<std::pair<double, double>>{{1.1, 1.35}, "mixture"};
    return one;
}

Procedure spraying() {
    Procedure one;
    one.transfer = "spray";
    return one;
}

bool holds(double amperes, const Gas* in) {
    return transfer_holds(spraying(), size(), in, in_si<Current>(amperes));
}

} // namespace

// By hand: 1.1 x 220 = 242 and 1.35 x 220 = 297 A.
TEST_CASE("a gas raises the current from which wire sprays, and without one the printed one stands") {
    const Gas mixture = gas(true);
    const SprayFrom raised = spray_from(size(), &mixture).value();
    CHECK_THAT(raised.may.value(), WithinRel(242, 1e-12));
    CHECK_THAT(raised.does.value(), WithinRel(297, 1e-12));
    CHECK(raised.source == "printed, mixture");
    CHECK(spray_from(size(), nullptr).value().does.value() == printed_A);
    const Gas none = gas(false);
    CHECK_FALSE(spray_from(size(), &none));
    CHECK_FALSE(spray_from(WireSize(), nullptr));
}

TEST_CASE("spray holds where the current surely gives it, and where nobody knows") {
    const Gas mixture = gas(true);
    CHECK_FALSE(holds(150, &mixture));
    CHECK_FALSE(holds(296, &mixture));
    CHECK(holds(298, &mixture));
    CHECK(holds(220, nullptr));
    CHECK_FALSE(holds(219, nullptr));
    CHECK(transfer_holds(spraying(), size(), &mixture, std::nullopt));
    CHECK(transfer_holds(spraying(), WireSize(), &mixture, in_si<Current>(10)));
}

TEST_CASE("in a gas in which nothing sprays spray never holds, and other transfers always do") {
    const Gas none = gas(false);
    CHECK_FALSE(holds(400, &none));
    CHECK_FALSE(transfer_holds(spraying(), size(), &none, std::nullopt));
    Procedure pulsed = spraying();
    pulsed.transfer = "pulse";
    CHECK(transfer_holds(pulsed, size(), &none, in_si<Current>(10)));
}
