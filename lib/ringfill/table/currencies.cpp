#include <ringfill/table/currencies.hpp>

#include <algorithm>
#include <cmath>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

void read_exponent(Currency& currency, const Entry& row, const Field& field) {
    SourcedNumber exponent;
    FieldOf<SourcedNumber>::fill(row, field, exponent);
    if (exponent.value != std::floor(exponent.value))
        row.refuse("exponent", "is not a whole number", "write how many decimals the currency has");
    currency.exponent = {static_cast<int>(exponent.value), exponent.source};
}

void check_code(Currency& currency, const Entry& row) {
    const std::string& code = currency.name;
    if (code.size() != 3 ||
        !std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; }))
        row.refuse("is no code of a currency", "write three capital letters, as ISO 4217 has them");
}

constexpr auto currency_record = table_record<Currency, check_code>(
    "a currency",
    field<&read_exponent>("exponent", Span{0, 4}, R"([2, "ISO4217"])").holds(Kind::sourced).required());

} // namespace

std::vector<Currency> read_currencies(const std::vector<Document>& files, const Bibliography& sources) {
    return read_rows<Currency, R"("ringfill-currencies/1")">(files, sources, "the table of currencies",
                                                             "currencies", currency_record);
}

} // namespace ringfill
