#pragma once

#include <string>
#include <vector>

namespace ringfill {

/// A sentence that several prints share, word for word.
struct Sentence {
    std::string text;
    std::string begin = "  "; ///< of its first line in plain text: "! " stops the work, "  - " is advice
    std::vector<std::string> figures = {}; ///< of the result that it tells, as paths from its bore on
};

using Sentences = std::vector<Sentence>;

/// Sentences as lines of plain text, each wrapped under its beginning.
std::string wrapped(const Sentences& sentences);

} // namespace ringfill
