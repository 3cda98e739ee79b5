#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("a second person and an extinguisher are loaded, with the hours that are watched") {
    FireWatch watch;
    watch.after = {in_si<Time>(3'600), "NFPA51B-2019"};
    watch.clear = {in_si<Length>(11), "NFPA51B-2019"};
    auto lines = fire_watch_needs(watch);
    REQUIRE(lines.size() == 2);
    CHECK(item(lines[0]) == "fire watch, a second person");
    CHECK(lines[0].need == 1);
    CHECK(lines[0].supplied == 1);
    CHECK(lines[0].why == "not the one who welds; from the first flame to 1 h 00 min after the last heat");
    CHECK(lines[0].source == "NFPA51B-2019");
    CHECK(item(lines[1]) == "extinguisher 2-A:20-B:C");

    watch = watch_over(watch, {{in_si<Time>(0), in_si<Time>(7'200)}});
    lines = fire_watch_needs(watch);
    CHECK(lines[0].why ==
          "not the one who welds; from the first flame to 1 h 00 min after the last heat, 3 h 00 min in all");
}

// Nobody watches well for more than 8 h [common practice, no source]; one hour of the watch follows the heat.
TEST_CASE("a watch of more than eight hours asks for relief") {
    const auto why = [](double seconds) {
        FireWatch watch;
        watch.after = {in_si<Time>(3'600), "NFPA51B-2019"};
        watch = watch_over(watch, {{in_si<Time>(0), in_si<Time>(seconds - 3'600)}});
        return fire_watch_needs(watch)[0].why;
    };
    CHECK_THAT(why(8 * 3'600), Catch::EndsWith("8 h 00 min in all"));
    CHECK_THAT(why(8 * 3'600 + 4), Catch::EndsWith(": more than one can watch, so bring relief"));
}

TEST_CASE("the one who watches and the extinguisher are counted once") {
    for (const Need& line : fire_watch_needs(FireWatch())) {
        CHECK(line.reserve == 0);
        for (const Working& work : line.working)
            for (const Input& input : work.inputs)
                if (input.symbol == "n" || input.symbol == "c")
                    CHECK(input.values() == std::vector<double>{1});
    }
}
