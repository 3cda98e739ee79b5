#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "published/composition_limits.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// A case a standard.
TEST_CASE("compositions lie inside the limits of EN 10025-2") {
    CHECK(judge("EN 10025-2") == 4);
}
TEST_CASE("compositions lie inside the limits of EN 10025-6") {
    CHECK(judge("EN 10025-6") == 1);
}
TEST_CASE("compositions lie inside the limits of EN ISO 683-1") {
    CHECK(judge("EN ISO 683-1") == 1);
}
TEST_CASE("compositions lie inside the limits of EN ISO 683-2") {
    CHECK(judge("EN ISO 683-2") == 2);
}
TEST_CASE("compositions lie inside the limits of EN 10293") {
    CHECK(judge("EN 10293") == 1);
}
TEST_CASE("compositions lie inside the limits of EN 10028-2") {
    CHECK(judge("EN 10028-2") == 3);
}
TEST_CASE("compositions lie inside the limits of EN 10216-2") {
    CHECK(judge("EN 10216-2") == 1);
}
TEST_CASE("compositions lie inside the limits of EN 10028-4") {
    CHECK(judge("EN 10028-4") == 2);
}
TEST_CASE("compositions lie inside the limits of ASTM A36") {
    CHECK(judge("ASTM A36") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM A572") {
    CHECK(judge("ASTM A572") == 2);
}
TEST_CASE("compositions lie inside the limits of ASTM A913") {
    CHECK(judge("ASTM A913") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM A514") {
    CHECK(judge("ASTM A514") == 3);
}
TEST_CASE("compositions lie inside the limits of ASTM A27") {
    CHECK(judge("ASTM A27") == 3);
}
TEST_CASE("compositions lie inside the limits of ASTM A29") {
    CHECK(judge("ASTM A29") == 6);
}
TEST_CASE("compositions lie inside the limits of FAA ANM-112N-14-02") {
    CHECK(judge("FAA ANM-112N-14-02") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM A304") {
    CHECK(judge("ASTM A304") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM A148") {
    CHECK(judge("ASTM A148") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM A958") {
    CHECK(judge("ASTM A958") == 2);
}
TEST_CASE("compositions lie inside the limits of wear plate of 400 HB") {
    CHECK(judge("wear plate of 400 HB") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM A240") {
    CHECK(judge("ASTM A240") == 6);
}
TEST_CASE("compositions lie inside the limits of EN 10088-3") {
    CHECK(judge("EN 10088-3") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM A128") {
    CHECK(judge("ASTM A128") == 5);
}
TEST_CASE("compositions lie inside the limits of EN 1561") {
    CHECK(judge("EN 1561") == 2);
}
TEST_CASE("compositions lie inside the limits of EN 1563") {
    CHECK(judge("EN 1563") == 2);
}
TEST_CASE("compositions lie inside the limits of ASTM B127") {
    CHECK(judge("ASTM B127") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM B168") {
    CHECK(judge("ASTM B168") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM B443") {
    CHECK(judge("ASTM B443") == 1);
}
TEST_CASE("compositions lie inside the limits of ASTM B148") {
    CHECK(judge("ASTM B148") == 2);
}
TEST_CASE("compositions lie inside the limits of ASTM B584") {
    CHECK(judge("ASTM B584") == 1);
}
TEST_CASE("compositions lie inside the limits of AWS A5.18") {
    CHECK(judge("AWS A5.18") == 5);
}
TEST_CASE("compositions lie inside the limits of AWS A5.28") {
    CHECK(judge("AWS A5.28") == 8);
}
TEST_CASE("compositions lie inside the limits of EN ISO 14341") {
    CHECK(judge("EN ISO 14341") == 1);
}
TEST_CASE("compositions lie inside the limits of EN ISO 16834") {
    CHECK(judge("EN ISO 16834") == 3);
}
TEST_CASE("compositions lie inside the limits of AWS A5.20") {
    CHECK(judge("AWS A5.20") == 3);
}
TEST_CASE("compositions lie inside the limits of AWS A5.29") {
    CHECK(judge("AWS A5.29") == 1);
}
TEST_CASE("compositions lie inside the limits of AWS A5.1") {
    CHECK(judge("AWS A5.1") == 2);
}
TEST_CASE("compositions lie inside the limits of AWS A5.5") {
    CHECK(judge("AWS A5.5") == 2);
}
TEST_CASE("compositions lie inside the limits of AWS A5.9") {
    CHECK(judge("AWS A5.9") == 8);
}
TEST_CASE("compositions lie inside the limits of EN ISO 14343") {
    CHECK(judge("EN ISO 14343") == 1);
}
TEST_CASE("compositions lie inside the limits of AWS A5.22") {
    CHECK(judge("AWS A5.22") == 1);
}
TEST_CASE("compositions lie inside the limits of AWS A5.4") {
    CHECK(judge("AWS A5.4") == 1);
}
TEST_CASE("compositions lie inside the limits of AWS A5.13") {
    CHECK(judge("AWS A5.13") == 2);
}
TEST_CASE("compositions lie inside the limits of AWS A5.21") {
    CHECK(judge("AWS A5.21") == 2);
}
TEST_CASE("compositions lie inside the limits of AWS A5.15") {
    CHECK(judge("AWS A5.15") == 6);
}
TEST_CASE("compositions lie inside the limits of AWS A5.14") {
    CHECK(judge("AWS A5.14") == 4);
}
TEST_CASE("compositions lie inside the limits of AWS A5.11") {
    CHECK(judge("AWS A5.11") == 1);
}
TEST_CASE("compositions lie inside the limits of AWS A5.7") {
    CHECK(judge("AWS A5.7") == 4);
}
TEST_CASE("compositions lie inside the limits of AWS A5.6") {
    CHECK(judge("AWS A5.6") == 2);
}
TEST_CASE("compositions lie inside the limits of EN 14700") {
    CHECK(judge("EN 14700") == 12);
}

TEST_CASE("every metal and filler whose composition the tables give is held against its standard") {
    std::set<std::string> judged;
    for (const GradeLimits& limits : all_limits())
        judged.insert(limits.name);
    for (const Stated& stated : all_stated()) {
        INFO(stated.name);
        if (!stated.limits->empty() || !stated.typical->empty())
            CHECK(judged.contains(stated.name));
    }
}

// ASTM A27:1995, notes to table 1, read: for each 0.01 % of carbon under its maximum 0.04 % of manganese
// more, up to 1.40 (70-40) or 1.00 %. Carbon at 0.22 lets 70-40 go to 1.32, at 0.25 70-36 to its end of 1.00.
TEST_CASE("the trade-off of A27 stays inside the manganese that the tables let through") {
    struct Case {
        const char* grade;
        double carbon, most, end, printed;
    };
    for (const Case& one :
         {Case{"A27 70-40", 0.22, 1.20, 1.40, 1.32}, Case{"A27 70-36", 0.25, 0.70, 1.00, 1.00}}) {
        INFO(one.grade);
        const auto all = all_stated();
        const auto stated = std::find_if(all.begin(), all.end(), [&](const Stated& s) {
            return s.name == std::string("steel/") + one.grade;
        });
        REQUIRE(stated != all.end());
        const auto of = [&](const std::string& element) {
            return std::find_if(stated->limits->begin(), stated->limits->end(),
                                [&](const auto& share) { return share.first == element; })
                ->second.value;
        };
        CHECK(of("Mn") == one.end);
        CHECK_THAT(std::min(one.end, one.most + 4 * (of("C") - one.carbon)),
                   Catch::WithinAbs(one.printed, 1e-9));
    }
}
