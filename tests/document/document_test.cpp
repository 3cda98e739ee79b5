#include <catch2/catch.hpp>

#include <ringfill/document/parse.hpp>

using namespace ringfill;

namespace {

const Document& sample() {
    static const Document document =
        parse("job.json", "{\n  \"title\": \"Ø\",\n  \"bores\": [1.50, {\"worn\": {\"d\": true}}, [null]]\n}",
              Origin::job);
    return document;
}

std::string place_of(std::string_view path) {
    return to_string(place_at(sample().text, value_at(sample(), path).begin));
}

} // namespace

TEST_CASE("a path leads to its value") {
    CHECK(place_of("") == "1:1");
    CHECK(place_of("title") == "2:12");
    CHECK(place_of("bores[0]") == "3:13");
    CHECK(place_of("bores[1].worn.d") == "3:34");
    CHECK(place_of("bores[2][0]") == "3:43");
}

TEST_CASE("a path that leads nowhere ends at the last value on its way") {
    CHECK(place_of("absent") == "1:1");
    CHECK(place_of("bores[7]") == place_of("bores"));
    CHECK(place_of("bores[1].absent.more") == place_of("bores[1]"));
    CHECK(place_of("title.more") == place_of("title"));
    CHECK(place_of("bores[") == place_of("bores"));
    CHECK(place_of("bores[99999999999999999999]") == place_of("bores"));
    CHECK(place_of("..") == "1:1");
}

TEST_CASE("a value is shown as it was typed") {
    CHECK(as_written(sample(), value_at(sample(), "bores[0]")) == "1.50");
    CHECK(as_written(sample(), value_at(sample(), "title")) == "\"Ø\"");
    CHECK(as_written(sample(), value_at(sample(), "bores[1].worn.d")) == "true");
    CHECK(as_written(sample(), value_at(sample(), "bores")) == "a list");
    CHECK(as_written(sample(), value_at(sample(), "bores[1]")) == "an object");
    CHECK(as_written(sample(), value_at(sample(), "bores[2][0]")) == "null");
}

TEST_CASE("faults that know only their path are placed, others stay") {
    Fault placed = fault_at_path("bores[0]", "1.50", "is wrong", "");
    placed.place.line = 9;
    placed.place.file = "other.json";
    const auto found =
        locate(sample(), {fault_at_path("bores[1].worn.d", "true", "is wrong", "leave it out"), placed});
    CHECK(to_string(found[0]) == "job.json:3:34: bores[1].worn.d: true is wrong; leave it out\n"
                                 "      \"bores\": [1.50, {\"worn\": {\"d\": true}}, [null]]\n"
                                 "                                     ^");
    CHECK(to_string(found[1]) == "other.json:9:0: bores[0]: 1.50 is wrong");
}
