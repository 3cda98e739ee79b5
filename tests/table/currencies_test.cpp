#include <catch2/catch.hpp>

#include <map>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/currencies.hpp>
#include <ringfill/table/shelf.hpp>

#include "document/fault_words.hpp"
#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography known = {{"ISO4217", {"ISO 4217", "-", "-", "standard", "memory"}}};

Document file_of(const std::string& rows) {
    return parse(
        "t.json",
        fmt::format(
            "{{\"format\": \"ringfill-currencies/1\", \"description\": \"d\", \"currencies\": {{{}}}}}",
            rows),
        Origin::table);
}

std::string refused(const std::string& rows) {
    const std::string text = refusal(Origin::table, [&] { read_currencies({file_of(rows)}, known); });
    return text.substr(0, text.find('\n'));
}

} // namespace

TEST_CASE("the product's currencies have the exponents of ISO 4217, and a later file adds one") {
    std::vector<Document> files = table_files(Shelf{{RINGFILL_TABLES}}, "currencies.json");
    std::map<std::string, int> exponents;
    for (const Currency& one : read_currencies(files, known))
        exponents[one.name] = one.exponent.value;
    CHECK(exponents.size() > 140);
    for (const char* code : {"EUR", "USD", "GBP", "CHF", "CAD", "AUD", "NOK", "SEK", "DKK", "PLN", "CZK"})
        CHECK(exponents.at(code) == 2);
    for (const char* code : {"JPY", "KRW", "CLP", "VND", "ISK"})
        CHECK(exponents.at(code) == 0);
    for (const char* code : {"BHD", "KWD", "TND", "JOD", "OMR", "IQD", "LYD"})
        CHECK(exponents.at(code) == 3);
    files.push_back(file_of(R"("XTS": { "exponent": [4, "ISO4217"] })"));
    CHECK(read_currencies(files, known).back().exponent.value == 4);
}

TEST_CASE("a code that is none, and an exponent that is none, are refused") {
    CHECK(refused(R"("Euro": { "exponent": [2, "ISO4217"] })") ==
          "t.json:1:80: currencies.Euro: is no code of a currency; write three capital letters, as ISO 4217 "
          "has them");
    CHECK(refused(R"("EUR": { "exponent": [1.5, "ISO4217"] })") ==
          "t.json:1:93: currencies.EUR.exponent: is not a whole number; write how many decimals the currency "
          "has");
    CHECK(refused(R"("EUR": { "exponent": [5, "ISO4217"] })") ==
          "t.json:1:94: currencies.EUR.exponent: 5" + out_of_range("from 0 to 4"));
    CHECK(refused(R"("EUR": { "exponent": 2 })")
              .starts_with("t.json:1:93: currencies.EUR.exponent: 2 has no source;"));
}
