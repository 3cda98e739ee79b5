#include <ringfill/report/text/layout.hpp>

#include <algorithm>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
std::vector<std::string> columns(const Rows& rows, const std::vector<bool>& right) {
    std::vector<std::size_t> widths(right.size(), 0);
    for (const auto& row : rows)
        for (std::size_t c = 0; c < row.size(); ++c)
            widths[c] = std::max(widths[c], count_characters(row[c]));
    std::vector<std::string> lines;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t c = 0; c < row.size(); ++c) {
            const std::string blanks(widths[c] - count_characters(row[c]), ' ');
            line += (c ? "  " : "") + (right[c] ? blanks + row[c] : row[c] + blanks);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        lines.push_back(std::move(line));
    }
    return lines;
}

std::string table(const Rows& rows, const std::vector<bool>& right) {
    return listed(columns(rows, right), "", [](const std::string& line) { return "  " + line + '\n'; });
}

std::string wrapped(std::string_view text, std::string_view first, std::size_t width) {
    const std::size_t indent = count_characters(first);
    std::string result;
    std::string line(first);
    std::size_t length = indent; // of the line, in characters
    while (!text.empty()) {
        const std::string_view part = text.substr(0, text.find(' '));
        text.remove_prefix(std::min(part.size() + 1, text.size()));
        if (part.empty())
            continue;
        const std::string word = printable(part, width - indent - 1);
        const std::size_t letters = count_characters(word);
        if (length > indent && length + 1 + letters > width) {
            result += line + '\n';
            line.assign(indent, ' ');
            length = indent;
        }
        line += (length > indent ? " " : "") + word;
        length += letters + (length > indent ? 1 : 0);
    }
    line.erase(line.find_last_not_of(' ') + 1); // an empty text leaves the blanks of its beginning
    return result + line + '\n';
}

std::string wrapped(const Sentences& sentences) {
    constexpr std::string_view beginnings[] = {"  ", "", "! ", "  - "}; // as Stands
    return listed(sentences, "", [&](const Sentence& sentence) {
        return wrapped(sentence.text, beginnings[static_cast<std::size_t>(sentence.stands)]);
    });
}

} // namespace ringfill
