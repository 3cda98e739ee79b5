#include <ringfill/units/typed_text.hpp>

#include <array>
#include <utility>

namespace ringfill {
namespace {

using Sign = std::pair<std::string_view, std::string_view>;

constexpr std::array signs = {
    Sign{"\u2212", "-"},    // minus sign
    Sign{"\u2010", "-"},    // hyphen
    Sign{"\u2011", "-"},    // non-breaking hyphen
    Sign{"\u2012", "-"},    // figure dash
    Sign{"\u2013", "-"},    // en dash
    Sign{"\u2014", "-"},    // em dash
    Sign{"\u2015", "-"},    // horizontal bar
    Sign{"\uFF0D", "-"},    // full-width hyphen
    Sign{"\u2044", "/"},    // fraction slash
    Sign{"\u2215", "/"},    // division slash
    Sign{"\u00A0", " "},    // no-break space
    Sign{"\u2009", " "},    // thin space
    Sign{"\u202F", " "},    // narrow no-break space
    Sign{"\u2007", " "},    // figure space
    Sign{"\u2002", " "},    // en space
    Sign{"\u2003", " "},    // em space
    Sign{"\u2004", " "},    // third of an em
    Sign{"\u2005", " "},    // quarter of an em
    Sign{"\u2006", " "},    // sixth of an em
    Sign{"\u2008", " "},    // punctuation space
    Sign{"\u200A", " "},    // hair space
    Sign{"\u3000", " "},    // ideographic space
    Sign{"\u00BC", " 1/4"}, // ¼
    Sign{"\u00BD", " 1/2"}, // ½
    Sign{"\u00BE", " 3/4"}, // ¾
    Sign{"\u215B", " 1/8"}, // ⅛
    Sign{"\u215C", " 3/8"}, // ⅜
    Sign{"\u215D", " 5/8"}, // ⅝
    Sign{"\u215E", " 7/8"}, // ⅞
    Sign{"\t", " "},
};

} // namespace

std::string plain_signs(std::string_view typed) {
    std::string plain;
    while (!typed.empty()) {
        if (static_cast<unsigned char>(typed.front()) < 0x80 && typed.front() != '\t') { // none of the signs
            plain += typed.front();
            typed.remove_prefix(1);
            continue;
        }
        const Sign* found = nullptr;
        for (const Sign& sign : signs)
            if (typed.starts_with(sign.first))
                found = &sign;
        plain += found ? found->second : typed.substr(0, 1);
        typed.remove_prefix(found ? found->first.size() : 1);
    }
    const std::size_t first = plain.find_first_not_of(' ');
    if (first == std::string::npos)
        return {};
    return plain.substr(first, plain.find_last_not_of(' ') - first + 1);
}

std::vector<std::string_view> spellings_of(std::string_view plain) {
    std::vector<std::string_view> found = {plain};
    for (const Sign& sign : signs)
        if (sign.second == plain)
            found.push_back(sign.first);
    return found;
}

std::vector<std::string_view> fraction_signs() {
    std::vector<std::string_view> found;
    for (const Sign& sign : signs)
        if (sign.second.find('/') != std::string_view::npos && sign.second.size() > 1)
            found.push_back(sign.first);
    return found;
}

} // namespace ringfill
