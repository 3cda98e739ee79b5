#include <filesystem>
#include <map>
#include <regex>
#include <set>

#include <catch2/catch.hpp>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/say/sentence.hpp>

#include "report/page/page.hpp"
#include "report/plan_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

std::map<std::string, std::string> demo_pages() {
    std::map<std::string, std::string> pages;
    for (const auto& file : std::filesystem::directory_iterator(std::string(RINGFILL_ROOT) + "/cli/demo"))
        if (file.path().extension() == ".json")
            pages[file.path().filename()] = sheet_of(read_whole(file.path().string(), job_file_limit));
    return pages;
}

std::size_t count_of(const std::string& text, const std::string& wanted) {
    std::size_t count = 0;
    for (std::size_t at = text.find(wanted); at != std::string::npos; at = text.find(wanted, at + 1))
        ++count;
    return count;
}

/// What the page would ask a network, a script engine or another file for.
const std::vector<std::string> reaches_out = {"http",    "<script",   "url(",        "@import",
                                              " src=",   " href=\"h", "<img",        "<link",
                                              "<iframe", "<object",   "javascript:", "<foreignObject"};

} // namespace

TEST_CASE("the sheet of every demo is well-formed and reaches out for nothing") {
    const auto pages = demo_pages();
    REQUIRE(pages.size() >= 5);
    for (const auto& [name, page] : pages) {
        CAPTURE(name);
        CHECK_NOTHROW(parsed(page));
        for (const std::string& word : reaches_out) {
            CAPTURE(word);
            CHECK(page.find(word) == std::string::npos);
        }
        CHECK_FALSE(std::regex_search(page, std::regex("<[^>]* on[a-z]+=")));
        CHECK_FALSE(std::regex_search(page, std::regex("href=\"[^#]"))); // ways within the page only
    }
}

TEST_CASE("it says first that it is no permit, and last what prevails") {
    const std::string page = sheet_of(small_job());
    CHECK(page.starts_with("<!DOCTYPE html>\n<html lang=\"en-GB\">"));
    CHECK_THAT(page, Contains("<title>Hot-work notes, not a permit: Stick pins, drainage ship 2</title>"));
    CHECK_THAT(page, Contains("<h1>Hot-work notes, not a permit</h1>"));
    const std::string closing_line(closing());
    CHECK(page.ends_with("<footer><p>" + closing_line + "</p></footer></body></html>\n"));
    CHECK_THAT(page, Contains("@bottom-left { content: \"" + closing_line + "\""));
    for (const char* word : {"ermit number", "ermit no", "ignature", "signed by"})
        CHECK_THAT(page, !Contains(word));
}

TEST_CASE("headings stand in their order and every table has a caption and heads") {
    for (const auto& [name, page] : demo_pages()) {
        CAPTURE(name);
        int rank = 0;
        int first = 0;
        each_element(parsed(page), [&](const std::string& element, const auto& node) {
            if (element.size() == 2 && element[0] == 'h' && element[1] >= '1' && element[1] <= '6') {
                CHECK(element[1] - '0' <= rank + 1);
                rank = element[1] - '0';
                first += rank == 1 ? 1 : 0;
            }
            if (element == "table") {
                CHECK(node.front().first == "<xmlattr>");
                CHECK(node.count("caption") == 1);
                CHECK(node.count("thead") == 1);
            }
            if (element == "th")
                CHECK((node.template get<std::string>("<xmlattr>.scope") == "col" ||
                       node.template get<std::string>("<xmlattr>.scope") == "row"));
        });
        CHECK(first == 1);
    }
}

TEST_CASE("no id stands twice in a page") {
    for (const auto& [name, page] : demo_pages()) {
        CAPTURE(name);
        std::set<std::string> ids;
        each_element(parsed(page), [&](const std::string&, const auto& node) {
            if (const auto id = node.template get_optional<std::string>("<xmlattr>.id"))
                CHECK(ids.insert(*id).second);
        });
        CHECK_FALSE(ids.empty());
    }
}

TEST_CASE("every source named in brackets is told with how it is known") {
    Bibliography sources = shop().sources;
    for (const Family& family : shop().registry.families())
        sources.insert(family.sources.begin(), family.sources.end());
    const Job job = job_from(small_job());
    const Plan plan = ringfill::plan(job, shop());
    const std::string page = sheet(job, plan, sources);
    const std::size_t told = page.find("<h2 id=\"sources\">Sources</h2>");
    REQUIRE(told != std::string::npos);
    for (const Caution& caution : plan.cautions)
        if (caution.applies == Applies::yes)
            CHECK_THAT(page, Contains(">" + caution.source + "</th>"));
    for (const Working& work : plan.working)
        CHECK_THAT(page, Contains(">" + work.source + "</th>"));
    for (const PreheatMethod& method : plan.bores.front().heat.preheat.methods)
        CHECK_THAT(page, Contains(">" + method.source + "</th>"));
    CHECK_THAT(page, Contains(">memory</td></tr>") && Contains(">restated</td></tr>"));
    CHECK_THAT(page, !Contains(">EN10088-1</th>")); // nobody names it
}

TEST_CASE("each caution stands once: with its bore or with the job, and by its time") {
    const Job job = job_from(small_job());
    Plan plan = ringfill::plan(job, shop());
    plan.cautions = {{{{Concern::bore, "pin left"}},
                      When::before,
                      Matter::quality,
                      Applies::yes,
                      "grind it",
                      "rust",
                      "practice"},
                     {{}, When::after, Matter::fire, Applies::yes, "look again", "it smoulders", "practice"},
                     {{}, When::during, Matter::life, Applies::yes, "stay out", "it turns", "practice"},
                     {{},
                      When::before,
                      Matter::life,
                      Applies::unknown,
                      "Take them off.",
                      "not said",
                      "practice",
                      "the tyres",
                      "site.near"},
                     {{{Concern::bore, "pin left"}},
                      When::during,
                      Matter::quality,
                      Applies::unknown,
                      "Cool it.",
                      "not said",
                      "practice",
                      "the seal",
                      "site.near"}};
    const std::string page = sheet(job, plan, shop().sources);
    for (const Caution& caution : plan.cautions)
        CHECK(count_of(page, ">" + (caution.applies == Applies::yes ? caution.text : caution.check) + "<") ==
              1);
    const auto at = [&](const std::string& text) { return page.find(text); };
    const std::size_t whole_job = at("Cautions for the whole job");
    const std::size_t unknown = at("Not stated in the job, check");
    CHECK(unknown < at("grind it")); // what concerns the whole job is read before anything is lit
    CHECK(whole_job < at("stay out"));
    CHECK(at("stay out") < at("look again"));
    CHECK(at("look again") < unknown);
    CHECK(unknown < at("the tyres"));
    CHECK(unknown < at("the seal"));
    CHECK(count_of(page, "Not stated in the job, check") == 1);
    plan.cautions.clear();
    CHECK_THAT(sheet(job, plan, shop().sources), !Contains("Not stated in the job"));
}

TEST_CASE("what stops the work stands framed above everything else") {
    const Job job = job_from(small_job("\"magnetic\": false,"));
    const Plan plan = ringfill::plan(job, shop());
    REQUIRE(plan.bores.front().heat.preheat.doubt);
    const std::string page = sheet(job, plan, shop().sources);
    const std::size_t stop =
        page.find("<p class=\"told stop\">STOP: identify the metal before any heat: pin left.</p>");
    REQUIRE(stop != std::string::npos);
    CHECK(stop < page.find("<h2"));
}

TEST_CASE("the sheet is the same text every time") {
    CHECK(sheet_of(small_job()) == sheet_of(small_job()));
}
