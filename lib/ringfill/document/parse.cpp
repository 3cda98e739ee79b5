#include <ringfill/document/parse.hpp>

#include <algorithm>
#include <string_view>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include <range/v3/algorithm/find_if.hpp>

#include <ringfill/document/scan.hpp>

namespace ringfill {
namespace {

/// What broke the reading, or what a typist most likely meant by a sign that does not fit.
struct Hint {
    Broken why;
    std::string_view sign;
    const char* reason;
    const char* remedy;
};
constexpr const char* smaller_table = "leave in the table only the rows that differ from ours";
constexpr const char* curly_quote = "a curly quote stands here";
constexpr const char* straight_quote = "type a straight one: \"";
constexpr Hint hints[] = {
    {Broken::too_many_members, "", "an object holds more than {members} fields", "split it"},
    {Broken::too_many_values, "", "the file holds more than {values} values", "{smaller}"},
    {Broken::too_deep, "", "brackets are nested deeper than {depth}", "take out the extra brackets"},
    {Broken::ends_early, "", "the file ends too early", "close every bracket and quote"},
    {Broken::goes_on, "", "something stands after the end of the {document}", "take it out"},
    {Broken::too_long, "", "a text is too long", "shorten it"},
    {Broken::syntax, "\u201C", curly_quote, straight_quote},
    {Broken::syntax, "\u201D", curly_quote, straight_quote},
    {Broken::syntax, "\u2018", curly_quote, straight_quote},
    {Broken::syntax, "\u2019", curly_quote, straight_quote},
    {Broken::syntax, "'", "a single quote stands here", "put texts in double quotes: \""},
    {Broken::syntax, "#", "a comment does not begin with #", "write // before it"},
    {Broken::syntax, ".", "a number does not begin with a point", "write a 0 before it"},
    {Broken::syntax, "\t", "a tab stands inside a text", "write a blank"},
    {Broken::syntax, "", "this is not JSON here",
     "look for a missing comma, quote or bracket just before it"},
};

/// What broke the reading and what to do, in words for the person who typed the file.
std::pair<std::string, std::string> in_words(const Scanner& scanner, const DocumentLimits& limits,
                                             std::string_view text, Origin origin) {
    const std::string_view rest = text.substr(std::min(scanner.offset(), text.size()));
    if (rest.starts_with('\n') && scanner.is_in_text())
        return {"a text does not end on its line", "close it with a quote"};
    const auto byte = [&](std::size_t at) {
        return at < text.size() ? static_cast<unsigned char>(text[at]) : 0U;
    };
    const std::size_t at = scanner.offset();
    const bool begins_no_sign = byte(at) >= 0x80 && byte(at) < 0xC0; // a sign does not begin so
    bool is_cut_off = false; // a sign of several bytes that does not go on
    for (std::size_t back = 1; back <= std::min<std::size_t>(at, 3); ++back)
        is_cut_off = is_cut_off || (byte(at - back) >= 0xC0 && (byte(at - back + 1) & 0xC0U) != 0x80);
    if (begins_no_sign || is_cut_off)
        return {"a sign here is not UTF-8: the file is written in Windows-1252 or the like",
                "save it as UTF-8"};
    const auto* hint = ranges::find_if(
        hints, [&](const Hint& one) { return one.why == scanner.broken() && rest.starts_with(one.sign); });
    const bool is_table = origin == Origin::table;
    const auto filled = [&](const char* words) {
        return fmt::format(fmt::runtime(words), fmt::arg("members", Scanner::most_members),
                           fmt::arg("values", limits.values), fmt::arg("depth", limits.depth),
                           fmt::arg("document", is_table ? "table" : "job"),
                           fmt::arg("smaller", is_table ? smaller_table : "split the job"));
    };
    return {filled(hint->reason), filled(hint->remedy)};
}

/// With its mark, or with a zero beside each of the first signs.
bool is_utf16(std::string_view text) {
    return text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF") ||
           (text.size() > 3 && text[0] == '\0' && text[2] == '\0') ||
           (text.size() > 3 && text[1] == '\0' && text[3] == '\0');
}

} // namespace

Document parse(std::string file, std::string text, Origin origin, const DocumentLimits& limits) {
    Document document{std::move(file), std::move(text), {}};
    if (document.text.size() > limits.bytes)
        throw Faulty(origin,
                     fault_in_file(document.file, fmt::format("is larger than {} bytes", limits.bytes),
                                   origin == Origin::table
                                       ? "leave in the table only the rows that differ from ours"
                                       : "split the job into several files"));
    if (document.text.starts_with("\xEF\xBB\xBF"))
        throw Faulty(origin, fault_at(document, 0, {}, {}, "the file starts with a byte-order mark",
                                      "save it as UTF-8 without one"));
    if (is_utf16(document.text))
        throw Faulty(origin, fault_in_file(document.file, "is written in UTF-16", "save it as UTF-8"));
    std::vector<Fault> faults;
    Scanner scanner(document, faults, limits);
    if (!scanner.read()) {
        const auto [reason, remedy] = in_words(scanner, limits, document.text, origin);
        throw Faulty(origin, fault_at(document, scanner.offset(), scanner.path(), {}, reason, remedy));
    }
    refuse_if_any(origin, faults);
    return document;
}

} // namespace ringfill
