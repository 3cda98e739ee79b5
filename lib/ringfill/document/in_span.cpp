#include <ringfill/document/in_span.hpp>

#include <fmt/format.h>

namespace ringfill {

bool in_span(double number, const Span& span) {
    const bool above = span.low_is_open ? number > span.low : number >= span.low;
    return above && number <= span.high;
}

std::string span_in_words(const Span& span, std::string_view unit, double factor) {
    const std::string_view gap = unit.empty() ? "" : " ";
    if (span.low_is_open)
        return fmt::format("over {:.9g}{}{} and at most {:.9g}{}{}", span.low / factor, gap, unit,
                           span.high / factor, gap, unit);
    return fmt::format("from {:.9g}{}{} to {:.9g}{}{}", span.low / factor, gap, unit, span.high / factor, gap,
                       unit);
}

} // namespace ringfill
