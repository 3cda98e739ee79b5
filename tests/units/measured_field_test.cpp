#include <catch2/catch.hpp>

#include <array>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/measure.hpp>
#include <ringfill/units/measured_field.hpp>

using namespace ringfill;
using Catch::WithinRel;

namespace {

constexpr std::array fields = {
    Field{.name = "diameter", .kind = Kind::length, .span = {0, 10, true}},
    Field{.name = "offset", .kind = Kind::length, .span = {-1, 1}},
    Field{.name = "radii",
          .kind = Kind::length,
          .shape = Shape::list,
          .span = {0, 10, true},
          .least = 1,
          .most = 9},
    Field{.name = "stock",
          .kind = Kind::length,
          .span = {0, 1},
          .fallback = "2 mm",
          .fallback_source = "practice"},
    Field{.name = "ambient",
          .kind = Kind::temperature,
          .span = {factor::celsius_zero - 60, factor::celsius_zero + 60}},
    Field{.name = "current", .kind = Kind::current, .span = {0, 1'000, true}},
    Field{.name = "travel", .kind = Kind::speed, .span = {0, 1, true}},
    Field{.name = "reserve", .kind = Kind::share, .span = {0, 1}},
    Field{.name = "count", .kind = Kind::count, .span = {1, 100}},
    Field{.name = "title"},
};
constexpr Record record{"a thing", "", fields};

/// One text read as a thing whose bare lengths are in a unit (0: none).
struct Read {
    explicit Read(const std::string& text, double bare_length = 1e-3)
        : document(parse("f", text, Origin::job)), reading{document}, entry(reading, document.root, record) {
        reading.bare_length = bare_length;
    }

    /// The faults without their excerpts, one a line.
    std::string faults() {
        std::string all;
        for (Fault fault : reading.faults) {
            fault.excerpt.clear();
            all += to_string(fault) + '\n';
        }
        return all;
    }

    std::optional<double> si(std::string_view name) const {
        const Field& field = entry.field(name);
        const Value* value = entry.find(field);
        return value ? measured_si(entry.spot(field, *value), field) : std::nullopt;
    }
    std::vector<double> all_si(std::string_view name) const {
        std::vector<double> list;
        for (const Length& one : quantity<std::vector<Length>>(name))
            list.push_back(one.value());
        return list;
    }
    /// What a member that is a quantity, or holds some, gets from a field.
    template <class T>
    T quantity(std::string_view name) const {
        T to{};
        CHECK(FieldOf<T>::fill(entry, entry.field(name), to));
        return to;
    }

    Document document;
    Reading reading;
    Entry entry;
};

/// What one field of a text is refused with.
std::string refused(const std::string& name, const std::string& value, double bare_length = 1e-3) {
    Read read("{\"" + name + "\": " + value + "}", bare_length);
    CHECK_FALSE(read.si(name));
    return read.faults();
}

} // namespace

TEST_CASE("quantities come back in SI, bare lengths in the units of the job") {
    const std::string text =
        R"({"diameter": "3-9/16 in", "offset": -0.4, "radii": [46.1, "46 mm"], "ambient": "-4 degC", "reserve": "10 %"})";
    Read read(text);
    CHECK_THAT(*read.si("diameter"), WithinRel(3.5625 * 0.0254, 1e-15));
    CHECK_THAT(read.quantity<Length>("offset").value(), WithinRel(-0.4e-3, 1e-15));
    REQUIRE(read.quantity<std::vector<Length>>("radii").size() == 2);
    CHECK_THAT(read.all_si("radii")[0], WithinRel(46.1e-3, 1e-15));
    CHECK_THAT(read.quantity<Temperature>("ambient").value(), WithinRel(269.15, 1e-15));
    CHECK_THAT(*read.si("reserve"), WithinRel(0.1, 1e-15));
    CHECK(read.faults().empty());
    Read inches(text, factor::inch);
    CHECK_THAT(*inches.si("offset"), WithinRel(-0.4 * 0.0254, 1e-15));
    CHECK_THAT(inches.all_si("radii")[1], WithinRel(46e-3, 1e-15));
}

TEST_CASE("an absent quantity is nothing, or the fallback, noted") {
    Read read("{}");
    CHECK_FALSE(read.si("diameter"));
    CHECK(read.reading.assumed.empty());
    CHECK_THAT(read.quantity<Length>("stock").value(), WithinRel(2e-3, 1e-15));
    REQUIRE(read.reading.assumed.size() == 1);
    CHECK(read.reading.assumed[0].path == "stock");
    CHECK(read.reading.assumed[0].value == "2 mm");
    CHECK(read.reading.assumed[0].source == "practice");
}

// 90.4 / 25.4 = 3.5591, 3.559 * 25.4 = 90.3986; the job's own unit comes first.
TEST_CASE("a length without unit is told in both systems") {
    CHECK(refused("diameter", R"("90.4")") ==
          "f:1:14: diameter: \"90.4\" has no unit; write \"90.4 mm\" or \"3.559 in\"\n");
    CHECK(refused("diameter", R"("3.559")", factor::inch) ==
          "f:1:14: diameter: \"3.559\" has no unit; write \"3.559 in\" or \"90.3986 mm\"\n");
    CHECK(refused("offset", R"("-0.5")") ==
          "f:1:12: offset: \"-0.5\" has no unit; write \"-0.5 mm\" or \"-0.01969 in\"\n");
    CHECK(refused("diameter", R"("90.4")", 0) ==
          "f:1:14: diameter: \"90.4\" has no unit; write \"90.4 mm\" or \"90.4 in\"\n");
}

TEST_CASE(
    "another quantity without unit is told what a unit is, and none is chosen where there are several") {
    CHECK(refused("current", "180") == "f:1:13: current: 180 has no unit; write \"180 A\"\n");
    CHECK(refused("current", "\"180\"") == "f:1:13: current: \"180\" has no unit; write \"180 A\"\n");
    CHECK(refused("reserve", "10") == "f:1:13: reserve: 10 has no unit; write \"10 %\"\n");
    CHECK(refused("reserve", "0.07") ==
          "f:1:13: reserve: 0.07 has no unit; write \"7 %\" or \"0.07 %\", whichever is meant\n");
    CHECK(refused("reserve", "0") == "f:1:13: reserve: 0 has no unit; write \"0 %\"\n");
    CHECK(refused("ambient", "40") ==
          "f:1:13: ambient: 40 has no unit; write a temperature such as \"180 degC\" or \"350 degF\"\n");
    CHECK(refused("travel", "\"350\"") ==
          "f:1:12: travel: \"350\" has no unit; write a speed such as \"350 mm/min\" or \"14 in/min\"\n");
    CHECK(refused("diameter", "90.4", 0) ==
          "f:1:14: diameter: 90.4 has no unit; write a length such as \"90.4 mm\" or \"3-9/16 in\"\n");
}

TEST_CASE("what measures nothing keeps the reason of the text") {
    for (const std::string text : {"90,4 mm", "90.4 degC"}) {
        const auto fault = std::get<NotMeasured>(measure(text, Kind::length));
        CHECK(refused("diameter", '"' + text + '"') ==
              fmt::format("f:1:14: diameter: \"{}\" {}; {}\n", text, fault.reason, fault.remedy));
    }
}

TEST_CASE("another kind of value is told what to write") {
    CHECK(refused("diameter", "[90.4]") ==
          "f:1:14: diameter: is a list; write a length such as \"90.4 mm\" or \"3-9/16 in\"\n");
    CHECK(refused("current", "true") ==
          "f:1:13: current: is true or false; write a current such as \"180 A\"\n");
    CHECK(refused("current", "null") == "f:1:13: current: is null; write a current such as \"180 A\"\n");
}

TEST_CASE("a value out of range is told the range, in the unit that its kind is told in") {
    CHECK(refused("diameter", "\"0 mm\"") ==
          "f:1:14: diameter: \"0 mm\" is out of range; give a value over 0 mm and at most 10000 mm\n");
    CHECK(refused("diameter", "10001") ==
          "f:1:14: diameter: 10001 is out of range; give a value over 0 mm and at most 10000 mm\n");
    CHECK(refused("ambient", "\"-70 degC\"") ==
          "f:1:13: ambient: \"-70 degC\" is out of range; give a value from -60 degC to 60 degC\n");
    CHECK(refused("ambient", "\"1000 degF\"") ==
          "f:1:13: ambient: \"1000 degF\" is out of range; give a value from -60 degC to 60 degC\n");
    CHECK(refused("reserve", "\"110 %\"") ==
          "f:1:13: reserve: \"110 %\" is out of range; give a value from 0 % to 100 %\n");
}

TEST_CASE("faulty elements of a list are noted one by one and left out") {
    Read read(R"({"radii": [46.1, "46", "x", 0, "47 mm"]})");
    CHECK(read.all_si("radii").size() == 2);
    CHECK(read.faults() ==
          "f:1:18: radii[1]: \"46\" has no unit; write \"46 mm\" or \"1.811 in\"\n"
          "f:1:24: radii[2]: \"x\" does not begin with a number; write \"90.4 mm\" or \"3-9/16 in\"\n"
          "f:1:29: radii[3]: 0 is out of range; give a value over 0 mm and at most 10000 mm\n");
}

TEST_CASE("ranges are told for help as well") {
    CHECK(range_in_words(fields[0]) == "over 0 mm and at most 10000 mm");
    CHECK(range_in_words(fields[4]) == "from -60 degC to 60 degC");
    CHECK(range_in_words(fields[8]) == "from 1 to 100");
    CHECK(range_in_words(fields[9]).empty());
}
