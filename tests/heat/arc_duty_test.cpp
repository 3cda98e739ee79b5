#include <catch2/catch.hpp>

#include <ringfill/heat/heat_balance.hpp>

using namespace ringfill;

namespace {

double busiest(const std::vector<std::pair<double, double>>& arcs) {
    std::vector<std::pair<Time, Time>> made;
    for (const auto& [from, to] : arcs)
        made.emplace_back(in_si<Time>(from), in_si<Time>(to));
    return busiest_arc(made, in_si<Time>(600)).value();
}

} // namespace

TEST_CASE("the busiest ten minutes count short pauses only as what they are") {
    CHECK(busiest({}) == 0);
    CHECK(busiest({{500, 700}}) == 200);
    CHECK(busiest({{500, 1400}}) == 600);
    // 210 s of arc between pauses of 60 s: 210 + 60 + 210 + 60 + 60
    CHECK(busiest({{500, 710}, {770, 980}, {1040, 1250}}) == 480);
    CHECK(busiest({{0, 100}, {700, 1000}}) == 300);
}
