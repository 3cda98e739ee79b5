#include <ringfill/document/parse.hpp>

#include <string_view>
#include <utility>
#include <vector>

#include <boost/json/basic_parser_impl.hpp>

#include <fmt/format.h>

#include <ringfill/document/document_builder.hpp>

namespace ringfill {
namespace {

namespace json = boost::json;

enum class ByteClass { blank, structural, ordinary };

ByteClass class_of(char c) {
    if (c == ' ' || c == '\t' || c == '\r')
        return ByteClass::blank;
    return std::string_view("\n{}[]:,\"/*\\").find(c) == std::string_view::npos ? ByteClass::ordinary
                                                                                : ByteClass::structural;
}

/// The end of the comment that begins there, its line break or closing sign included.
std::size_t comment_end(std::string_view text, std::size_t begin) {
    const bool line = text.substr(begin, 2) == "//";
    const std::size_t sign = line ? text.find('\n', begin) : text.find("*/", begin + 2);
    return sign == std::string_view::npos ? text.size() : sign + (line ? 1 : 2);
}

/// The end of the bytes to feed next: a whole comment, one structural byte, or a run of blank or of ordinary
/// ones. (Boost.JSON 1.81 loses its way when a line comment before the first value comes in parts.)
std::size_t next_chunk(std::string_view text, std::size_t begin, bool in_text) {
    if (text[begin] == '/' && !in_text)
        return comment_end(text, begin);
    const ByteClass kind = class_of(text[begin]);
    std::size_t end = begin + 1;
    while (kind != ByteClass::structural && end < text.size() && class_of(text[end]) == kind)
        ++end;
    return end;
}

struct Words {
    std::string reason;
    std::string remedy;
};

/// Boost.JSON's error in words for the person who typed the file.
Words in_words(const json::error_code& ec, bool too_many, const DocumentLimits& limits) {
    if (too_many)
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
    return {"this is not JSON here", "look for a missing comma, quote or bracket just before it"};
}

/// Whether a byte may stand between tokens rather than begin one.
bool stands_between(char c) {
    return class_of(c) == ByteClass::blank || std::string_view("\n:,/").find(c) != std::string_view::npos;
}

void feed(json::basic_parser<DocumentBuilder>& parser, Document& document, Origin origin,
          const DocumentLimits& limits) {
    const std::string_view text = document.text;
    DocumentBuilder& builder = parser.handler();
    json::error_code ec;
    std::size_t fed = 0;
    const auto refuse = [&](std::size_t offset) {
        const Words words = in_words(ec, builder.too_many, limits);
        throw Faulty(origin, fault_at(document, offset, builder.path(), {}, words.reason, words.remedy));
    };
    while (fed < text.size()) {
        builder.chunk_begin = fed;
        builder.chunk_end =
            next_chunk(text, fed, builder.token != DocumentBuilder::nowhere && text[builder.token] == '"');
        const std::string_view chunk = text.substr(fed, builder.chunk_end - fed);
        if (builder.token == DocumentBuilder::nowhere && !stands_between(chunk.front()))
            builder.token = fed;
        const std::size_t taken = parser.write_some(true, chunk.data(), chunk.size(), ec);
        if (!ec && taken < chunk.size())
            ec = json::make_error_code(json::error::extra_data);
        if (ec)
            refuse(fed + taken);
        fed = builder.chunk_end;
    }
    builder.chunk_begin = builder.chunk_end = text.size();
    parser.write_some(false, text.data(), 0, ec);
    if (ec)
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
    options.allow_comments = true;
    options.allow_trailing_commas = true;
    options.max_depth = limits.depth;
    json::basic_parser<DocumentBuilder> parser(options, document, faults, limits.values);
    feed(parser, document, origin, limits);
    refuse_if_any(origin, faults);
    return document;
}

} // namespace ringfill
