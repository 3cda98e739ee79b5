#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ringfill {

/// How a sentence stands among the others of a print.
enum class Stands {
    among, ///< the others of its part
    head,  ///< of the whole print, at the margin
    stop,  ///< it stops the work
    item,  ///< of a list of advice
};

/// A sentence that several prints share, word for word.
struct Sentence {
    std::string text;
    std::vector<std::string> figures = {}; ///< of the result that it tells, as paths from its bore on
    Stands stands = Stands::among;
};

using Sentences = std::vector<Sentence>;

/// The last line of every print.
constexpr std::string_view closing() {
    return "Local codes, the approved procedure and licensed practice prevail over everything here.";
}

} // namespace ringfill
