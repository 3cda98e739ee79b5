#include <catch2/catch.hpp>

#include <random>
#include <sstream>
#include <stdexcept>

#include <ringfill/take/offers.hpp>

#include "take/cover_judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// Whole numbers from low to high, the same on every machine.
class Draw {
  public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    std::int64_t operator()(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(high - low + 1));
    }

  private:
    std::mt19937_64 engine_;
};

/// Packs of contents 1 to 60 without prices, with, or priced in part; prices close to the contents make ties.
std::vector<Offer> random_packs(Draw& draw) {
    std::vector<Offer> packs(static_cast<std::size_t>(draw(1, 5)));
    const std::int64_t prices = draw(0, 3);
    for (Offer& pack : packs) {
        pack.content = draw(1, 60);
        if (prices == 1)
            pack.price = draw(0, 50);
        else if (prices == 2)
            pack.price = pack.content * 2 + draw(0, 1);
        else if (prices == 3 && draw(0, 1) == 1)
            pack.price = draw(1, 50);
    }
    return packs;
}

std::string told(std::int64_t need, const std::vector<Offer>& packs) {
    std::ostringstream text;
    text << "need " << need << ", packs";
    for (const Offer& pack : packs)
        text << ' ' << pack.content << " at " << pack.price.value_or(-1) << ',';
    return text.str();
}

void check_cover(std::int64_t need, const std::vector<Offer>& packs, const Merit& expected) {
    INFO(told(need, packs));
    const Cover found = cover(need, packs);
    REQUIRE(found.counts.size() == packs.size());
    for (const std::int64_t count : found.counts)
        CHECK(count >= 0);
    const Merit merit = merit_of(found, need, packs);
    CHECK(merit.cost == expected.cost);
    CHECK(merit.left == expected.left);
    CHECK(merit.packs == expected.packs);
    CHECK(found.supplied == need + merit.left);
    CHECK(found.packs == merit.packs);
}

} // namespace

TEST_CASE("a cover is the best of all combinations in ten thousand random cases") {
    constexpr int cases = 10'000;
    constexpr std::int64_t most_combinations = 20'000;
    Draw draw(20);
    int partly_priced = 0;
    for (int done = 0; done < cases;) {
        const auto packs = random_packs(draw);
        const std::int64_t need = draw(1, 400);
        const auto best = best_by_trying(need, packs, most_combinations);
        if (!best)
            continue; // too many to try; the next test judges those
        check_cover(need, packs, *best);
        partly_priced += !all_priced(packs) && packs.front().price ? 1 : 0;
        ++done;
    }
    CHECK(partly_priced > 100);
}

TEST_CASE("a cover is the best by amounts in ten thousand random cases") {
    Draw draw(21);
    for (int done = 0; done < 10'000; ++done) {
        const auto packs = random_packs(draw);
        const std::int64_t need = draw(1, 400);
        check_cover(need, packs, best_by_amounts(need, packs));
    }
}

TEST_CASE("the two judges agree with each other") {
    Draw draw(22);
    for (int done = 0; done < 1'000; ++done) {
        const auto packs = random_packs(draw);
        const std::int64_t need = draw(1, 200);
        INFO(told(need, packs));
        if (const auto tried = best_by_trying(need, packs, 20'000))
            CHECK(*tried == best_by_amounts(need, packs));
    }
}

TEST_CASE("a large need of packs without a common measure is covered exactly") {
    const std::vector<std::vector<std::int64_t>> contents = {
        {4535, 14968}, {997, 1009}, {5000, 15000}, {999, 1000, 1001}, {2057, 4124, 10315}, {7, 3001}, {1499}};
    for (const auto& sizes : contents)
        for (const std::int64_t need : {99'991, 250'001, 400'000}) {
            std::vector<Offer> packs;
            for (const std::int64_t content : sizes)
                packs.push_back({content, std::nullopt});
            check_cover(need, packs, best_by_amounts(need, packs));
            for (std::size_t i = 0; i < packs.size(); ++i)
                packs[i].price = packs[i].content * 42 + 1000 * static_cast<std::int64_t>(i);
            check_cover(need, packs, best_by_amounts(need, packs));
            packs.front().price = packs.front().content * 45; // the small pack is dear
            check_cover(need, packs, best_by_amounts(need, packs));
        }
}

TEST_CASE("random large needs are covered exactly") {
    Draw draw(23);
    for (int done = 0; done < 60; ++done) {
        std::vector<Offer> packs(static_cast<std::size_t>(draw(1, 4)));
        const bool priced = draw(0, 1) == 1;
        for (Offer& pack : packs) {
            pack.content = draw(500, 3000);
            if (priced)
                pack.price = pack.content * 10 + draw(-400, 400);
        }
        const std::int64_t need = draw(1, 300'000);
        check_cover(need, packs, best_by_amounts(need, packs));
    }
}

// Worked by hand. Spools of 5 and 15 kg for 21 kg: 15 + 5 + 5 is 25, two of 15 are 30; the fewest is two, and
// one more may save wire.
TEST_CASE("one pack more than the fewest may leave less over") {
    const Cover found = cover(21, {{5, {}}, {15, {}}});
    CHECK(found.counts == std::vector<std::int64_t>{2, 1});
    CHECK(found.supplied == 25);
    CHECK(found.packs == 3);
}

// Worked by hand. For 31 of 5 and 15: the fewest is three (45); 15 + 15 + 5 is three as well and leaves 4.
TEST_CASE("two packs more than the fewest are too many to carry") {
    // 10 ones would leave nothing over, but one of 15 and one of 1 is as far as it goes.
    CHECK(cover(10, {{1, {}}, {15, {}}}).counts == std::vector<std::int64_t>{0, 1});
    CHECK(cover(31, {{5, {}}, {15, {}}}).counts == std::vector<std::int64_t>{1, 2});
}

// Worked by hand: three at 10 cost 30 and leave 5; one large at 31 leaves 0: least cost comes first. At 30
// the large one leaves less over.
TEST_CASE("with prices the least cost comes before the least left over") {
    CHECK(cover(10, {{5, 10}, {15, 31}}).counts == std::vector<std::int64_t>{2, 0});
    CHECK(cover(15, {{5, 10}, {15, 31}}).counts == std::vector<std::int64_t>{3, 0});
    CHECK(cover(15, {{5, 10}, {15, 30}}).counts == std::vector<std::int64_t>{0, 1});
    CHECK(cover(12, {{6, 15}, {15, 30}}).counts == std::vector<std::int64_t>{2, 0});
}

TEST_CASE("a need priced in part counts as unpriced") {
    const std::vector<Offer> in_part = {{5, 1}, {15, {}}};
    CHECK(cover(30, in_part).counts == cover(30, {{5, {}}, {15, {}}}).counts);
    CHECK(cover(30, in_part).counts == std::vector<std::int64_t>{0, 2});
}

TEST_CASE("nothing needed and nothing offered is an empty cover") {
    CHECK(cover(0, {{5, {}}}).counts == std::vector<std::int64_t>{0});
    CHECK(cover(-3, {{5, 7}}).counts == std::vector<std::int64_t>{0});
    CHECK(cover(0, {{5, {}}}).packs == 0);
    CHECK(cover(10, {}).counts.empty());
    CHECK(cover(10, {}).supplied == 0);
}

TEST_CASE("packs given away are taken without harm") {
    CHECK(cover(12, {{5, 0}, {7, 0}}).counts == std::vector<std::int64_t>{1, 1});
}

TEST_CASE("a pack that holds nothing is an error of the program") {
    CHECK_THROWS_AS(cover(10, {{0, {}}}), std::logic_error);
    CHECK_THROWS_AS(cover(10, {{5, {}}, {-1, {}}}), std::logic_error);
}

// Past all reason, a whole number would overflow: it is held, and such a job refused later.
TEST_CASE("a need is rounded up to whole units and held where it is past all reason") {
    CHECK(whole_up(12.3) == 13);
    CHECK(whole_up(12 + 1e-9) == 12);
    CHECK(whole_up(0) == 0);
    CHECK(whole_up(1e30) == 1'000'000'000'000'000);
}

TEST_CASE("the price of a pack is held where it is past all reason") {
    CHECK(pack_price(12.34567) == 123'457);
    CHECK(pack_price(1e8 * 2'000) == 1'000'000'000'000);
}
