#include <ringfill/document/parse.hpp>

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include <ringfill/document/scan.hpp>

namespace ringfill {
namespace {

struct Words {
    std::string reason;
    std::string remedy;
};

/// What a typist most likely meant by the sign that does not fit; nothing for other signs.
std::optional<Words> hint_at(std::string_view rest) {
    for (const std::string_view curly : {"\u201C", "\u201D", "\u2018", "\u2019"})
        if (rest.starts_with(curly))
            return Words{"a curly quote stands here", "type a straight one: \""};
    if (rest.starts_with("'"))
        return Words{"a single quote stands here", "put texts in double quotes: \""};
    if (rest.starts_with("#"))
        return Words{"a comment does not begin with #", "write // before it"};
    if (rest.starts_with("."))
        return Words{"a number does not begin with a point", "write a 0 before it"};
    if (rest.starts_with("\t"))
        return Words{"a tab stands inside a text", "write a blank"};
    return std::nullopt;
}

/// What broke the reading, in words for the person who typed the file.
Words in_words(const Scanner& scanner, const DocumentLimits& limits, std::string_view text) {
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
    return hint_at(rest).value_or(
        Words{"this is not JSON here", "look for a missing comma, quote or bracket just before it"});
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
        const Words words = in_words(scanner, limits, document.text);
        throw Faulty(origin,
                     fault_at(document, scanner.offset(), scanner.path(), {}, words.reason, words.remedy));
    }
    refuse_if_any(origin, faults);
    return document;
}

} // namespace ringfill
