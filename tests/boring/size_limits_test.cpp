#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/boring/size_limits.hpp>
#include <ringfill/units/metric.hpp>

#include "fault_figures.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

WornBore bore_of(double diameter_mm, const std::string& size_class) {
    WornBore bore;
    bore.path = "bores[0]";
    bore.finish_diameter = millimetres(diameter_mm);
    bore.size_class = size_class;
    return bore;
}

/// "low high" in mm, or the fault.
std::string limits_of(double diameter_mm, const std::string& size_class) {
    std::vector<Fault> faults;
    const auto limits = size_limits(bore_of(diameter_mm, size_class), shop().size_steps, faults);
    if (!limits)
        return faults.size() == 1 ? in_figures(faults.front()) : "no limits and no fault";
    return fmt::format("{:.4f} {:.4f}", mm(limits->low), mm(limits->high));
}

} // namespace

TEST_CASE("a hole H begins at the nominal size, JS lies to both sides, D to G stand over it") {
    CHECK(limits_of(90, "H9") == "90.0000 90.0870");
    CHECK(limits_of(90, "JS7") == "89.9825 90.0175");
    CHECK(limits_of(90, "F8") == "90.0360 90.0900");
    CHECK(limits_of(90, "G6") == "90.0120 90.0340");
    CHECK(limits_of(90, "D11") == "90.1200 90.3400");
    CHECK(limits_of(90, "E5") == "90.0720 90.0870");
}

TEST_CASE("a size on the end of a step belongs to the step below, also in inches with a last digit") {
    CHECK(limits_of(80, "H7") == "80.0000 80.0300");
    CHECK(limits_of(80.0001, "H7") == "80.0001 80.0351");
    CHECK(limits_of(80.0000000001, "H7") == "80.0000 80.0300");
    CHECK(limits_of(500, "H9") == "500.0000 500.1550");
}

TEST_CASE("a class that is none, or no hole, is refused with the known ones") {
    for (const char* typed : {"h9", "P7", "H4", "H12", "H", "9", "", "H9 ", "JS07", "js7"})
        CHECK(limits_of(90, typed) ==
              fmt::format("bores[0].size_class: \"{}\" 5 6 7 8 9 10 11 9", typed)); // the grades, and "H9"
}

TEST_CASE("a size outside the table is refused with its ends") {
    CHECK(limits_of(18, "H9") == "bores[0].size_class: \"H9\" 18 18 500");
    CHECK(limits_of(500.01, "H9") == "bores[0].size_class: \"H9\" 500.01 18 500");
}

TEST_CASE("limits that the job gives itself are taken as they stand; neither gives none") {
    WornBore bore = bore_of(12, "");
    bore.size_class.reset();
    std::vector<Fault> faults;
    CHECK_FALSE(size_limits(bore, shop().size_steps, faults));
    bore.size_limits = {millimetres(11.99), millimetres(12.02)};
    const auto limits = size_limits(bore, shop().size_steps, faults);
    REQUIRE(limits);
    CHECK(limits->low == millimetres(11.99));
    CHECK(limits->high == millimetres(12.02));
    CHECK(limits->size_class.empty());
    CHECK_THAT(limits->tolerance_um, Catch::WithinAbs(30, 1e-9)); // 0.03 mm
    CHECK(faults.empty());
}

TEST_CASE("a bore is cut to its finish diameter, or to the limit that lies nearer") {
    std::vector<Fault> faults;
    const auto bored = [&](const char* size_class) {
        const WornBore bore = bore_of(90, size_class);
        return mm(diameter_to_bore(bore.finish_diameter, size_limits(bore, shop().size_steps, faults)));
    };
    CHECK(bored("H9") == 90);
    CHECK(bored("JS9") == 90);
    CHECK(fmt::format("{:.4f}", bored("F8")) == "90.0360");
    CHECK(diameter_to_bore(millimetres(90), std::nullopt) == millimetres(90));
}
