#include <catch2/catch.hpp>

#include <random>
#include <sstream>

#include <fmt/format.h>

#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/json/json.hpp>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// As many as the sums are tried on; every third of the random sketches comes up more than once, with other
/// prices.
constexpr std::uint64_t quotes = 10'000;

/// Prices with any decimals that the currency allows, some of them missing.
class PriceDraw {
  public:
    explicit PriceDraw(std::uint64_t seed) : engine_(seed * 2'654'435'761u + 1) {}

    std::string prices() {
        const std::pair<const char*, int> currencies[] = {{"EUR", 2}, {"JPY", 0}, {"KWD", 3}, {"USD", 2}};
        const auto [code, exponent] = currencies[engine_() % 4];
        decimals_ = exponent + 2;
        std::string text =
            fmt::format(R"("currency": "{}", "materials": "{}")", code, engine_() % 2 ? "packs" : "use");
        for (const char* name : {"labour_hour", "watch_hour", "power_kwh", "drive"})
            add(text, name);
        text += fmt::format(R"(, "travel": {{ "distance": {}, "trips": {} }})", number(3), engine_() % 9 + 1);
        text += ", \"packs\": {";
        std::string packs;
        for (const char* name : {"cylinder", "contact tips", "gas nozzles", "stick", "boring edges", "spool",
                                 "liner", "blanket"})
            add(packs, name);
        text += (packs.empty() ? packs : packs.substr(2)) + " }";
        for (const char* name : {"contingency", "markup", "tax"})
            if (engine_() % 3)
                text += fmt::format(R"(, "{}": "{} %")", name, number(3));
        return text;
    }

  private:
    void add(std::string& text, const char* name) {
        if (engine_() % 12)
            text += fmt::format(R"(, "{}": {})", name,
                                number(static_cast<int>(engine_() % static_cast<unsigned>(decimals_ + 1))));
    }

    /// Up to 250 with so many decimals, often at a half.
    std::string number(int decimals) {
        std::string text = std::to_string(engine_() % 250);
        for (int i = 0; i < decimals; ++i)
            text +=
                fmt::format("{}{}", i ? "" : ".", i + 1 == decimals && engine_() % 2 ? 5 : engine_() % 10);
        return text;
    }

    std::mt19937_64 engine_;
    int decimals_ = 4;
};

/// Whether an amount is n p / d rounded half to even, judged by what that means and not by how it is done.
bool is_half_even(std::int64_t n, std::int64_t p, std::int64_t d, Minor amount) {
    __extension__ using Wide = __int128;
    const Wide off = 2 * (static_cast<Wide>(n) * p - static_cast<Wide>(amount) * d);
    return off < d ? off > -d || (off == -d && amount % 2 == 0) : off == d && amount % 2 == 0;
}

/// The whole small units of an amount as printed: its digits.
Minor printed(const std::string& amount) {
    std::string digits;
    for (const char c : amount)
        if (c != '.')
            digits += c;
    return std::stoll(digits);
}

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : line)
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            cells.emplace_back();
        else
            cells.back() += c;
    return cells;
}

/// The lines of the printed table that count, added up, against the sum and the total that it prints.
void check_printed(const Plan& plan) {
    std::istringstream table(quote_csv(plan));
    std::string line;
    std::getline(table, line);
    Minor sum = 0;
    Minor on_top = 0;
    while (std::getline(table, line)) {
        line.pop_back(); // the CR
        const auto cells = cells_of(line);
        REQUIRE(cells.size() == 10);
        if (cells[0] == "sum")
            CHECK(printed(cells[7]) == sum);
        else if (cells[0] == "total")
            CHECK(printed(cells[7]) == sum + on_top);
        else if (cells[2].empty())
            on_top += printed(cells[7]);
        else if (cells[1] == "yes" && !cells[7].empty())
            sum += printed(cells[7]);
        else if (cells[7].empty())
            CHECK_FALSE(cells[9].empty()); // what is missing is said
    }
}

void check_lines(const Quote& quote) {
    const int decimals = quote.currency.exponent.value + 2;
    std::size_t missing = 0;
    for (const QuoteSection& section : quote.sections)
        for (const QuoteLine& line : section.lines) {
            CAPTURE(line.item);
            if (!line.amount) {
                CHECK_FALSE(line.missing.empty());
                missing += section.counts ? 1 : 0;
                continue;
            }
            CHECK(line.missing.empty());
            const std::int64_t p = line.part ? *line.part->cost : *in_parts(*line.price, decimals);
            CHECK(is_half_even(*line.quantity, p, line.part ? line.part->supplied.value() : 100'000,
                               *line.amount));
        }
    CHECK(quote.missing.size() == missing);
    CHECK(quote.is_whole() == (missing == 0));
    for (const OnTop& one : quote.on_top)
        CHECK(is_half_even(one.before, one.share, 100'000, one.amount));
}

} // namespace

TEST_CASE(
    "the total of 10,000 random quotes is the sum of their lines as printed, each rounded half to even") {
    std::size_t whole = 0;
    std::size_t part = 0;
    for (std::uint64_t seed = 0; seed < quotes; seed += seed_step) {
        CAPTURE(seed);
        std::string text = text_of(random_sketch(seed));
        text.insert(text.rfind('}'), ", \"prices\": { " + PriceDraw(seed).prices() + " } ");
        const Plan found = plan(job_from(text), shop());
        REQUIRE(found.quote);
        check_lines(*found.quote);
        check_printed(found);
        ++(found.quote->is_whole() ? whole : part);
    }
    CHECK(part > quotes / seed_step / 4);
    CHECK(whole + part == (quotes + seed_step - 1) / seed_step);
}
