#include <ringfill/report/csv/csv.hpp>

#include <string_view>

#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_cell = 30'000; // characters; spreadsheets take 32,767

std::string text_cell(const std::string& text) {
    const std::string shown = printable(text, longest_cell);
    const bool formula =
        !shown.empty() && std::string_view("=+-@").find(shown.front()) != std::string_view::npos;
    std::string safe = formula ? "'" + shown : shown;
    if (safe.find_first_of("\",") == std::string::npos)
        return safe;
    std::string cell = "\"";
    for (const char c : safe) {
        cell += c;
        if (c == '"')
            cell += c;
    }
    return cell + '"';
}

} // namespace

std::string csv(const std::vector<std::vector<Cell>>& rows) {
    std::string text;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            text += i ? "," : "";
            const auto* number = std::get_if<double>(&row[i]);
            text += number ? write_number(*number) : text_cell(std::get<std::string>(row[i]));
        }
        text += "\r\n";
    }
    return text;
}

} // namespace ringfill
