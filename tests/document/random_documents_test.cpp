#include <catch2/catch.hpp>

#include <array>
#include <cmath>
#include <random>
#include <string>

#include <boost/json/parse.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>

using namespace ringfill;

// The judge is boost::json::parse: the same texts read in one piece into its own tree, by code that keeps no
// places.

namespace {

namespace json = boost::json;

/// Writes documents at random: every kind of value, escapes, blanks, line breaks, and, if wanted, comments
/// and trailing commas.
class Writer {
  public:
    explicit Writer(unsigned seed) : random_(seed) {}

    std::string document(bool plain) {
        plain_ = plain;
        text_.clear();
        gap();
        value(0);
        gap();
        return text_;
    }

  private:
    std::size_t pick(std::size_t below) { return random_() % below; }

    void gap() {
        static constexpr std::array blanks = {"", "", " ", "\n", "\r\n", "\t", "  "};
        static constexpr std::array comments = {"/**/", "/* ½ \" ] */", "// x { \n", "//\n", "/*/ /*/"};
        text_ += blanks[pick(blanks.size())];
        if (!plain_ && pick(4) == 0)
            text_ += comments[pick(comments.size())];
    }

    void words() {
        static constexpr std::array parts = {
            "a",       "90.4", "½",  "″",  "\U0001F527", "\\\"", "\\\\",
            "\\/",     "/",    "//", "/*", "\\u00bd",    "\\n",  "{",
            "]",       ",",    ":",  " ",  "*/",         "\\t",  "\\ud83d\\udd27",
            "\\u0000", "true"};
        text_ += '"';
        for (std::size_t n = pick(6); n > 0; --n)
            text_ += parts[pick(parts.size())];
        text_ += '"';
    }

    void number() {
        static constexpr std::array forms = {"0",         "-0",   "90.4",    "-0.5e+10",
                                             "1E2",       "1e-7", "7850",    "0.045",
                                             "123456789", "-3",   "1.5e300", "9223372036854775807"};
        text_ += forms[pick(forms.size())];
    }

    void value(std::size_t depth) {
        switch (pick(depth < 5 ? 7 : 4)) {
        case 0:
            return words();
        case 1:
            text_ += pick(2) ? "true" : "false";
            return;
        case 2:
            text_ += "null";
            return;
        case 3:
            return number();
        case 4:
            return many('[', ']', depth, false);
        default:
            return many('{', '}', depth, true);
        }
    }

    void many(char open, char close, std::size_t depth, bool named) {
        const std::size_t count = pick(5);
        text_ += open;
        gap();
        for (std::size_t i = 0; i < count; ++i) {
            if (named) {
                text_ += fmt::format("\"k{}", i); // each key once
                const std::size_t mark = text_.size();
                words();
                text_.erase(mark, 1);
                gap();
                text_ += ':';
                gap();
            }
            value(depth + 1);
            gap();
            if (i + 1 < count || (!plain_ && pick(3) == 0)) {
                text_ += ',';
                gap();
            }
        }
        text_ += close;
    }

    std::mt19937 random_;
    bool plain_ = true;
    std::string text_;
};

json::value judged(std::string_view text) {
    json::parse_options options;
    options.allow_comments = true;
    options.allow_trailing_commas = true;
    return json::parse(json::string_view(text.data(), text.size()), {}, options);
}

bool same(const Value& ours, const json::value& theirs) {
    if (const auto* text = ours.text())
        return theirs.is_string() && std::string_view(*text) == std::string_view(theirs.as_string());
    if (const auto* number = ours.number())
        return theirs.is_number() &&
               std::fabs(*number - theirs.to_number<double>()) <= 1e-15 * std::fabs(*number);
    if (const auto* flag = ours.flag())
        return theirs.is_bool() && *flag == theirs.as_bool();
    if (const auto* list = ours.list()) {
        if (!theirs.is_array() || theirs.as_array().size() != list->size())
            return false;
        for (std::size_t i = 0; i < list->size(); ++i)
            if (!same((*list)[i], theirs.as_array()[i]))
                return false;
        return true;
    }
    if (const auto* members = ours.object()) {
        if (!theirs.is_object() || theirs.as_object().size() != members->size())
            return false;
        auto other = theirs.as_object().begin();
        for (const Member& member : *members) {
            if (std::string_view(other->key()) != member.name || !same(member.value, other->value()))
                return false;
            ++other;
        }
        return true;
    }
    return theirs.is_null();
}

/// Whether the text that begins where a key is said to begin is that key.
bool key_stands_at(const std::string& text, const Member& member) {
    std::size_t close = member.name_begin + 1;
    while (close < text.size() && text[close] != '"')
        close += text[close] == '\\' ? 2 : 1;
    const std::string key = text.substr(member.name_begin, close + 1 - member.name_begin);
    return key.front() == '"' && same(Value(member.name), judged(key));
}

/// Whether the bytes of every value hold exactly that value, and those of every key that key.
bool places_hold(const std::string& text, const Value& value) {
    if (value.end > text.size() || value.begin >= value.end)
        return false;
    const std::string slice = text.substr(value.begin, value.end - value.begin);
    const std::string ends{slice.front(), slice.back()};
    if (ends.find_first_of(" \t\r\n,:/") != std::string::npos || !same(value, judged(slice)))
        return false;
    if (const auto* list = value.list())
        for (const Value& one : *list)
            if (!places_hold(text, one))
                return false;
    if (const auto* members = value.object())
        for (const Member& member : *members) {
            if (!key_stands_at(text, member) || !places_hold(text, member.value))
                return false;
        }
    return true;
}

} // namespace

TEST_CASE("random documents are read as another reader reads them, and every place holds its value") {
    std::size_t bytes = 0;
    for (unsigned seed = 1; seed <= 600; ++seed) {
        const std::string text = Writer(seed).document(seed % 2 == 0);
        INFO("seed " << seed << ":\n" << text);
        const Document document = parse("random.json", text, Origin::job);
        REQUIRE(same(document.root, judged(text)));
        REQUIRE(places_hold(text, document.root));
        bytes += text.size();
    }
    CHECK(bytes > 20'000); // the documents are not all empty ones
}
