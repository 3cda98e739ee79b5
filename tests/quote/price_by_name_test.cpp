#include <catch2/catch.hpp>

#include <ringfill/quote/price_by_name.hpp>

using namespace ringfill;

TEST_CASE("a name names what has its words, whole and one after another") {
    CHECK(names("contact tips", "contact tips 1.0 mm ER70S-6"));
    CHECK(names("stick", "260 °C stick"));
    CHECK(names("5 kg spool", "wire steel/ER70S-6 1.0 mm, 5 kg spool"));
    CHECK(names("1.0 mm 5 kg", "wire steel/ER70S-6 1.0 mm, 5 kg spool")); // commas part words, no more
    CHECK(names(" boring  edges, rough ", "boring edges, rough"));
    CHECK_FALSE(names("5 kg spool", "wire steel/ER70S-6 1.0 mm, 15 kg spool"));
    CHECK_FALSE(names("tip", "contact tips 1.0 mm"));
    CHECK_FALSE(names("edges boring", "boring edges, rough"));
    CHECK_FALSE(names("contact tips 1.0 mm ER70S-6 more", "contact tips 1.0 mm ER70S-6"));
    CHECK_FALSE(names("", "anything"));
    CHECK_FALSE(names(" , ", "anything"));
}

TEST_CASE("the name with the most words counts, of these the longest, wherever it stands") {
    const NamedPrices prices = {{"boring edges", {8, 0}},
                                {"spool", {1, 0}},
                                {"edges", {2, 0}},
                                {"boring edges finish", {9, 0}},
                                {"5 kg spool", {21, 0}}};
    const auto price_of = [&](std::string_view text) {
        const auto* found = price_by_name(prices, text);
        return found ? found->second.digits : -1;
    };
    CHECK(price_of("boring edges, rough") == 8);
    CHECK(price_of("boring edges, finish") == 9);
    CHECK(price_of("wire x, 5 kg spool") == 21);
    CHECK(price_of("wire x, 15 kg spool") == 1);
    CHECK(price_of("drill 10.0 mm") == -1);
    const NamedPrices alike = {{"mixture", {1, 0}}, {"cylinder", {2, 0}}};
    CHECK(price_by_name(alike, "10 L mixture cylinder")->second == Decimal{2, 0});
}
