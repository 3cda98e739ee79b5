#pragma once

#include <functional>
#include <string>
#include <string_view>

namespace ringfill {

/// The words for each of a list, one after another, with a text between two of them. Every room makes its
/// lists so: fmt::join compiles a format of its own in each of them.
template <class Range, class Words = std::identity>
std::string listed(const Range& range, std::string_view between, Words words = {}) {
    std::string text;
    bool first = true;
    for (const auto& part : range) {
        text.append(first ? "" : between).append(std::invoke(words, part));
        first = false;
    }
    return text;
}

} // namespace ringfill
