#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>
#include <ringfill/table/cautions.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Field& field_of(const Record& record, std::string_view name) {
    const Field* field = record.find(name);
    REQUIRE(field);
    return *field;
}

} // namespace

TEST_CASE("the circumstances are those that a job can tell") {
    std::set<std::string> near;
    for (const Circumstance& word : circumstances)
        if (word.name.starts_with("near_"))
            near.insert(std::string(word.name.substr(5)));
    const Field& near_field = field_of(site_record, "near");
    CHECK(near == std::set<std::string>(near_field.words.begin(), near_field.words.end()));
    CHECK(circumstance("room_volume_m3")->high == spans::room.high);
    CHECK(circumstance("ceiling_m")->high == spans::distance.high);
    CHECK(circumstance("wire_current_A")->high == spans::current.high);
    CHECK_THAT(celsius(circumstance("ambient_degC")->low).value(),
               Catch::WithinAbs(spans::temperature.low, 1e-9));
    CHECK_THAT(celsius(circumstance("ambient_degC")->high).value(),
               Catch::WithinAbs(spans::temperature.high, 1e-9));
}

TEST_CASE(
    "the product's table: at most six cautions for every job, each circumstance used, rules of 30 and 60 "
    "minutes") {
    const CautionTable& table = shop().cautions;
    CHECK(std::count_if(table.rows.begin(), table.rows.end(), [](const CautionRow& row) {
              return row.triggers.front().circumstance == circumstance("always");
          }) <= 6);
    CHECK(table.rows.size() > 40);
    std::set<const Circumstance*> used;
    for (const CautionRow& row : table.rows) {
        CAPTURE(row.name);
        CHECK(table.sources.contains(row.source));
        for (const Trigger& trigger : row.triggers)
            used.insert(trigger.circumstance);
        for (const ExposureLimit& limit : row.limits)
            CHECK(limit.mg_m3.value > 0);
    }
    CHECK(used.size() == std::size(circumstances));
    std::set<double> minutes;
    for (const FireRule& rule : table.fire_rules)
        minutes.insert(rule.after.value.value() / 60);
    CHECK(minutes == std::set<double>{30, 60});
}

// Filter shades: 29 CFR 1910.133(a)(5) for the least, ANSI Z49.1 for comfort; the limits of manganese,
// chromium and nickel: 29 CFR 1910.1000 table Z-1 and 1910.1026, Directive 2004/37/EC annex III as amended,
// NIOSH Pocket Guide; ventilation: 29 CFR 1910.252(c)(2), 10,000 ft3 and 16 ft; all read or restated there.
TEST_CASE("the figures of the product's table are those of their documents") {
    const auto row = [](std::string_view name) {
        const auto& rows = shop().cautions.rows;
        const auto found =
            std::find_if(rows.begin(), rows.end(), [&](const CautionRow& one) { return one.name == name; });
        REQUIRE(found != rows.end());
        return *found;
    };
    CHECK(row("wire shade under 60 A").text.starts_with("Filter shade 7 at least for wire."));
    CHECK(row("wire shade to 160 A").text.starts_with("Filter shade 10 at least for wire, 11 is"));
    CHECK(row("wire shade to 250 A").text.starts_with("Filter shade 10 at least for wire, 12 is"));
    CHECK(row("wire shade from 250 A").text.starts_with("Filter shade 10 at least for wire, 14 is"));
    const auto least = [&](std::string_view name) {
        const auto limits = row(name).limits;
        return std::min_element(limits.begin(), limits.end(),
                                [](const ExposureLimit& one, const ExposureLimit& other) {
                                    return one.mg_m3.value < other.mg_m3.value;
                                })
            ->mg_m3.value;
    };
    CHECK(least("manganese fume") == 0.02);
    CHECK(least("chromium fume") == 0.0002); // NIOSH 2013, from memory
    CHECK(least("nickel fume") == 0.015);
    const double cubic_foot = 0.3048 * 0.3048 * 0.3048;
    CHECK(std::abs(row("low room").triggers[0].under->value - 10'000 * cubic_foot) < 0.01);
    CHECK(std::abs(row("low room").triggers[1].under->value - 16 * 0.3048) < 1e-9);
}
