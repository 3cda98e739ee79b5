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

/// A thin boss that must rest between rings.
BalanceJob rested() {
    BalanceJob thin;
    thin.boss = 125;
    thin.maximum = 235;
    return thin;
}

std::size_t lines_with(const std::string& text, const std::string& begin) {
    std::size_t count = 0;
    for (const std::string& line : lines_of(text))
        count += line.starts_with("    " + begin) ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("the timeline has every step with its ring, minutes and temperatures") {
    const BorePlan bore = planned(rested());
    const HeatRun& run = bore.heat_balance->hot.run;
    const std::string text = time_text(bore, UnitSystem::metric);
    std::size_t rests = 0;
    for (const HeatStep& step : run.steps)
        if (step.stage == HeatStage::rest && run.steps.size() <= 40) {
            ++rests;
            CHECK_THAT(text, Contains(fmt::format("after {} layer {} ring {}", step.pass, step.layer,
                                                  step.after_ring)));
        }
    CHECK(lines_with(text, "rest ") == rests);
    CHECK(rests > 1);
    CHECK(lines_with(text, "warm-up ") == 1);
    CHECK(lines_with(text, "make ready ") == 1);
    CHECK(lines_with(text, "cool to rough ") == 1);
    CHECK(lines_with(text, "cool to finish ") == 1);
    CHECK_THAT(text, Contains("peak " + show(bore.heat_balance->peak(), UnitSystem::metric)));
    CHECK_THAT(time_text(bore, UnitSystem::inch), Contains("°F") && !Contains("°C"));
    for (const std::string& line : lines_of(time_text(bore, UnitSystem::inch, true)))
        CHECK(count_characters(line) < 80);
}

TEST_CASE("dwells are told by stretches of rings, with what the start must read") {
    const BorePlan bore = planned({});
    const HeatRun& run = bore.heat_balance->hot.run;
    REQUIRE(!run.dwells.empty());
    std::string text; // without the breaks of lines
    for (const std::string& line : lines_of(time_text(bore, UnitSystem::metric)))
        text += line.substr(std::min(line.size(), line.find_first_not_of(' '))) + " ";
    const ToldDwell& first = run.dwells.front();
    CHECK_THAT(text, Contains(fmt::format("ore layer {}: dwell {:.0f} s (rings {} to {})", first.layer,
                                          first.told.value(), first.from_ring, first.to_ring)));
    CHECK_THAT(text, Contains("must read under 290 °C just before the arc")); // 300 less 8, told as a maximum
    CHECK_THAT(text, Contains("The bore cools bare in ") && Contains("under 25.0 mm of blanket in "));
    CHECK_THAT(text, Contains("Read the bore, not the heated side"));
}

TEST_CASE("a long timeline keeps its ends and counts the rest") {
    BalanceJob tight = rested();
    tight.maximum = 205;
    tight.boss = 115;
    const BorePlan bore = planned(tight);
    const HeatRun& run = bore.heat_balance->hot.run;
    REQUIRE(run.steps.size() > 40);
    const std::string text = time_text(bore, UnitSystem::metric);
    std::size_t listed = 0;
    for (std::size_t i = 0; i < run.steps.size(); ++i)
        if (run.steps[i].stage == HeatStage::rest && (i < 24 || i + 8 >= run.steps.size()))
            ++listed;
    CHECK(lines_with(text, "rest ") == listed);
    CHECK_THAT(text, Contains(fmt::format("… {} steps more, ", run.steps.size() - 32)));
    CHECK(lines_with(text, "cool to finish ") == 1);
}

TEST_CASE("both runs are told where the job does not say what carries heat off") {
    BalanceJob open;
    open.sink = "";
    const std::string text = time_text(planned(open), UnitSystem::metric);
    CHECK(lines_with(text, "warm-up ") == 2);
    CHECK_THAT(text, Contains("With one plate of 42.8 mm on it"));
    CHECK_THAT(text, Contains("(attached)"));
    CHECK_THAT(time_text(planned({}), UnitSystem::metric), !Contains("(attached)"));
}

TEST_CASE("a run that does not end well says so and goes as far as it goes") {
    BalanceJob weak;
    weak.heater_kW = 1.5;
    CHECK_THAT(time_text(planned(weak), UnitSystem::metric),
               Contains("No time can be given: the heater is too small.") &&
                   Contains("nothing: it does not come to 180 °C"));
    BalanceJob summer;
    summer.ambient = 60;
    const std::string text = time_text(planned(summer), UnitSystem::metric);
    CHECK_THAT(text, Contains("it does not end well") && !Contains("for roughing"));
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
    weak.heater_kW = 1.5;
    CHECK(curve_plot(planned(weak).heat_balance->hot, UnitSystem::metric).empty());
}

TEST_CASE("the result has the whole timeline and curve, and no total for a run that does not end well") {
    const Plan plan = rested().plan();
    const Value result = plan_document(plan);
    const Value& time = *result.find("bores")->list()->front().find("time");
    const HeatRun& run = plan.bores.front().heat_balance->hot.run;
    CHECK(time.find("timeline")->list()->size() == run.steps.size());
    CHECK(time.find("curve")->list()->size() == run.curve.size());
    CHECK(*time.find("end")->text() == "done");
    double sum = 0;
    for (const Value& step : *time.find("timeline")->list())
        sum += *step.find("s")->number();
    // The dwells that are told are longer than those that are needed.
    const double more = *time.find("told_pause_s")->number() - *time.find("pause_s")->number();
    CHECK(more >= 0);
    CHECK_THAT(*time.find("total_s")->number(), WithinRel(sum + more, 1e-9));
    CHECK(time.find("dwells")->list()->size() == run.dwells.size());
    CHECK_FALSE(time.find("rest_low_s"));
    BalanceJob weak;
    weak.heater_kW = 1.5;
    const Value weak_result = plan_document(weak.plan());
    const Value& broken = *weak_result.find("bores")->list()->front().find("time");
    CHECK(*broken.find("end")->text() == "the heater is too small");
    for (const char* name : {"total_s", "preheat_s", "rest_s", "rests", "cool_to_rough_s"})
        CHECK_FALSE(broken.find(name));
}
