#pragma once

#include <string>
#include <string_view>

namespace ringfill {

/// What is typed or pasted in the place of a plain sign.
struct Sign {
    std::string_view plain;
    std::string_view typed; ///< each a character
};

inline constexpr Sign typed_signs[] = {
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

/// A text as typed or pasted, brought to the plain signs that measure() reads: every Unicode dash and minus
/// becomes
/// '-', every blank ' ', the fraction slash '/', and a fraction character such as ½ becomes " 1/2". Outer
/// blanks go.
std::string plain_signs(std::string_view typed);

} // namespace ringfill
