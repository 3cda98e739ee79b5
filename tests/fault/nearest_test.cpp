#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include <ringfill/fault/nearest.hpp>

using namespace ringfill;

TEST_CASE("a mistyped name finds the known one") {
    const std::vector<std::string> known = {"stock", "skim", "overhang", "finish_diameter"};
    CHECK(nearest("stok", known) == "stock");
    CHECK(nearest("sikm", known) == "skim"); // swapped neighbours
    CHECK(nearest("Overhang", known) == "overhang");
    CHECK(nearest("finish_diamter", known) == "finish_diameter");
}

TEST_CASE("a name unlike any other finds nothing") {
    CHECK_FALSE(nearest("wire", {"stock", "skim"}));
    CHECK_FALSE(nearest(std::string(10'000, 'a'), {"stock"}));
    CHECK_FALSE(nearest("stock", {}));
}

TEST_CASE("the remedy names the nearest or lists what is known") {
    CHECK(suggest("stok", {"stock", "skim"}) == "did you mean \"stock\"?");
    CHECK(suggest("zzz", {"stock", "skim"}) == "known here: stock, skim");
    CHECK(suggest("zzz", {}) == "none is known here");
}

TEST_CASE("of very many known names the first forty are listed, and how many more there are") {
    std::vector<std::string> known;
    std::string forty;
    for (int i = 10; i < 50; ++i) {
        known.push_back("name " + std::to_string(i));
        forty += (forty.empty() ? "" : ", ") + known.back();
    }
    CHECK(suggest("zzz", known) == "known here: " + forty);
    known.insert(known.end(), {"name 50", "name 51"});
    CHECK(suggest("zzz", known) == "known here: " + forty + " and 2 more");
}

TEST_CASE("a name that goes on where the typed one ends is meant before one of another letter") {
    CHECK(nearest("steel/E7018", {"steel/E6013", "steel/E7018-H8"}) == "steel/E7018-H8");
    CHECK(nearest("finish", {"fish", "finish_diameter"}) == "finish_diameter");
    CHECK(nearest("steel/E701", {"steel/E6013", "steel/E7018-H8"}) == "steel/E6013"); // no whole name
    CHECK_FALSE(nearest("m", {"m-a", "hh"}));
}

TEST_CASE("one wrong letter alone is no likeness") {
    CHECK_FALSE(nearest("x", {"m", "h"}));
    CHECK_FALSE(nearest("", {"m", "h"}));
    CHECK(nearest("M", {"m", "h"}) == "m");
    CHECK(nearest("mn", {"mm", "cm"}) == "mm");
}

TEST_CASE("of two names equally near the first is taken") {
    CHECK(nearest("stack", {"stock", "stick"}) == "stock");
    CHECK(nearest("stack", {"stick", "stock"}) == "stick");
}
