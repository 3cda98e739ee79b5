#include <catch2/catch.hpp>

#include <ringfill/heat/identity.hpp>

using namespace ringfill;

namespace {

WornBore bore_with(std::vector<std::pair<std::string, double>> composition) {
    WornBore bore;
    bore.path = "bores[0]";
    bore.composition = std::move(composition);
    return bore;
}

Base base_of(const std::string& structure) {
    Base base;
    base.name = "X";
    base.structure = structure;
    base.composition = {{"Si", {0.4, "own"}}};
    return base;
}

} // namespace

// EN 10020:2000, table 1, limits of non-alloy steel; from memory. Carbon that nobody allows is another steel.
TEST_CASE("what a ferritic grade does not name is held to the limits of non-alloy steel") {
    struct Row {
        const char* element;
        double limit;
    };
    const Base base = base_of("ferritic");
    for (const Row& row : {Row{"C", 0}, Row{"Mn", 1.65}, Row{"Cr", 0.30}, Row{"Ni", 0.30}, Row{"Mo", 0.08},
                           Row{"Cu", 0.40}, Row{"V", 0.10}, Row{"Nb", 0.06}, Row{"B", 0.0008}}) {
        INFO(row.element);
        CHECK_FALSE(not_of_grade(bore_with({{row.element, row.limit * 1.1}}), base));
        CHECK(
            not_of_grade(bore_with({{row.element, row.limit * 1.11 + (row.limit > 0 ? 0 : 0.0201)}}), base));
    }
}

// Common practice, no source: over 10 % Cr, Ni or Mn, from 1.2 % C, or from 5 % Mn with over 0.5 % C.
TEST_CASE("what is no ferritic steel any more is told at its limit") {
    const auto doubted = [](std::vector<std::pair<std::string, double>> composition) {
        return identity_doubt(bore_with(std::move(composition)), base_of("ferritic")).has_value();
    };
    for (const char* element : {"Cr", "Ni", "Mn"}) {
        INFO(element);
        CHECK_FALSE(doubted({{"C", 0.1}, {element, 10}}));
        CHECK(doubted({{"C", 0.1}, {element, 10.1}}));
    }
    CHECK_FALSE(doubted({{"C", 1.19}}));
    CHECK(doubted({{"C", 1.2}}));
    CHECK_FALSE(doubted({{"C", 0.8}, {"Mn", 4.9}}));
    CHECK(doubted({{"C", 0.51}, {"Mn", 5}}));
    CHECK_FALSE(doubted({{"C", 0.5}, {"Mn", 5}}));
}

TEST_CASE("a certificate at the limit of its grade is of it, one a little past it is not") {
    Base base = base_of("austenitic");
    base.composition = {{"C", {0.15, "own"}}};
    base.composition_min = {{"Cr", {17.5, "own"}}};
    CHECK_FALSE(identity_doubt(bore_with({{"C", 0.15}, {"Cr", 17.5}}), base));
    CHECK(identity_doubt(bore_with({{"C", 0.1505}}), base));
    CHECK(identity_doubt(bore_with({{"Cr", 17.4995}}), base));
    CHECK_FALSE(dirty_steel(bore_with({{"Si", 0.9}}), base));
    base.composition = {{"P", {0.045, "own"}}};
    CHECK_FALSE(dirty_steel(bore_with({{"P", 0.045}}), base));
    CHECK(dirty_steel(bore_with({{"P", 0.0455}}), base) == "P 0.0455 % is over the 0.045 % of X");
}

TEST_CASE("the least that machine steel holds is a whole certificate's") {
    const auto faults = [](const char* element, double percent) {
        return certificate_faults(bore_with({{element, percent}}), base_of("ferritic")).size();
    };
    CHECK(faults("C", 0.02) == 0);
    CHECK(faults("C", 0.0199) == 1);
    CHECK(faults("Mn", 0.1) == 0);
    CHECK(faults("Mn", 0.099) == 1);
}
