#include <catch2/catch.hpp>

#include <set>

#include <ringfill/report/text/passes_text.hpp>

#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

Plan plan_of(const std::string& filler, const std::string& base, const std::string& more = "") {
    const std::string procedure = fmt::format(
        R"("filler": "{}", "wire": "1.0 mm", "gas": "M12", "travel": "350 mm/min", "wire_feed": "7 m/min", "current": "160 A", "voltage": "21 V"{})",
        filler, more);
    std::string bore = bore_text("arm root");
    bore.replace(bore.find("steel/C45"), 9, base);
    return plan(job_from(job_text(procedure, bore)), shop());
}

std::vector<std::string> cautions_with(const Plan& planned, std::string_view words) {
    std::vector<std::string> found;
    for (const Caution& caution : planned.cautions)
        if (caution.text.find(words) != std::string::npos)
            found.push_back(caution.text);
    return found;
}

} // namespace

TEST_CASE("every filler of the product on every metal of the product has one rule") {
    std::size_t pairs = 0;
    for (const Family& metals : shop().registry.families())
        for (const Base& base : metals.bases)
            for (const Family& fillers : shop().registry.families())
                for (const Filler& filler : fillers.fillers) {
                    INFO(fillers.name << '/' << filler.name << " on " << metals.name << '/' << base.name);
                    const std::optional<Suit> rule = suit_of(shop().registry, shop().suits,
                                                             {fillers.name + "/" + filler.name, filler.group},
                                                             {metals.name + "/" + base.name, base.group});
                    REQUIRE(rule);
                    CHECK_FALSE(rule->why.empty());
                    CHECK(shop().sources.contains(rule->source));
                    ++pairs;
                }
    CHECK(pairs > 100);
}

TEST_CASE("no two rules of the product contradict each other") {
    std::set<std::pair<std::string, std::string>> told;
    std::vector<Suit> rules = shop().suits;
    for (const Family& family : shop().registry.families())
        rules.insert(rules.end(), family.suits.begin(), family.suits.end());
    for (const Suit& rule : rules)
        for (const std::string& filler : rule.fillers)
            for (const std::string& base : rule.bases) {
                INFO(rule.name << ": " << filler << " on " << base);
                CHECK(told.emplace(filler, base).second);
            }
}

TEST_CASE("steel wire on stainless steel is not advised, and a buffer wire is silent") {
    CHECK(cautions_with(plan_of("steel/ER70S-6", "stainless/304"), "it is not advised").size() == 1);
    CHECK(cautions_with(plan_of("stainless/ER309L", "steel/C45"), "it is not advised").empty());
    CHECK(cautions_with(plan_of("stainless/ER309L", "steel/C45"), "Lay a buffer first").empty());
    CHECK(cautions_with(plan_of("stainless/ER308L", "steel/C45"),
                        "Lay a buffer first, of hardfacing/T Fe10, stainless/ER309L")
              .size() == 1);
    CHECK(cautions_with(plan_of("steel/ER70S-6", "steel/unknown"), "it is not advised").size() == 1);
}

TEST_CASE("a pair that no table knows is a caution and is told in the view") {
    Shop bare = shop();
    bare.suits.clear();
    const Job job = job_with(usual + R"(, "wire_feed": "8 m/min")");
    const Plan planned = plan(job, bare);
    CHECK(cautions_with(planned, "no table says").size() == 1);
    CHECK_THAT(passes_text(planned, Style{}),
               Contains("steel/ER70S-6 on steel/C45: no table says whether it suits."));
}

TEST_CASE("the view tells the rule, dilution and ferrite of stainless layers on steel") {
    const Plan planned = plan_of("stainless/ER309L", "steel/C45", R"(, "dilution": 0.3)");
    const std::string text = passes_text(planned, Style{});
    CHECK_THAT(text, Contains("stainless/ER309L on steel/C45: recommended;") && Contains("Dilution 30 %") &&
                         Contains("[job]: base metal left, layer by") && Contains("Ferrite by Schaeffler's"));
    CHECK(cautions_with(planned, "Melt in less of the base metal").size() == 1);
    CHECK(cautions_with(plan_of("stainless/ER309L", "steel/S235JR", R"(, "dilution": 0.1)"), "Melt in less")
              .empty());
}

TEST_CASE("more dilution never gives fewer layers or more ferrite in the first") {
    int needed = 0;
    double ferrite_before = 100;
    for (const char* share : {"0.05", "0.1", "0.2", "0.3", "0.5"}) {
        const BorePlan bore =
            plan_of("stainless/ER309L", "steel/C45", fmt::format(R"(, "dilution": {})", share)).bores.front();
        CHECK(bore.dilution.value().needed >= needed);
        needed = bore.dilution->needed;
        const double first = ferrite(schaeffler(bore.layer_metals.value().layers.front()));
        CHECK(first <= ferrite_before);
        ferrite_before = first;
    }
}
