#include <ringfill/report/csv/csv.hpp>

#include <string_view>

#include <boost/algorithm/string/replace.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_cell = 30'000; // characters; spreadsheets take 32,767

std::string text_cell(const std::string& text) {
    std::string safe = printable(text, longest_cell);
    if (safe.find_first_of("=+-@") == 0)
        safe.insert(0, "'");
    if (safe.find_first_of("\",") == std::string::npos)
        return safe;
    return '"' + boost::replace_all_copy(safe, "\"", "\"\"") + '"';
}

} // namespace

std::string csv(const std::vector<Value::List>& rows) {
    std::string text;
    for (const Value::List& row : rows) {
        for (const Value& cell : row) {
            text += &cell == &row.front() ? "" : ",";
            if (cell.number())
                text += write_number(*cell.number());
            else if (cell.text())
                text += text_cell(*cell.text());
        }
        text += "\r\n";
    }
    return text;
}

} // namespace ringfill
