#include <ringfill/document/in_span.hpp>

#include <fmt/format.h>

namespace ringfill {

bool in_span(double number, const Span& span) {
    return (span.low_is_open ? number > span.low : number >= span.low) && number <= span.high;
}

std::string span_in_words(const Span& span, std::string_view unit, double factor) {
    const std::string_view blank = unit.empty() ? "" : " ";
    return fmt::format("{} {:.9g}{}{} {} {:.9g}{}{}", span.low_is_open ? "over" : "from", span.low / factor,
                       blank, unit, span.low_is_open ? "and at most" : "to", span.high / factor, blank, unit);
}

} // namespace ringfill
