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

/// What a typist most likely meant by a sign that does not fit.
struct Hint {
    std::string_view sign;
    const char* reason;
    const char* remedy;
};
constexpr const char* curly_quote = "a curly quote stands here";
constexpr const char* straight_quote = "type a straight one: \"";
constexpr Hint hints[] = {
    {"\u201C", curly_quote, straight_quote},
    {"\u201D", curly_quote, straight_quote},
    {"\u2018", curly_quote, straight_quote},
    {"\u2019", curly_quote, straight_quote},
    {"'", "a single quote stands here", "put texts in double quotes: \""},
    {"#", "a comment does not begin with #", "write // before it"},
    {".", "a number does not begin with a point", "write a 0 before it"},
    {"\t", "a tab stands inside a text", "write a blank"},
    {"", "this is not JSON here", "look for a missing comma, quote or bracket just before it"},
};

/// What broke the reading and what to do, in words for the person who typed the file.
std::pair<std::string, std::string> in_words(const Scanner& scanner, const DocumentLimits& limits,
                                             std::string_view text) {
    const std::string_view rest = text.substr(std::min(scanner.offset(), text.size()));
    if (rest.starts_with('\n') && scanner.is_in_text())
        return {"a text does not end on its line", "close it with a quote"};
    switch (scanner.broken()) {
    case Broken::too_many_members:
        return {fmt::format("an object holds more than {} fields", Scanner::most_members), "split it"};
    case Broken::too_many_values:
        return {fmt::format("the file holds more than {} values", limits.values), "split the job"};
    case Broken::too_deep:
        return {fmt::format("brackets are nested deeper than {}", limits.depth),
                "take out the extra brackets"};
    case Broken::ends_early:
        return {"the file ends too early", "close every bracket and quote"};
    case Broken::goes_on:
        return {"something stands after the end of the job", "take it out"};
    case Broken::too_long:
        return {"a text is too long", "shorten it"};
    case Broken::syntax:
    case Broken::nothing:
        break;
    }
    const auto* hint = ranges::find_if(hints, [&](const Hint& one) { return rest.starts_with(one.sign); });
    return {hint->reason, hint->remedy};
}

} // namespace

Document parse(std::string file, std::string text, Origin origin, const DocumentLimits& limits) {
    Document document{std::move(file), std::move(text), {}};
    if (document.text.size() > limits.bytes)
        throw Faulty(origin,
                     fault_in_file(document.file, fmt::format("is larger than {} bytes", limits.bytes),
                                   "split the job into several files"));
    if (document.text.starts_with("\xEF\xBB\xBF"))
        throw Faulty(origin, fault_at(document, 0, {}, {}, "the file starts with a byte-order mark",
                                      "save it as UTF-8 without one"));
    std::vector<Fault> faults;
    Scanner scanner(document, faults, limits);
    if (!scanner.read()) {
        const auto [reason, remedy] = in_words(scanner, limits, document.text);
        throw Faulty(origin, fault_at(document, scanner.offset(), scanner.path(), {}, reason, remedy));
    }
    refuse_if_any(origin, faults);
    return document;
}

} // namespace ringfill
