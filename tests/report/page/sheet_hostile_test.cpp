#include <sstream>

#include <catch2/catch.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/draw/markup.hpp>

#include "report/page/page.hpp"
#include "report/plan_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

const std::vector<std::string> hostile = {
    "<script>alert(1)</script>",
    "\"><img onerror=alert(1) src=x>",
    "' onmouseover='alert(1)",
    "&amp; &lt;b&gt; &#60;i&#62; &nbsp;",
    "</title></style></svg></table><h1>Permit</h1>",
    "]]> <!-- --> <?xml ?> <![CDATA[",
    "\u202Eretsec-teb\u202C \u200Fright\u200E \u2066isolated\u2069",
    "bell\a back\b escape\x1b[31mred delete\x7F next\u0085",
    "two\nlines\tand\r\none \u2028 parted",
    "zero\u200Bwidth \uFEFF tag\U000E0041",
    "@page { margin: 0 } */ } body { display: none }",
    std::string("broken \xC0\x9B\xFF utf"),
};

/// A plan that has the text wherever a job, a table or a plugin can bring one in.
std::pair<Job, Plan> with_text(const std::string& text) {
    Job job = job_from(small_job());
    Plan plan = ringfill::plan(job, shop());
    job.bores.front().base = text;
    job.bores.front().axis = text;
    job.bores.front().holes.push_back({millimetres(8), millimetres(50), {}, text});
    plan.title = text;
    BorePlan& bore = plan.bores.front();
    bore.name = bore.procedure = bore.filler = text;
    bore.no_balance = text;
    bore.heat.preheat.approved = text;
    for (PreheatMethod& method : bore.heat.preheat.methods)
        method.name = method.note = method.source = text;
    bore.heat.preheat.advice.push_back({"note", text, text});
    bore.boring.limits = SizeLimits{millimetres(90), millimetres(90.1), text};
    for (Need& need : plan.take) {
        need.substance = need.name = text;
        for (PackCount& pack : need.cover)
            pack.pack = text;
    }
    plan.cautions.push_back(
        {{{Concern::procedure, text}}, When::before, Matter::quality, Applies::yes, text, text, text});
    plan.cautions.push_back(
        {{{Concern::bore, text}}, When::during, Matter::life, Applies::unknown, text, text, text});
    plan.notes.push_back(text);
    plan.assumed.push_back({text, text, text});
    for (Working& work : plan.working)
        work.figure = work.formula = work.source = text;
    return {job, plan};
}

/// The elements of a page by number.
std::map<std::string, int> elements_of(const std::string& page) {
    std::map<std::string, int> counts;
    each_element(parsed(page), [&](const std::string& name, const auto&) { ++counts[name]; });
    return counts;
}

} // namespace

TEST_CASE("text stays text wherever it comes from") {
    const auto [plain_job, plain_plan] = with_text("harmless");
    const auto plain = elements_of(sheet(plain_job, plain_plan, shop().sources));
    for (const std::string& text : hostile) {
        CAPTURE(text);
        const auto [job, plan] = with_text(text);
        const std::string page = sheet(job, plan, shop().sources);
        auto counts = elements_of(page);
        CHECK(counts["img"] == 0);
        CHECK(counts["script"] == 0);
        CHECK(counts["h1"] == 1);
        auto same = plain;
        for (auto* elements : {&counts, &same})
            elements->erase("wbr"); // follow the dots of a text
        counts.erase("img");
        counts.erase("script");
        CHECK(counts == same); // no text has become an element
        std::istringstream lines(page);
        for (std::string line; std::getline(lines, line);)
            REQUIRE(printable(line, std::string::npos) == line);
    }
}

TEST_CASE("a hostile text can be read as it was written, but for what disturbs") {
    for (const std::string& text : hostile) {
        const auto [job, plan] = with_text(text);
        const auto page = parsed(sheet(job, plan, shop().sources));
        int found = 0;
        each_element(page, [&](const std::string& name, const auto& node) {
            const auto told = node.template get_optional<std::string>("<xmlattr>.data-text");
            if (name == "span" && told && *told == "title") {
                ++found;
                CHECK(node.data() == printable(text, std::string::npos));
            }
        });
        CHECK(found == 1);
    }
}

TEST_CASE("hostile names of a job file stay text") {
    for (const std::string& text : hostile) {
        if (text.find('\xC0') != std::string::npos)
            continue; // refused by the reader
        CAPTURE(text);
        std::string job = small_job();
        const auto put = [&](const std::string& old_text) {
            const std::string json = write_json(Value(text.substr(0, text.find("\U000E0041"))));
            for (std::size_t at = job.find(old_text); at != std::string::npos;
                 at = job.find(old_text, at + json.size()))
                job.replace(at, old_text.size(), json.substr(0, json.size() - 1));
        };
        put("\"Stick pins, drainage ship 2\"");
        put("\"pin left\"");
        const std::string page = sheet_of(job);
        CHECK_NOTHROW(parsed(page));
        CHECK_THAT(page, !Contains("<script") && !Contains("<img"));
    }
}

TEST_CASE("markup writes out the five characters that mean something and drops none") {
    CHECK(escape_markup("a < b & \"c\" > 'd'") == "a &lt; b &amp; &quot;c&quot; &gt; &#39;d&#39;");
    CHECK(escape_markup("\u202E\x01") == "\uFFFD\uFFFD");
    CHECK(escape_markup(std::string(5'000, 'x')).size() == 5'000);
    CHECK(element("p", "1 < 2", {{"title", "\"&\""}}).written() ==
          "<p title=\"&quot;&amp;&quot;\">1 &lt; 2</p>");
}
