#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

#include <ringfill/document/document.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/say/weld_sentences.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

/// A bore of C45, planned with a stainless or hardfacing wire.
Plan laid_with(const std::string& filler, const std::string& worn = "93.4 mm") {
    return plan(
        job_from(R"json({ "format": "ringfill-job/1", "title": "Stick pins, drainage ship 2", "units": "mm",
      "procedures": { "main": { "filler": ")json" +
                 filler + R"json(", "wire": "1 mm", "gas": "M12", "wire_feed": "8 m/min",
                                "current": "180 A", "voltage": "24 V", "travel": "350 mm/min" } },
      "bores": [{ "name": "pin left", "base": "steel/C45", "finish_diameter": "90 mm", "length": "100 mm",
                  "worn": { "diameter": ")json" +
                 worn + R"json(" } }] })json"),
        shop());
}

std::string text_of(const Plan& plan) {
    return listed(metal_sentences(plan.bores.front()), " ", [](const Sentence& one) { return one.text; });
}

Document result_of(const Plan& plan) {
    return {"plan", "", plan_document(plan)};
}

} // namespace

// The rule "austenitic wire on ferritic steel" of tables/suits.json.
TEST_CASE("a filler that wants a buffer under it is told so, and the result names each that may be one") {
    const Plan plan = laid_with("stainless/ER308L");
    CHECK_THAT(text_of(plan),
               Contains("stainless/ER308L on steel/C45: with a buffer; thinned by the steel its "
                        "first layer is part martensite and cracks [suits-practice]."));
    const Document result = result_of(plan);
    CHECK(*value_at(result, "bores[0].suits.verdict").text() == "with a buffer");
    const auto* buffer = value_at(result, "bores[0].suits.buffer").list();
    REQUIRE(buffer);
    std::vector<std::string> named;
    for (const Value& one : *buffer)
        named.push_back(*one.text());
    CHECK(named == plan.bores.front().buffer);
    for (const std::string& name : named) {
        INFO(name);
        std::vector<Fault> faults;
        const Filler* filler = find_filler(shop().registry, name, "", faults);
        REQUIRE(filler);
        CHECK(filler->group == "buffer_filler");
    }
}

TEST_CASE("where ferrite is not estimated text and result say why, and give no figure") {
    const Plan plan = laid_with("hardfacing/T Fe10");
    const std::string why = "the estimate was made for metal with up to 4 % of manganese, and T Fe10 has 6.5";
    CHECK_THAT(text_of(plan), Contains("Ferrite is not estimated: " + why + "."));
    CHECK_THAT(text_of(plan), !Contains("% ferrite"));
    const Document result = result_of(plan);
    CHECK(*value_at(result, "bores[0].dilution.no_ferrite").text() == why);
}

TEST_CASE("of many layers the base metal left is told of the first five") {
    const Plan plan = laid_with("stainless/ER309L", "125 mm");
    const auto& left = plan.bores.front().dilution.value().base_left;
    REQUIRE(left.size() > 5);
    const std::string text = text_of(plan);
    const std::string begin = "base metal left, layer by layer, ";
    const std::size_t from = text.find(begin);
    REQUIRE(from != std::string::npos);
    const std::size_t end = text.find(", then less;", from);
    REQUIRE(end != std::string::npos);
    const std::string list = text.substr(from + begin.size(), end - from - begin.size());
    CHECK(std::count(list.begin(), list.end(), '%') == 5);
    CHECK_THAT(text_of(laid_with("stainless/ER309L")), !Contains("then less"));
}
