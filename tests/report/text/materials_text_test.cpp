#include <catch2/catch.hpp>

#include <ringfill/report/text/materials_text.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::Matchers::Contains;
using Catch::Matchers::Matches;

namespace {

std::string base_page(const std::string& family, const std::string& grade) {
    const Family& found = family_of(testing::shop().registry, family + "/any");
    for (const Base& base : found.bases)
        if (base.name == grade)
            return base_text(found, base);
    FAIL("no base metal " << grade);
    return {};
}

std::string filler_page(const std::string& family, const std::string& name) {
    const Family& found = family_of(testing::shop().registry, family + "/any");
    for (const Filler& filler : found.fillers)
        if (filler.name == name)
            return filler_text(found, filler);
    FAIL("no filler " << name);
    return {};
}

} // namespace

TEST_CASE("the page of a hardfacing wire tells what its metal asks for, usually holds and wants told") {
    const std::string page = filler_page("hardfacing", "T Fe3");
    CHECK_THAT(
        page, Contains("preheat, else          300 °C to 500 °C, counted 300 °C, at most 550 °C  [EN14700]"));
    CHECK_THAT(page, Contains("usual Cr               5 %"));
    CHECK_THAT(page, Contains("- Cool it slowly under a dry blanket: its metal hardens in air. [EN14700]\n"));
    CHECK_THAT(page, Contains("- [EN14700] EN 14700 Welding consumables"));
}

TEST_CASE(
    "the page of a wire tells from what current it sprays, and of one that bears little heat the most") {
    CHECK_THAT(filler_page("steel", "ER70S-3"), Contains("1.143 mm: spray, from     220 A "));
    CHECK_THAT(filler_page("bronze", "ERCuAl-A2"), Contains("interpass maximum      150 °C  "));
}

TEST_CASE("the page of an electrode tells length, stub and mass of each size and how its rate is known") {
    const std::string page = filler_page("steel", "E7018-H8");
    CHECK(page.starts_with("steel/E7018-H8, covered electrode, AWS A5.1 E7018 H8\n  gases: none\n"));
    CHECK_THAT(page, Contains("efficiency, of core and covering with iron powder "));
    for (const char* row : {"3.2 mm: length  ", "3.2 mm: stub  ", "3.2 mm: mass of one  "})
        CHECK_THAT(page, Contains(row));
    CHECK_THAT(page, Contains("350.0 mm                  [ISO544-grip]"));
    const std::string rate = page.substr(page.find("  3.175 mm: at 120 A "));
    CHECK_THAT(rate.substr(0, rate.find('\n')),
               Matches("  3.175 mm: at 120 A +1.17 kg/h +\\[electrode-rates\\]"));
    CHECK_THAT(page, Contains(" kg/h for each 100 A  [electrode-rates]"));
    CHECK_THAT(filler_page("steel", "E6013"), Contains("efficiency, of core and covering "));
}

TEST_CASE("the page of a metal tells its least shares, what it does with heat and whose rows it takes") {
    const std::string mangan = base_page("manganese_steel", "A128-A");
    CHECK_THAT(mangan, Contains("Mn                 at least 11 %  "));
    CHECK_THAT(mangan, Contains("conductivity       13 W/(m K)"));
    CHECK_THAT(mangan, Contains("expansion          18 µm/(m K)"));
    CHECK_THAT(base_page("steel", "42CrMo4"),
               Contains("- Its rows of preheat: tabulated practice for 4140, taken for 42CrMo4.\n"
                        "  [preheat-handbooks]\n"));
}
