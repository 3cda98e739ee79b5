#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>
#include <numeric>

#include <ringfill/heat/surface_loss.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;
using testing::shape_of;

TEST_CASE("the wall is cut in 4 to 12 cells, the outer ones at most 4 mm thick") {
    struct Row {
        double wall_mm;
        std::size_t across;
        double first_mm;
    };
    for (const Row& row : {Row{8, 4, 2}, Row{15, 4, 3.75}, Row{20, 4, 4}, Row{40, 8, 4}, Row{190, 12, 4}}) {
        CAPTURE(row.wall_mm);
        const BossMesh mesh = boss_mesh(shape_of(100 + 2 * row.wall_mm, 100, 100));
        REQUIRE(mesh.across == row.across);
        CHECK_THAT(mesh.radii[1] - mesh.radii[0], WithinRel(row.first_mm / 1e3, 1e-9));
        CHECK_THAT(mesh.radii[row.across] - mesh.radii[row.across - 1], WithinRel(row.first_mm / 1e3, 1e-9));
        CHECK_THAT(mesh.wall(), WithinRel(row.wall_mm / 1e3, 1e-12));
        // Each cell is wider than its outer neighbour by one factor, alike from both sides.
        const double factor = (mesh.radii[2] - mesh.radii[1]) / (mesh.radii[1] - mesh.radii[0]);
        CHECK(factor >= 1 - 1e-9);
        CHECK_THAT((mesh.radii[row.across - 1] - mesh.radii[row.across - 2]) /
                       (mesh.radii[row.across] - mesh.radii[row.across - 1]),
                   WithinRel(factor, 1e-6));
    }
}

TEST_CASE("no cell is finer than 1 mm across a wall of foil") {
    CHECK(boss_mesh(shape_of(106, 100, 100)).across == 3);
    CHECK(boss_mesh(shape_of(100.2, 100, 100)).across == 1);
}

TEST_CASE("the length is cut in one cell a pitch or in whole pitches, at least 8") {
    struct Row {
        double length_mm;
        double pitch_mm;
        std::size_t along;
    };
    for (const Row& row :
         {Row{40, 5, 8}, Row{30, 5, 8}, Row{80, 5, 16}, Row{85, 5, 9}, Row{100, 5, 10}, Row{200, 5, 14},
          Row{1000, 5, 16}, Row{101, 5, 11}, Row{5, 5, 5}, Row{0.1, 5, 1}}) {
        CAPTURE(row.length_mm, row.pitch_mm);
        CHECK(boss_mesh(shape_of(200, 100, row.length_mm, row.pitch_mm)).along == row.along);
    }
}

TEST_CASE("cells and faces of a boss and its plates make up the whole") {
    BossShape shape = shape_of(200, 100, 100);
    shape.plates = {{millimetres(30), millimetres(50), millimetres(300)},
                    {millimetres(12), millimetres(100), millimetres(200), true}};
    const BossMesh mesh = boss_mesh(shape);
    const double pi = std::numbers::pi;
    const auto ring = [&](double inner, double outer) { return pi * (outer * outer - inner * inner); };
    // Of the second plate, at the far end, half lies on the boss: its whole disc counts all the same.
    CHECK_THAT(std::accumulate(mesh.volume.begin(), mesh.volume.end(), 0.0),
               WithinRel(ring(0.05, 0.1) * 0.1 + ring(0.1, 0.4) * 0.03 + ring(0.1, 0.3) * 0.012, 1e-9));
    std::map<FaceKind, double> areas;
    for (const BareFace& face : mesh.faces)
        areas[face.kind] += face.area;
    CHECK_THAT(areas[FaceKind::bore], WithinRel(2 * pi * 0.05 * 0.1, 1e-9));
    CHECK_THAT(areas[FaceKind::outside], WithinRel(2 * pi * 0.1 * (0.1 - 0.03 - 0.006), 1e-9));
    CHECK_THAT(areas[FaceKind::end], WithinRel(2 * ring(0.05, 0.1), 1e-9));
    CHECK_THAT(areas[FaceKind::plate], WithinRel(2 * ring(0.1, 0.4), 1e-9));
    CHECK_THAT(areas[FaceKind::wrapped_plate], WithinRel(2 * ring(0.1, 0.3), 1e-9));
    double joined = 0;
    for (const PlateJoin& join : mesh.joins)
        joined += join.area;
    CHECK_THAT(joined, WithinRel(2 * pi * 0.1 * 0.036, 1e-9));
    CHECK(mesh.links.size() == 2 * 13);
    CHECK_THAT(usual_reach(millimetres(30)).value(), WithinRel(0.6, 1e-12));
    CHECK_THAT(usual_reach(millimetres(120)).value(), WithinRel(1.2, 1e-12));
}

// The view factor from a ring of a cylinder's wall to its end, integrated here over the disc by the law of
// two facing surfaces, apart from the closed form.
TEST_CASE("the bore sees out by its two ends") {
    const double pi = std::numbers::pi;
    const auto seen = [&](double away, double radius) {
        double sum = 0;
        constexpr int parts = 400;
        for (int i = 0; i < parts; ++i)
            for (int j = 0; j < parts; ++j) {
                const double r = (i + 0.5) / parts * radius;
                const double angle = (j + 0.5) / parts * 2 * pi;
                const double x = radius - r * std::cos(angle); // from the wall inwards
                const double d2 = x * x + r * r * std::pow(std::sin(angle), 2) + away * away;
                sum += x * away / (pi * d2 * d2) * r * (radius / parts) * (2 * pi / parts);
            }
        return sum;
    };
    for (const double depth : {20.0, 50.0, 120.0}) {
        CAPTURE(depth);
        const double view = seen(depth, 40) + seen(150 - depth, 40);
        CHECK_THAT(bore_emissivity(depth, 150, 80), WithinRel(1 / (1 / 0.8 - 1 + 1 / view), 2e-3));
    }
    CHECK_THAT(bore_emissivity(0, 1e-9, 80), WithinAbs(0.8, 1e-9)); // a hoop sees all round
}
