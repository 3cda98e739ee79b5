#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include <ringfill/material/abi.h>

namespace ringfill::family {

inline std::string_view view_of(rf_text text) {
    return text.size == 0 ? std::string_view() : std::string_view(text.data, text.size);
}

/// A number of a question by its name, in the unit the name ends in; nothing when it is not known. What is
/// not known is never zero: a rule that needs it takes the worst case.
inline std::optional<double> number_of(const rf_question& question, std::string_view name) {
    for (std::uint64_t i = 0; i < question.number_count; ++i)
        if (view_of(question.numbers[i].name) == name)
            return question.numbers[i].value;
    return std::nullopt;
}

} // namespace ringfill::family
