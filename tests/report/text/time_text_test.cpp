#include <catch2/catch.hpp>

#include <algorithm>
#include <sstream>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/report/text/time_text.hpp>

#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;
using Catch::WithinRel;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

BorePlan planned(const BalanceJob& job) {
    return job.plan().bores.front();
}

std::size_t lines_with(const std::string& text, const std::string& begin) {
    std::size_t count = 0;
    for (const std::string& line : lines_of(text))
        count += line.starts_with("    " + begin) ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("the timeline has every step with its ring, minutes and temperatures") {
    const BorePlan bore = planned({});
    const HeatRun& run = bore.heat_balance->hot.run;
    const std::string text = time_text(bore, UnitSystem::metric);
    CHECK(lines_with(text, "stop ") == static_cast<std::size_t>(run.stops));
    CHECK(run.stops > 1);
    CHECK(lines_with(text, "warm-up ") == 1);
    CHECK(lines_with(text, "cool to rough ") == 1);
    CHECK(lines_with(text, "cool to finish ") == 1);
    for (const std::string& line : lines_of(text))
        if (line.starts_with("    stop "))
            CHECK_THAT(line, Catch::EndsWith("to  250 °C")); // 50 K under the approved 300
    for (const HeatStep& step : run.steps)
        if (step.stage == HeatStage::stop)
            CHECK_THAT(text, Contains(fmt::format("after {} layer {} ring {}", step.pass, step.layer,
                                                  step.after_ring)));
    CHECK_THAT(text, Contains("peak " + show(run.peak, UnitSystem::metric)));
    CHECK_THAT(time_text(bore, UnitSystem::inch), Contains("°F") && !Contains("°C"));
    for (const std::string& line : lines_of(time_text(bore, UnitSystem::inch, true)))
        CHECK(count_characters(line) < 80);
}

TEST_CASE("a long timeline keeps its ends and counts the rest") {
    BalanceJob tight;
    tight.maximum = tight.minimum + 15; // less is no window
    tight.boss = 125;
    const BorePlan bore = planned(tight);
    const HeatRun& run = bore.heat_balance->hot.run;
    REQUIRE(run.steps.size() > 40);
    const std::string text = time_text(bore, UnitSystem::metric);
    const std::size_t shown = lines_with(text, "stop ");
    CHECK(shown < static_cast<std::size_t>(run.stops));
    CHECK_THAT(text,
               Contains(fmt::format("… {} steps more, {} stops and 0 reheats among them",
                                    run.steps.size() - 32, static_cast<std::size_t>(run.stops) - shown)));
    CHECK(lines_with(text, "cool to finish ") == 1);
}

TEST_CASE("both runs are told where the job does not say what carries heat off") {
    BalanceJob open;
    open.sink = "";
    const std::string text = time_text(planned(open), UnitSystem::metric);
    CHECK(lines_with(text, "warm-up ") == 2);
    CHECK_THAT(text, Contains("With one plate of 42.8 mm on it"));
}

TEST_CASE("a run that does not end well says so and goes as far as it goes") {
    BalanceJob weak;
    weak.heater_kW = 2;
    CHECK_THAT(time_text(planned(weak), UnitSystem::metric),
               Contains("No time can be given: the heater is too small.") &&
                   Contains("nothing: it does not come to 180 °C"));
    BalanceJob summer;
    summer.ambient = 40;
    const std::string text = time_text(planned(summer), UnitSystem::metric);
    CHECK_THAT(text, Contains("it does not end well") && Contains("60 °C for roughing") &&
                         !Contains("for finishing"));
    BalanceJob without;
    without.with_voltage = false;
    CHECK(time_text(planned(without), UnitSystem::metric, true).empty());
}

TEST_CASE("the plot has both limits and the curve between its first and last temperature") {
    const BorePlan bore = planned({});
    const auto lines = lines_of(curve_plot(bore.heat_balance->hot, UnitSystem::metric));
    REQUIRE(lines.size() == 13);
    std::size_t limits = 0;
    for (const std::string& line : lines)
        limits += line.find("--") != std::string::npos ? 1 : 0;
    CHECK(limits == 2);
    const auto with = [&](const std::string& label) {
        return std::count_if(lines.begin(), lines.end(),
                             [&](const std::string& line) { return line.find(label) != std::string::npos; });
    };
    CHECK(with("300 °C max") == 1); // as the head of every view tells them
    CHECK(with("180 °C min") == 1);
    CHECK_THAT(lines[11], Contains("4 °C") && Contains("|#"));
    CHECK(lines[10].back() == '#'); // it ends at 30 °C, a row above the air
    CHECK(count_characters(lines[10]) == count_characters(lines[9].substr(0, lines[9].find('|'))) + 61);
    CHECK(lines[11].size() < lines[10].size());
    BalanceJob weak;
    weak.heater_kW = 2;
    CHECK(curve_plot(planned(weak).heat_balance->hot, UnitSystem::metric).empty());
}

TEST_CASE("the result has the whole timeline and curve, and no total for a run that does not end well") {
    BalanceJob tight;
    tight.maximum = tight.minimum + 15; // less is no window
    tight.boss = 125;
    const Plan plan = tight.plan();
    const Value result = plan_document(plan);
    const Value& time = *result.find("bores")->list()->front().find("time");
    const HeatRun& run = plan.bores.front().heat_balance->hot.run;
    CHECK(time.find("timeline")->list()->size() == run.steps.size());
    CHECK(time.find("curve")->list()->size() == run.curve.size());
    CHECK(*time.find("end")->text() == "done");
    double sum = 0;
    for (const Value& step : *time.find("timeline")->list())
        sum += *step.find("s")->number();
    CHECK_THAT(*time.find("total_s")->number(), WithinRel(sum, 1e-9));
    CHECK_FALSE(time.find("wait_low_s"));
    BalanceJob weak;
    weak.heater_kW = 2;
    const Value weak_result = plan_document(weak.plan());
    const Value& broken = *weak_result.find("bores")->list()->front().find("time");
    CHECK(*broken.find("end")->text() == "the heater is too small");
    for (const char* name : {"total_s", "preheat_s", "wait_s", "stops", "cool_to_rough_s"})
        CHECK_FALSE(broken.find(name));
}
