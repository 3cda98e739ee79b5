#include <ringfill/report/text/sentence.hpp>

#include <ringfill/report/text/columns.hpp>

namespace ringfill {

std::string wrapped(const Sentences& sentences) {
    std::string text;
    for (const Sentence& sentence : sentences)
        text += wrapped(sentence.text, sentence.begin);
    return text;
}

} // namespace ringfill
