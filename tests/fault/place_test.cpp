#include <catch2/catch.hpp>

#include <ringfill/fault/place.hpp>

using namespace ringfill;

TEST_CASE("lines and columns count from one") {
    const std::string_view text = "a\nbc\r\n\nd";
    const auto at = [&](std::size_t offset) { return to_string(place_at(text, offset)); };
    CHECK(at(0) == "1:1");
    CHECK(at(1) == "1:2"); // the line break belongs to the line it ends
    CHECK(at(2) == "2:1");
    CHECK(at(3) == "2:2");
    CHECK(at(6) == "3:1");
    CHECK(at(7) == "4:1");
    CHECK(at(8) == "4:2");
}

TEST_CASE("an offset past the end is the end") {
    CHECK(to_string(place_at("ab\nc", 1'000)) == "2:2");
    CHECK(to_string(place_at("", 1'000)) == "1:1");
    CHECK(to_string(place_at("ab\n", 3)) == "2:1");
}

TEST_CASE("columns count characters, not bytes") {
    CHECK(to_string(place_at("ø½″x", 7)) == "1:4");        // two, two and three bytes
    CHECK(to_string(place_at("\U0001F527x", 4)) == "1:2"); // four bytes
    CHECK(to_string(place_at("a\xFF\xFEx", 3)) == "1:4");  // each byte that is no UTF-8 counts as one
    CHECK(to_string(place_at("ø\nø\"", 5)) == "2:2");
}

TEST_CASE("parts of a place that are not known are left out") {
    CHECK(to_string(Place{"job.json", 14, 22, "bores[1].worn.diameter"}) ==
          "job.json:14:22: bores[1].worn.diameter");
    CHECK(to_string(Place{"job.json", 14, 22, ""}) == "job.json:14:22");
    CHECK(to_string(Place{"job.json", 0, 0, ""}) == "job.json");
    CHECK(to_string(Place{"job.json", 0, 0, "title"}) == "job.json: title");
    CHECK(to_string(Place{"", 14, 22, "title"}) == "14:22: title");
    CHECK(to_string(Place{"", 0, 0, "title"}) == "title");
    CHECK(to_string(Place{}).empty());
}

TEST_CASE("a place cannot disturb a terminal") {
    CHECK(to_string(Place{"a\x1B[2Jb", 1, 2, "k\ney"}) == "a\uFFFD[2Jb:1:2: k\uFFFDey");
}

TEST_CASE("paths grow by member and by element") {
    CHECK(member_path("", "bores") == "bores");
    CHECK(member_path("bores[1]", "worn") == "bores[1].worn");
    CHECK(element_path("bores", 1) == "bores[1]");
    CHECK(element_path("", 0) == "[0]");
}
