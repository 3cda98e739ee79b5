#include <catch2/catch.hpp>

#include <numbers>
#include <set>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/report/draw/drawn_bore.hpp>
#include <ringfill/units/metric.hpp>

#include "report/draw/drawing_parts.hpp"
#include "report/odd_jobs.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;
using Catch::WithinRel;

namespace {

struct Drawn {
    Job job;
    Plan plan;

    explicit Drawn(const std::string& text) : job(job_from(text)), plan(ringfill::plan(job, shop())) {}
    Drawing drawing(std::size_t bore = 0) const {
        return drawing_of(cross_section({job.bores[bore], plan.bores[bore], job.units}, "bore-1-cross"));
    }
};

constexpr double held = 1e-3; // a circle against the plan

void check_circles(const WornBore& bore, const BorePlan& plan, const Drawing& drawing) {
    const auto check = [&](const std::string& figure, Length radius) {
        INFO(figure);
        const auto drawn = drawing.radius_mm(figure);
        REQUIRE(drawn);
        CHECK_THAT(*drawn, WithinRel(mm(radius), held));
    };
    check("finish_diameter", plan.build.finish_radius);
    check("weld_to_diameter", plan.build.weld_to_radius);
    if (bore.skim)
        check("skim_diameter", plan.build.skim_radius);
    else
        CHECK_FALSE(drawing.radius_mm("skim_diameter"));
    if (bore.boss_diameter)
        check("boss_diameter", *bore.boss_diameter / 2.0);
    else
        CHECK_FALSE(drawing.radius_mm("boss_diameter"));
    for (std::size_t n = 0; n < plan.layers.size(); ++n)
        check(fmt::format("layer_{}", n + 1), plan.layers[n].radius_after);
    CHECK_FALSE(drawing.radius_mm(fmt::format("layer_{}", plan.layers.size() + 1)));
}

/// Every point of the drawn outline stands where the survey has it.
void check_outline(const WornBore& bore, const BorePlan& plan, const Drawing& drawing) {
    const WornOutline outline(bore, plan.survey);
    const DrawnCircle& finish = drawing.circles.front();
    for (const DrawnPath& path : drawing.paths) {
        if (path.figure != "worn_outline")
            continue;
        const auto points = points_of(path.commands);
        REQUIRE(points.size() == static_cast<std::size_t>(outline.steps()));
        for (std::size_t i = 0; i < points.size(); ++i) {
            const double clock = 2 * std::numbers::pi * static_cast<double>(i) / outline.steps();
            const double r = mm(outline.radius(in_si<Angle>(clock))) / drawing.mm_per_unit;
            CHECK(std::fabs(points[i].x - (finish.x + r * std::sin(clock))) < 1e-3);
            CHECK(std::fabs(points[i].y - (finish.y - r * std::cos(clock))) < 1e-3);
        }
        return;
    }
    FAIL("no outline");
}

} // namespace

TEST_CASE("circles and outline are to scale, texts keep clear of one another, in every job") {
    for (const OddJob& one : drawn_jobs()) {
        INFO(one.name);
        const Drawn drawn(one.text);
        for (std::size_t i = 0; i < drawn.job.bores.size(); ++i) {
            const Drawing drawing = drawn.drawing(i);
            check_circles(drawn.job.bores[i], drawn.plan.bores[i], drawing);
            check_outline(drawn.job.bores[i], drawn.plan.bores[i], drawing);
            CHECK(text_faults(drawing) == "");
        }
    }
}

TEST_CASE("the sizes to work to stand beside the drawing, in the units of the job") {
    const Drawn metric(demo_text("dredger-pivots.json"));
    const Drawing drawing = metric.drawing();
    const BorePlan& plan = metric.plan.bores.front();
    const auto size = [](Length radius, UnitSystem units) { return "Ø " + show(2.0 * radius, units); };
    for (const auto& text : {"boss " + size(millimetres(90), UnitSystem::metric),
                             "skim to " + size(plan.build.skim_radius, UnitSystem::metric),
                             "weld to " + size(plan.layering.end_radius, UnitSystem::metric),
                             "finish " + size(plan.build.finish_radius, UnitSystem::metric)}) {
        INFO(text);
        const auto blank = text.find("Ø");
        CHECK(drawing.has_text(text.substr(0, blank) + held_together(text.substr(blank))));
    }
    CHECK(drawing.has_text("deepest wear"));
    CHECK(drawing.has_text(show(plan.survey.largest.radius, UnitSystem::metric)));
    for (const char* mark : {"12", "3", "6", "9"})
        CHECK(drawing.has_text(mark));
    CHECK_THAT(drawing.description, Contains("Skim to") && Contains("2 layers") && Contains("finish"));
    CHECK(Drawn(demo_text("ferry-ramp-hinges.json")).drawing().has_text(held_together("Ø 3.500 in")));
}

TEST_CASE("what the job does not give is said") {
    for (const OddJob& one : odd_jobs()) {
        if (one.name == "boss not given") {
            const Drawing drawing = Drawn(one.text).drawing();
            CHECK(drawing.has_text("boss not given"));
            CHECK_THAT(drawing.description,
                       Contains("The boss is not given") && Contains("other end not given"));
        }
        if (one.name == "welded as it is") {
            const Drawing drawing = Drawn(one.text).drawing();
            CHECK(drawing.has_text("worn, welded on as it is"));
            CHECK_FALSE(drawing.has_text("skim to"));
            const BorePlan plan = Drawn(one.text).plan.bores.front();
            const auto diameter = [](Length radius) {
                return held_together("Ø " + show(2.0 * radius, UnitSystem::metric));
            };
            REQUIRE(plan.layers.back().radius_after < plan.layering.end_radius);
            CHECK(drawing.has_text("weld to " + diameter(plan.layering.end_radius)));
            CHECK(drawing.has_text("on average " + diameter(plan.layers.back().radius_after)));
            CHECK_THAT(drawing.description, Contains("No skim"));
        }
        if (one.name == "long")
            CHECK(Drawn(one.text).drawing().has_text("5 more holes"));
    }
}

TEST_CASE("a weld that ends past its size tells both sizes") {
    const Drawn drawn(demo_text("dredger-pivots.json"));
    const BorePlan& plan = drawn.plan.bores.front();
    REQUIRE(plan.build.weld_to_radius - plan.layering.end_radius > millimetres(0.1));
    const Drawing drawing = drawn.drawing();
    CHECK(drawing.has_text("asked for"));
    CHECK(drawing.has_text(held_together("Ø " + show(2.0 * plan.build.weld_to_radius, UnitSystem::metric))));
    CHECK_THAT(drawing.description, Contains("asked for"));
}

TEST_CASE("a drawing holds lines and letters alone, alike every time, and nothing that the job names") {
    const std::string name = "<script>x</script>\\\"'&amp;\u202E";
    std::string text = demo_text("barge-winch-frame.json");
    const std::string old = "\"drum side\"";
    text.replace(text.find(old), old.size(), "\"" + name + "\"");
    const Drawn drawn(text);
    const WornBore& bore = drawn.job.bores.front();
    const BorePlan& plan = drawn.plan.bores.front();
    for (const std::string& svg : {cross_section({bore, plan, UnitSystem::metric}, "a"),
                                   longitudinal_section({bore, plan, UnitSystem::metric}, "a")}) {
        CHECK(svg.find("script") == std::string::npos);
        for (const char* part :
             {"url(", "http", "<style", "href", "foreignObject", "Gradient", "filter", "@"})
            CHECK(svg.find(part) == std::string::npos);
        const std::set<std::string> known = {"svg", "title", "desc", "g", "path", "circle", "text", "tspan"};
        for (const std::string& element : drawing_of(svg).elements)
            CHECK(known.contains(element));
        // Black, white and none are all the colours there are.
        for (std::size_t at = svg.find("=\"#"); at != std::string::npos; at = svg.find("=\"#", at + 1)) {
            const std::string colour = svg.substr(at + 2, 5);
            CHECK((colour == "#000\"" || colour == "#fff\""));
        }
    }
    CHECK(cross_section({bore, plan, UnitSystem::metric}, "a") ==
          cross_section({bore, plan, UnitSystem::metric}, "a"));
}
