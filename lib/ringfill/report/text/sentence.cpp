#include <ringfill/report/text/sentence.hpp>

#include <ringfill/report/text/layout.hpp>
#include <ringfill/say/heat_limits.hpp>

namespace ringfill {
namespace {

/// What the first line of a sentence begins with.
std::string_view begin_of(Stands stands) {
    switch (stands) {
    case Stands::head:
        return "";
    case Stands::stop:
        return "! ";
    case Stands::item:
        return "  - ";
    case Stands::among:
        break;
    }
    return "  ";
}

} // namespace

std::string wrapped(const Sentences& sentences) {
    std::string text;
    for (const Sentence& sentence : sentences)
        text += wrapped(sentence.text, begin_of(sentence.stands));
    return text;
}

std::string heat_head(const Plan& plan, const Style& style) {
    std::string text;
    for (const Sentence& sentence : head_sentences(plan)) {
        const std::string lines = wrapped(sentence.text, begin_of(sentence.stands));
        text += sentence.stands == Stands::stop ? style.strong(lines) : lines;
    }
    return text;
}

std::string closing_line() {
    return "\n" + wrapped(closing(), "");
}

} // namespace ringfill
