#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include <ringfill/material/filler.hpp>

namespace ringfill {

/// An entry of a family being written: rows of name, value and source key, and the keys met on the way.
class EntryPage {
  public:
    void row(std::string name, std::string value, const std::string& source);
    /// One row an element, its name behind a word such as "usual "; the figure behind another.
    void composition(const Composition& composition, std::string_view before = {},
                     std::string_view least = {});
    /// A sentence under the rows.
    void say(const std::string& text, const std::string& source);

    /// A range that may be absent; each end is shown by the function given.
    template <class Quantity, class Show>
    void range(std::string name, const std::optional<Sourced<std::pair<Quantity, Quantity>>>& range,
               Show show_value) {
        if (range)
            row(std::move(name),
                fmt::format("{} to {}", show_value(range->value.first), show_value(range->value.second)),
                range->source);
    }

    /// The rows, then each source that they name.
    std::string text(const Bibliography& sources) const;

  private:
    std::vector<std::vector<std::string>> rows_;
    std::string said_;
    std::set<std::string> keys_;
};

} // namespace ringfill
