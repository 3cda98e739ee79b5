#include <ringfill/document/in_span.hpp>

#include <fmt/format.h>

namespace ringfill {

bool in_span(double number, const Span& span) {
    const bool above = span.low_is_open ? number > span.low : number >= span.low;
    return above && number <= span.high;
}

std::string span_in_words(const Span& span, std::string_view unit, double factor) {
    const auto in_unit = [&](double end) {
        return fmt::format("{:.9g}{}{}", end / factor, unit.empty() ? "" : " ", unit);
    };
    return (span.low_is_open ? "over " : "from ") + in_unit(span.low) +
           (span.low_is_open ? " and at most " : " to ") + in_unit(span.high);
}

} // namespace ringfill
