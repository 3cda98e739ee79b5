#pragma once

#include <string>
#include <string_view>

#include <ringfill/document/field.hpp>

namespace ringfill {

/// Whether a number is finite and within a span.
bool in_span(double number, const Span& span);

/// A span in words, in a unit: "over 0 mm, up to 10000 mm". Both ends are divided by the factor first.
std::string span_in_words(const Span& span, std::string_view unit, double factor = 1);

} // namespace ringfill
