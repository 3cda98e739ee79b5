#include <catch2/catch.hpp>

#include <ringfill/weld/wire.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

Current amps(double value) {
    return in_si<Current>(value);
}

/// Three points, not on one line.
WireSize tabulated() {
    WireSize size;
    size.feed_table = {{{m_min(4), "own"}, {amps(100), "own"}},
                       {{m_min(6), "own"}, {amps(140), "own"}},
                       {{m_min(10), "own"}, {amps(180), "own"}}};
    return size;
}

} // namespace

// Worked by hand: a quarter of the way from 100 to 140 A is a quarter of the way from 4 to 6 m/min; and so
// back.
TEST_CASE("a feed table is interpolated along straight lines") {
    const WireSize size = tabulated();
    std::vector<Fault> faults;
    struct Row {
        double current;
        double feed;
    };
    for (const Row& row : {Row{100, 4}, Row{110, 4.5}, Row{140, 6}, Row{150, 7}, Row{170, 9}, Row{180, 10}}) {
        INFO(row.current << " A");
        CHECK_THAT(feed_in_table(amps(row.current), size, "procedures.main", faults).value().value() * 60,
                   WithinRel(row.feed, 1e-13));
        CHECK_THAT(current_in_table(m_min(row.feed), size, "procedures.main", faults).value().value(),
                   WithinRel(row.current, 1e-13));
    }
    CHECK(faults.empty());
}

TEST_CASE("a current outside the table is refused with its range") {
    const WireSize size = tabulated();
    for (const double current : {99.0, 181.0}) {
        std::vector<Fault> faults;
        CHECK_FALSE(feed_in_table(amps(current), size, "procedures.main", faults));
        REQUIRE(faults.size() == 1);
        CHECK(to_string(faults[0]) ==
              std::string("procedures.main.current: ") + (current < 100 ? "99" : "181") +
                  " A is outside the filler's table, 100 A to 180 A; choose a current in the "
                  "table or write \"wire_feed\" too");
    }
}

TEST_CASE("a feed outside the table is refused with its range") {
    const WireSize size = tabulated();
    std::vector<Fault> faults;
    CHECK_FALSE(current_in_table(m_min(3.9), size, "procedures.main", faults));
    CHECK_FALSE(current_in_table(m_min(10.1), size, "procedures.main", faults));
    REQUIRE(faults.size() == 2);
    CHECK(to_string(faults[0]) ==
          "procedures.main.wire_feed: 3.9 m/min is outside the filler's table, 4.0 m/min to "
          "10.0 m/min; choose a feed in the table or write \"current\" too");
    CHECK(to_string(faults[1]) ==
          "procedures.main.wire_feed: 10.1 m/min is outside the filler's table, 4.0 m/min to "
          "10.0 m/min; choose a feed in the table or write \"current\" too");
}
