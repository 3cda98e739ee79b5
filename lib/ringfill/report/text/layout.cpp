#include <ringfill/report/text/layout.hpp>

#include <algorithm>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/split.hpp>

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
    bool empty = true;
    for (const auto& part : text | ranges::views::split(' ')) {
        const std::string word = printable(part | ranges::to<std::string>(), width - indent - 1);
        if (word.empty())
            continue;
        if (!empty && count_characters(line) + 1 + count_characters(word) > width) {
            result += line + '\n';
            line = std::string(indent, ' ');
            empty = true;
        }
        line += (empty ? "" : " ") + word;
        empty = false;
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
