#include <catch2/catch.hpp>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::WithinAbs;

namespace {

/// A printed span of cutting speeds in feet a minute, and the end of it that the table takes: a bar is less
/// stiff than a lathe.
struct PrintedSpan {
    DepositGroup group;
    CuttingTool tool;
    double low_ft_min;
    double high_ft_min;
    const char* source;
};

double m_min_of(double ft_min) {
    return ft_min * 0.3048;
}

constexpr double rounding = 1; // m/min: the prints are in feet

} // namespace

// Read: the classical table of turning speeds with high-speed steel, carbon steel 1006 to 1026 of 100 to 275
// HB 120 to 70 ft/min, 1027 to 1052 of 275 to 325 HB 60, to 375 HB 40, to 425 HB 30; US T.O. 1-1A-9 table 2-8
// for stainless 302 to 316; a carbide maker's starting speeds for nickel alloys; a university's shop sheet
// for high-manganese and hard alloy steel, with carbide twice as fast; a tool seller's reference for bronze;
// a reference page for iron, in m/min.
TEST_CASE("the spans of cutting speeds are those of print") {
    using enum DepositGroup;
    using enum CuttingTool;
    const PrintedSpan spans[] = {{mild, hss, 70, 120, "turning-HSS"},
                                 {low_alloy, hss, 40, 70, "turning-HSS"},
                                 {hardened, hss, 30, 40, "turning-HSS"},
                                 {low_alloy, carbide, 2 * 50, 2 * 150, "shop-sheet"},
                                 {austenitic, carbide, 150, 300, "TO-1-1A-9"},
                                 {austenitic, hss, 20, 80, "TO-1-1A-9"},
                                 {manganese, carbide, 2 * 40, 2 * 100, "shop-sheet"},
                                 {manganese, hss, 40, 100, "shop-sheet"},
                                 {nickel, carbide, 115, 200, "carbide-speeds"},
                                 {bronze, hss, 200, 250, "turning-180"},
                                 {cast_iron, carbide, 60 / 0.3048, 90 / 0.3048, "turning-page"},
                                 {cast_iron, hss, 18 / 0.3048, 25 / 0.3048, "turning-page"}};
    for (const PrintedSpan& printed : spans) {
        INFO(word_of(printed.group) << ' ' << word_of(printed.tool));
        const ToolFigures& row = testing::shop().cutting.of(printed.tool, printed.group);
        CHECK(row.speed_range.source == printed.source);
        CHECK_THAT(m_min(row.speed_range.value.first), WithinAbs(m_min_of(printed.low_ft_min), rounding));
        CHECK_THAT(m_min(row.speed_range.value.second), WithinAbs(m_min_of(printed.high_ft_min), rounding));
    }
}

// Where a row's own figure is cited, it is printed: 90 ft/min for 175 to 225 HB, 60 for 275 to 325 HB and for
// a hard skin, 40 for 325 to 375, 30 for 375 to 425; the slow end of the span for stainless, 13 % Mn, nickel,
// bronze and iron.
TEST_CASE("the figure of a cited row is a printed one") {
    using enum DepositGroup;
    const auto speed = [](CuttingTool tool, DepositGroup group) {
        return m_min(testing::shop().cutting.of(tool, group).cutting_speed.value);
    };
    const auto skin = [](DepositGroup group) {
        return m_min(testing::shop().cutting.of(CuttingTool::hss, group).skin_speed.value);
    };
    CHECK_THAT(speed(CuttingTool::hss, mild), WithinAbs(m_min_of(90), rounding));
    CHECK_THAT(skin(mild), WithinAbs(m_min_of(60), rounding));
    CHECK_THAT(speed(CuttingTool::hss, low_alloy), WithinAbs(m_min_of(60), rounding));
    CHECK_THAT(skin(low_alloy), WithinAbs(m_min_of(40), rounding));
    CHECK_THAT(speed(CuttingTool::hss, hardened), WithinAbs(m_min_of(30), rounding));
    CHECK_THAT(speed(CuttingTool::hss, austenitic), WithinAbs(m_min_of(40), rounding));
    CHECK_THAT(skin(austenitic), WithinAbs(m_min_of(20), rounding));
    CHECK_THAT(speed(CuttingTool::carbide, austenitic), WithinAbs(m_min_of(150), rounding));
    CHECK_THAT(speed(CuttingTool::carbide, manganese), WithinAbs(m_min_of(80), rounding));
    CHECK_THAT(speed(CuttingTool::carbide, nickel), WithinAbs(m_min_of(115), rounding));
    CHECK_THAT(speed(CuttingTool::hss, bronze), WithinAbs(m_min_of(200), rounding));
}
