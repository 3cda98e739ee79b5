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

constexpr Field currency_fields[] = {
    field<&read_exponent>("exponent", Span{0, 4}, R"([2, "ISO4217"])").holds(Kind::sourced).required(),
};
constexpr Record currency_record = record_of<Currency, check_code>("a currency", "", currency_fields);

constexpr auto currencies_fields = table_fields<R"("ringfill-currencies/1")">(
    field<&Rows<Currency>::rows>("currencies", currency_record, "{ ... }").required());
constexpr Record currencies_record =
    record_of<Rows<Currency>>("the table of currencies", "", currencies_fields);

} // namespace

std::vector<Currency> read_currencies(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<Rows<Currency>>(files, sources, currencies_record).rows;
}

} // namespace ringfill
