#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/report/draw/side_view.hpp>
#include <ringfill/units/metric.hpp>

#include "report/draw/drawing_parts.hpp"
#include "report/odd_jobs.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

struct Drawn {
    Job job;
    Plan plan;
    explicit Drawn(const std::string& text) : job(job_from(text)), plan(ringfill::plan(job, shop())) {}
    std::string svg(std::size_t bore = 0) const {
        return longitudinal_section({job.bores[bore], plan.bores[bore], job.units}, "bore-1-long");
    }
    Drawing drawing(std::size_t bore = 0) const { return drawing_of(svg(bore)); }
};

std::string text_of(const std::string& name) {
    for (const OddJob& one : odd_jobs())
        if (one.name == name)
            return one.text;
    FAIL("no job " + name);
    return {};
}

} // namespace

TEST_CASE("texts of a section keep clear of one another and of the edge, in every job") {
    for (const OddJob& one : drawn_jobs()) {
        INFO(one.name);
        const Drawn drawn(one.text);
        for (std::size_t i = 0; i < drawn.job.bores.size(); ++i)
            CHECK(text_faults(drawn.drawing(i)) == "");
    }
}

TEST_CASE("the layers asked for in the odd jobs are the layers drawn") {
    CHECK(Drawn(text_of("two layers")).plan.bores.front().layers.size() == 2);
    CHECK(Drawn(text_of("ten layers")).plan.bores.front().layers.size() == 10);
    CHECK(Drawn(text_of("forty layers")).plan.bores.front().layers.size() == 40);
    const Drawing ten = Drawn(text_of("ten layers")).drawing();
    CHECK(ten.has_text("layer 1"));
    CHECK(ten.has_text("layer 10"));
}

TEST_CASE("40 layers of 100 rings stay small") {
    const Drawn drawn(text_of("forty layers"));
    const BorePlan& plan = drawn.plan.bores.front();
    REQUIRE(plan.layers.front().rings >= 100);
    CHECK(drawn.svg().size() < 100'000);
    CHECK(cross_section({drawn.job.bores.front(), plan, UnitSystem::metric}, "a").size() < 100'000);
}

TEST_CASE("each ring of each layer is a bead where beads can be seen, at the radius and pitch planned") {
    const Drawn drawn(demo_text("dredger-pivots.json"));
    const BorePlan& plan = drawn.plan.bores.front();
    const DrawnBore bore{drawn.job.bores.front(), plan, UnitSystem::metric};
    const RingRow& row = bore.row;
    const std::string last = layer_path({bore, 2, 10, 100}, bore.layers(), row.end());
    const auto beads = [](const std::string& path) { return std::count(path.begin(), path.end(), 'q'); };
    CHECK(beads(last) == plan.layers.back().rings);
    for (std::size_t layer = 1; layer < plan.layers.size(); ++layer)
        CHECK(beads(layer_path({bore, 2, 10, 100}, layer, row.end())) == plan.layers.front().rings);
    CHECK(row.begin == -3);
    CHECK(row.end() >= 103);
    CHECK(row.end() - row.pitch < 103);
    // A parabola from valley to valley is two thirds of its depth high on average: that is the radius.
    const auto start = points_of(last.substr(0, last.find('q'))).front();
    const double valley = 2 * row.valley;
    CHECK(std::fabs(start.y + 2.0 / 3 * valley - (100 - 2 * bore.end)) < 2e-3);
    CHECK(std::fabs(start.x - 4) < 1e-3);
    // Small beads are not drawn one by one.
    CHECK(beads(layer_path({bore, 0.1, 10, 100}, bore.layers(), row.end())) == 0);
}

TEST_CASE("lengths, faces and ring numbers stand in the section") {
    const Drawn drawn(demo_text("dredger-pivots.json"));
    const Drawing drawing = drawn.drawing();
    for (const char* text : {"near face", "far face", "wall, skimmed", "worn surface", "layer 1", "layer 2"})
        CHECK(drawing.has_text(text));
    for (const char* text : {"100.0 mm", "106.0 mm", "3.0 mm", "Ø 90.0 mm"})
        CHECK(drawing.has_text(held_together(text)));
    CHECK(drawing.has_text(fmt::format("{}", drawn.plan.bores.front().layers.front().rings)));
    CHECK_THAT(drawing.description,
               Contains(fmt::format("{} rings a layer", drawn.plan.bores.front().layers.front().rings)));
    CHECK(Drawn(demo_text("ferry-ramp-hinges.json")).drawing().has_text(held_together("2.750 in")));
}

TEST_CASE("holes, grooves, faces and plates are told, and what the job does not say about them") {
    const Drawing every = Drawn(demo_text("every-field.json")).drawing();
    CHECK(every.has_text("Hole H1: " + held_together("Ø 10.0 mm")));
    CHECK(every.has_text("Groove 1: " + held_together("Ø 96.0 mm")));
    CHECK_THAT(every.description, Contains("filled first, cut again after boring") &&
                                      Contains("The job does not say where along the bore.") &&
                                      Contains("The job does not say which face; drawn at the near one.") &&
                                      Contains("stands on the boss, not drawn"));
    const Drawing faces = Drawn(text_of("short with wide faces")).drawing();
    CHECK_THAT(faces.description,
               Contains("drawn at the far one") && Contains("gone with the skim, nothing to fill"));
    CHECK_THAT(Drawn(text_of("welded as it is")).drawing().description,
               Contains("the first is drawn thicker than it is laid"));
    CHECK_THAT(Drawn(text_of("long")).drawing().description, Contains("3 more holes are drawn"));
}
