#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/report/draw/curve_frame.hpp>
#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/units/metric.hpp>

#include "heat/heat_balance_sample.hpp"
#include "report/draw/drawing_parts.hpp"
#include "report/odd_jobs.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

BorePlan planned(const BalanceJob& job) {
    return job.plan().bores.front();
}

Drawing curve_of(const BorePlan& plan, UnitSystem units = UnitSystem::metric) {
    return drawing_of(curve_drawing(plan, units, "bore-1-curve"));
}

} // namespace

TEST_CASE("the curve has both limits, what cooling comes to, and its rests, in the units of the job") {
    BalanceJob thin; // it must rest between rings
    thin.boss = 125;
    thin.maximum = 230;
    const BorePlan plan = planned(thin);
    const Drawing drawing = curve_of(plan);
    for (const char* text : {"230 °C", "180 °C", "60 °C", "30 °C"})
        CHECK(drawing.has_text(held_together(text)));
    for (const char* text :
         {"max", "min", "rough under", "finish under", "warm-up", "weld", "rest", "cool", "hours"})
        CHECK(drawing.has_text(text));
    const HeatRun& run = plan.heat_balance->hot.run;
    const auto rests = std::count_if(run.steps.begin(), run.steps.end(),
                                     [](const HeatStep& step) { return step.stage == HeatStage::rest; });
    CHECK(rests > 3);
    CHECK(drawing.has_text(fmt::format("{} rests", rests)));
    CHECK(drawing.has_text("reheat") == (run.reheats > 0));
    CHECK(text_faults(drawing) == "");
    CHECK_THAT(drawing.description, Contains("between") && Contains("peak"));
    const Drawing fahrenheit = curve_of(plan, UnitSystem::inch);
    CHECK(fahrenheit.has_text(held_together("446 °F"))); // approved, shown as typed
    CHECK(fahrenheit.has_text(held_together("356 °F")));
    CHECK_FALSE(fahrenheit.has_text("°C"));
    CHECK(text_faults(fahrenheit) == "");
}

TEST_CASE("a hold is drawn at its temperature") {
    BalanceJob held;
    held.approved = R"(, "post_heat": { "temperature": "250 degC", "time": "2 h" })";
    const Drawing drawing = curve_of(planned(held));
    CHECK(drawing.has_text("hold at"));
    CHECK(drawing.has_text("250 °C"));
}

TEST_CASE("two runs have a key, and the curve of the one with a plate is dashed") {
    BalanceJob open;
    open.sink = "";
    const BorePlan plan = planned(open);
    const std::string svg = curve_drawing(plan, UnitSystem::metric, "c");
    const Drawing drawing = drawing_of(svg);
    CHECK(drawing.has_text("nothing carries heat off; thick bars"));
    CHECK(drawing.has_text("with one plate of " + held_together("42.8 mm") + " on it; thin bars"));
    CHECK_THAT(svg, Contains("stroke-dasharray=\"1.6 0.8\""));
    CHECK_THAT(curve_drawing(planned({}), UnitSystem::metric, "c"),
               !Contains("stroke-dasharray=\"1.6 0.8\""));
    CHECK_THAT(drawing.description,
               Contains("With nothing that carries heat off") && Contains("Dashed, with"));
    CHECK(text_faults(drawing) == "");
}

TEST_CASE("no balance and no time give no drawing; one that breaks off says so") {
    BalanceJob without;
    without.with_voltage = false;
    CHECK(curve_drawing(planned(without), UnitSystem::metric, "c").empty());
    BalanceJob weak;
    weak.heater_kW = 1.5;
    CHECK(curve_drawing(planned(weak), UnitSystem::metric, "c").empty());
    BalanceJob summer;
    summer.ambient = 60;
    CHECK(curve_of(planned(summer)).has_text("It does not end well"));
}

TEST_CASE("the curve ends at the last hour and keeps every peak and the coldest point") {
    CurveFrame frame;
    frame.end_s = 3'600;
    frame.low = 273;
    frame.high = 673;
    std::vector<CurvePoint> curve;
    for (int i = 0; i <= 20'000; ++i) // a saw with one high and one low tooth in the same hair's breadth
        curve.push_back({in_si<Time>(3'600 * i / 20'000.0), in_si<Temperature>(i == 10'001   ? 650.0
                                                                               : i == 10'002 ? 280.0
                                                                                             : 400 + i % 2)});
    const std::string path = curve_path(frame, curve);
    CHECK(path.size() < 40'000);
    const auto points = points_of(path);
    const auto [top, bottom] = std::minmax_element(
        points.begin(), points.end(), [](const PaperPoint& a, const PaperPoint& b) { return a.y < b.y; });
    CHECK(std::fabs(top->y - frame.y(650)) < 1e-3);
    CHECK(std::fabs(bottom->y - frame.y(280)) < 1e-3);
    CHECK(std::fabs(points.front().x - frame.left) < 1e-3);
    CHECK(std::fabs(points.back().x - frame.right) < 1e-3);
    CHECK(std::is_sorted(points.begin(), points.end(),
                         [](const PaperPoint& a, const PaperPoint& b) { return a.x < b.x; }));
    CHECK(curve_path(frame, {}).empty());
}

TEST_CASE("round steps are few, inside, and multiples of 1, 2 or 5") {
    CHECK(round_steps(0, 9, 6) == std::vector<double>{0, 2, 4, 6, 8});
    CHECK(round_steps(-11, 318, 7) == std::vector<double>{0, 50, 100, 150, 200, 250, 300});
    CHECK(round_steps(0, 0.9, 6).size() == 5);
    CHECK(round_steps(1, 1, 6).empty());
}

TEST_CASE("curves keep their texts apart in every job") {
    for (const OddJob& one : drawn_jobs()) {
        INFO(one.name);
        const Job job = job_from(one.text);
        for (const BorePlan& bore : plan(job, shop()).bores)
            if (const std::string svg = curve_drawing(bore, job.units, "c"); !svg.empty()) {
                CHECK(text_faults(drawing_of(svg)) == "");
                CHECK(svg.size() < 100'000);
            }
    }
}
