#include <ringfill/units/typed_text.hpp>

#include <algorithm>

#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// What is typed or pasted in the place of a plain sign.
struct Sign {
    std::string_view plain;
    std::string_view typed; ///< each a character
};

constexpr Sign signs[] = {
    // minus sign, hyphen, non-breaking hyphen, figure, en and em dash, horizontal bar, full-width hyphen
    {"-", "\u2212\u2010\u2011\u2012\u2013\u2014\u2015\uFF0D"},
    {"/", "\u2044\u2215"}, // fraction and division slash
    // no-break, thin, narrow no-break, figure, en, em, third, quarter and sixth of an em, punctuation, hair
    // and ideographic space, tab
    {" ", "\u00A0\u2009\u202F\u2007\u2002\u2003\u2004\u2005\u2006\u2008\u200A\u3000\t"},
    {" 1/4", "\u00BC"}, // ¼
    {" 1/2", "\u00BD"}, // ½
    {" 3/4", "\u00BE"}, // ¾
    {" 1/8", "\u215B"}, // ⅛
    {" 3/8", "\u215C"}, // ⅜
    {" 5/8", "\u215D"}, // ⅝
    {" 7/8", "\u215E"}, // ⅞
};

/// The characters that are typed for the signs asked for, behind others.
template <class IsAsked>
std::vector<std::string_view> typed_for(IsAsked is_asked, std::vector<std::string_view> found = {}) {
    for (const Sign& sign : signs)
        for (std::string_view rest = is_asked(sign.plain) ? sign.typed : std::string_view(); !rest.empty();
             rest.remove_prefix(found.back().size()))
            found.push_back(rest.substr(0, character_at(rest, 0).bytes));
    return found;
}

} // namespace

std::string plain_signs(std::string_view typed) {
    std::string plain;
    while (!typed.empty()) {
        const std::string_view character = typed.substr(0, character_at(typed, 0).bytes);
        std::string_view meant = character;
        if (character.size() > 1 || character == "\t") // none of the others is a sign
            for (const Sign& sign : signs)
                if (sign.typed.find(character) != std::string_view::npos)
                    meant = sign.plain;
        plain += meant;
        typed.remove_prefix(character.size());
    }
    const std::size_t first = std::min(plain.find_first_not_of(' '), plain.size());
    return plain.substr(first, plain.find_last_not_of(' ') + 1 - first);
}

std::vector<std::string_view> spellings_of(std::string_view plain) {
    return typed_for([&](std::string_view sign) { return sign == plain; }, {plain});
}

std::vector<std::string_view> fraction_signs() {
    return typed_for([](std::string_view sign) { return sign.size() > 1; });
}

} // namespace ringfill
