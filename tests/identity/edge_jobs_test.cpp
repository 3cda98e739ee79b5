// Jobs at and beyond the edges of every range: a plan that holds together, or a refusal, and nothing else.

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <typeinfo>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/document/document.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/report/page/sheet.hpp>
#include <ringfill/report/text/boring_text.hpp>
#include <ringfill/report/text/cautions_text.hpp>
#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/heat_text.hpp>
#include <ringfill/report/text/passes_text.hpp>
#include <ringfill/report/text/quote_text.hpp>
#include <ringfill/report/text/take_text.hpp>
#include <ringfill/report/text/working_text.hpp>

#include "identity/edge_job.hpp"
#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// Every view of a plan, one after the other, the document first.
std::vector<std::string> views_of(const Job& job, const Plan& plan) {
    const Style plain;
    std::vector<std::string> views = {write_json(plan_document(plan)),
                                      take_text(plan, plain),
                                      passes_text(plan, plain),
                                      heat_text(plan, plain),
                                      boring_text(plan, plain),
                                      day_text(plan, plain),
                                      cautions_text(plan, plain),
                                      quote_text(plan, plain),
                                      working_text(plan, plain),
                                      take_csv(plan),
                                      passes_csv(plan),
                                      boring_csv(plan),
                                      sheet(job, plan, shop().sources)};
    if (plan.quote)
        views.push_back(quote_csv(plan));
    return views;
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c & 0x80) != 0;
}

/// Where a text has one of the words that a number becomes when it is none.
std::string no_number_in(const std::string& text) {
    for (const char* word : {"nan", "inf", "NaN", "Inf", "NAN", "INF"})
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
            if ((at == 0 || !is_letter(text[at - 1])) && (at + 3 == text.size() || !is_letter(text[at + 3])))
                return text.substr(at > 40 ? at - 40 : 0, 80);
    return {};
}

/// Temperatures may lie under 0. A bore worn past its axis keeps no weld on one side, a groove may be cut
/// deeper than the weld, a valley may lie deeper than the stock: cautions tell it, and how much is a figure
/// with a sign. A working has signs of its own.
bool may_be_negative(const std::string& path) {
    for (const char* end : {"degC", ".weld_left_mm", ".finished_weld_mm", ".valley_stock_mm"})
        if (path.ends_with(end))
            return true;
    return path.starts_with(".working") || path.find(".inputs.") != std::string::npos;
}

std::string wrong_figure(const Value& document) {
    for (const Figure& figure : figures_of(document))
        if (!std::isfinite(figure.value) || (figure.value < 0 && !may_be_negative(figure.path)))
            return fmt::format("{} is {}", figure.path, figure.value);
    return {};
}

struct Tally {
    int planned = 0;
    int refused = 0;
    double slowest = 0; ///< s
    std::uint64_t slowest_seed = 0;
    std::vector<std::uint64_t> slow; ///< over a second
    std::map<FillerForm, int> forms; ///< of the fillers of what was planned
    int balances = 0;                ///< bores with a heat balance
    int without_balance = 0;
    int quotes = 0;
};

void count_kinds(const Plan& made, Tally& tally) {
    std::vector<Fault> faults;
    tally.quotes += made.quote ? 1 : 0;
    for (const BorePlan& bore : made.bores) {
        ++tally.forms[find_filler(shop().registry, bore.filler, "", faults)->form];
        ++(bore.heat_balance ? tally.balances : tally.without_balance);
    }
}

/// What is wrong with an answer; empty: nothing.
std::string wrong_answer(const Job& job, const Plan& made, Tally& tally) {
    if (std::string wrong = wrong_figure(plan_document(made)); !wrong.empty())
        return wrong;
    const std::vector<std::string> views = views_of(job, made);
    for (const std::string& view : views)
        if (std::string none = no_number_in(view); !none.empty())
            return "a view has no number in: " + none;
    const Plan again = plan(job, shop());
    const bool same = tally.planned % 8 == 0 ? views_of(job, again) == views
                                             : write_json(plan_document(again)) == views.front();
    if (!same)
        return "a second plan differs from the first";
    ++tally.planned;
    count_kinds(made, tally);
    return {};
}

std::string wrong_refusal(const Document& document, const Faulty& faulty) {
    if (faulty.origin() != Origin::job)
        return std::string("the fault is not the job's: ") + faulty.what();
    for (const Fault& fault : locate(document, faulty.faults()))
        if (fault.reason.empty() || fault.place.line == 0)
            return "a fault without a reason or a place: " + to_string(fault);
    return {};
}

std::string wrong_with(const std::string& text, Tally& tally) {
    Document document;
    try {
        document = parse("job.json", text, Origin::job);
        const Job job = read_job(document);
        return wrong_answer(job, plan(job, shop()), tally);
    } catch (const Faulty& faulty) {
        ++tally.refused;
        return wrong_refusal(document, faulty);
    } catch (const std::exception& other) {
        return std::string(typeid(other).name()) + ": " + other.what();
    }
}

std::vector<std::string> samples() {
    std::vector<std::filesystem::path> files;
    for (const auto& file : std::filesystem::directory_iterator(RINGFILL_ROOT "/cli/demo"))
        files.push_back(file.path());
    std::sort(files.begin(), files.end());
    std::vector<std::string> texts;
    for (const auto& file : files) {
        std::ifstream in(file);
        texts.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    }
    return texts;
}

std::uint64_t from_environment(const char* name, std::uint64_t usual) {
    const char* value = std::getenv(name);
    return value ? std::strtoull(value, nullptr, 10) : usual;
}

/// Writes a job for another program to read, where a folder is named.
void keep(const std::string& text, std::uint64_t seed) {
    if (const char* folder = std::getenv("RINGFILL_EDGE_FOLDER"))
        std::ofstream(fmt::format("{}/edge_{:06}.json", folder, seed)) << text;
}

} // namespace

TEST_CASE("a job at the edges is planned in sound figures or refused with a reason", "[edge]") {
    const std::uint64_t first = from_environment("RINGFILL_EDGE_FIRST", 0);
    const std::uint64_t jobs = from_environment("RINGFILL_EDGE_JOBS", seed_step == 1 ? 600 : 60);
    const std::vector<std::string> texts = samples();
    Tally tally;
    for (std::uint64_t seed = first; seed < first + jobs; ++seed) {
        const std::string text = edge_job(seed, shop(), texts);
        keep(text, seed);
        const auto begin = std::chrono::steady_clock::now();
        const std::string wrong = wrong_with(text, tally);
        const double took = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
        if (took > tally.slowest) {
            tally.slowest = took;
            tally.slowest_seed = seed;
        }
        if (took > 1)
            tally.slow.push_back(seed);
        if (!wrong.empty())
            FAIL_CHECK("seed " << seed << ": " << wrong);
    }
    if (std::getenv("RINGFILL_EDGE_JOBS"))
        std::cout << fmt::format("{} planned, {} refused; slowest {:.2f} s (seed {}); over 1 s: {}\n",
                                 tally.planned, tally.refused, tally.slowest, tally.slowest_seed,
                                 fmt::join(tally.slow, " "));
    CHECK(tally.planned >= static_cast<int>(jobs * 3 / 10));
    CHECK(tally.refused >= static_cast<int>(jobs / 10));
    if (jobs < 500)
        return;
    CHECK(tally.forms.size() == 4); // wire, cored wire, electrode, rod
    CHECK(tally.balances > 0);
    CHECK(tally.without_balance > 0);
    CHECK(tally.quotes > 0);
}
