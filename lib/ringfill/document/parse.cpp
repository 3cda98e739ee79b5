#include <ringfill/document/parse.hpp>

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include <boost/json/basic_parser_impl.hpp>

#include <fmt/format.h>

#include <ringfill/document/document_builder.hpp>

namespace ringfill {
namespace {

namespace json = boost::json;

/// The end of the comment that begins there: `begin` itself when none does, npos when it is not closed.
std::size_t comment_end(std::string_view text, std::size_t begin) {
    const std::string_view sign = text.substr(begin, 2);
    if (sign == "//")
        return std::min(text.size(), text.find('\n', begin));
    if (sign != "/*")
        return begin;
    const std::size_t close = text.find("*/", begin + 2);
    return close == std::string_view::npos ? close : close + 2;
}

/// Whether a byte stands between tokens rather than in one.
bool stands_between(char c) {
    return std::string_view(" \t\r\n:,").find(c) != std::string_view::npos;
}

/// The end of the text that a quote begins, its closing quote included.
std::size_t quoted_end(std::string_view text, std::size_t begin) {
    for (std::size_t i = begin + 1; i < text.size(); ++i) {
        if (text[i] == '"')
            return i + 1;
        if (text[i] == '\\')
            ++i;
    }
    return text.size();
}

/// The end of the bytes to feed next: a whole quoted text, one bracket, a run of bytes between tokens, or a
/// number or word. Each holds at most one event of its own, so that the event's place is known.
std::size_t chunk_end(std::string_view text, std::size_t begin) {
    if (text[begin] == '"')
        return quoted_end(text, begin);
    std::size_t end = begin + 1;
    if (std::string_view("{}[]/").find(text[begin]) != std::string_view::npos)
        return end;
    if (stands_between(text[begin])) {
        while (end < text.size() && stands_between(text[end]))
            ++end;
        return end;
    }
    return std::min(text.size(), text.find_first_of(" \t\r\n:,{}[]\"/", end));
}

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

/// Boost.JSON's error in words for the person who typed the file.
Words in_words(const json::error_code& ec, const DocumentBuilder& builder, const DocumentLimits& limits,
               std::string_view text, std::size_t offset) {
    if (builder.too_many_members)
        return {fmt::format("an object holds more than {} fields", DocumentBuilder::most_members),
                "split it"};
    if (builder.too_many)
        return {fmt::format("the file holds more than {} values", limits.values), "split the job"};
    if (ec == json::error::too_deep)
        return {fmt::format("brackets are nested deeper than {}", limits.depth),
                "take out the extra brackets"};
    if (ec == json::error::incomplete)
        return {"the file ends too early", "close every bracket and quote"};
    if (ec == json::error::extra_data)
        return {"something stands after the end of the job", "take it out"};
    if (ec == json::error::array_too_large || ec == json::error::string_too_large ||
        ec == json::error::key_too_large)
        return {"a text is too long", "shorten it"};
    if (const auto hint = hint_at(text.substr(std::min(offset, text.size()))))
        return *hint;
    return {"this is not JSON here", "look for a missing comma, quote or bracket just before it"};
}

void feed(json::basic_parser<DocumentBuilder>& parser, Document& document, Origin origin,
          const DocumentLimits& limits) {
    const std::string_view text = document.text;
    DocumentBuilder& builder = parser.handler();
    json::error_code ec;
    std::size_t fed = 0;
    const auto refuse = [&](std::size_t offset) {
        const bool breaks = offset < text.size() && text[offset] == '\n';
        const bool in_text = builder.token != DocumentBuilder::nowhere && text[builder.token] == '"';
        const Words words = breaks && in_text
                                ? Words{"a text does not end on its line", "close it with a quote"}
                                : in_words(ec, builder, limits, text, offset);
        throw Faulty(origin, fault_at(document, offset, builder.path(), {}, words.reason, words.remedy));
    };
    while (fed < text.size()) {
        const std::size_t after_comment = comment_end(text, fed);
        if (after_comment == std::string_view::npos)
            break;
        const bool is_comment = after_comment > fed;
        builder.chunk_begin = fed;
        builder.chunk_end = is_comment ? after_comment : chunk_end(text, fed);
        // A comment is fed as the blank it stands for: Boost.JSON 1.81 misses the end of /***/.
        const std::string_view chunk = is_comment ? " " : text.substr(fed, builder.chunk_end - fed);
        if (builder.token == DocumentBuilder::nowhere && !is_comment && !stands_between(chunk.front()))
            builder.token = fed;
        const std::size_t taken = parser.write_some(true, chunk.data(), chunk.size(), ec);
        if (!ec && taken < chunk.size())
            ec = json::make_error_code(json::error::extra_data);
        if (ec)
            refuse(fed + taken);
        fed = builder.chunk_end;
    }
    if (fed < text.size()) { // a comment that is not closed
        ec = json::make_error_code(json::error::incomplete);
        refuse(text.size());
    }
    builder.chunk_begin = builder.chunk_end = text.size();
    parser.write_some(false, text.data(), 0, ec);
    if (ec || builder.too_many_members)
        refuse(text.size());
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
    json::parse_options options;
    options.allow_trailing_commas = true;
    options.max_depth = limits.depth;
    json::basic_parser<DocumentBuilder> parser(options, document, faults, limits.values);
    feed(parser, document, origin, limits);
    refuse_if_any(origin, faults);
    return document;
}

} // namespace ringfill
