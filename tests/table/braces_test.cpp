#include <catch2/catch.hpp>

#include <ringfill/table/braces.hpp>

using namespace ringfill;

namespace {

std::string filled(std::string_view text, UnitSystem units) {
    return with_words(with_measures(text, units),
                      [](std::string_view word) { return std::string(word) + "!"; });
}

} // namespace

TEST_CASE("measures in braces are told in the units of the job, away rounded up and within rounded down") {
    CHECK(filled("Keep {35 ft} off, {clear}.", UnitSystem::metric) == "Keep 10.7 m off, clear!.");
    CHECK(filled("Keep {35 ft} off, {clear}.", UnitSystem::inch) == "Keep 35 ft off, clear!.");
    CHECK(filled("{at most 30 ft}", UnitSystem::metric) == "9.1 m");
    CHECK(filled("{30 ft}", UnitSystem::metric) == "9.2 m");
    CHECK(filled("{at most 30 ft}", UnitSystem::inch) == "30 ft");
    CHECK(filled("{10 m}", UnitSystem::inch) == "33 ft");
    CHECK(filled("{at most 10 m}", UnitSystem::inch) == "32 ft");
    CHECK(filled("{4 in}", UnitSystem::metric) == "102 mm");
    CHECK(filled("{4 in}", UnitSystem::inch) == "4 in");
    CHECK(filled("{51 degC} and {watch}", UnitSystem::inch) == "123 °F and watch!");
    CHECK(filled("{120000 ft3/h}, {100 ft/min}, {at most 300 lb}", UnitSystem::metric) ==
          "57 m³/min, 0.6 m/s, 136 kg");
    CHECK(filled("{120000 ft3/h}, {100 ft/min}, {at most 300 lb}", UnitSystem::inch) ==
          "2000 ft³/min, 100 ft/min, 300 lb");
    CHECK(filled("no brace", UnitSystem::metric) == "no brace");
    CHECK(filled("", UnitSystem::metric) == "");
}
