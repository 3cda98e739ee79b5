#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include <ringfill/material/filler.hpp>
#include <ringfill/report/text/layout.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Shows a number, of a quantity the one in its SI unit, by a pattern such as "{:.4g} MPa", times a factor.
inline auto by(std::string_view pattern, double factor = 1) {
    return [=](auto value) {
        if constexpr (requires { value.value(); })
            return fmt::format(fmt::runtime(pattern), factor * value.value());
        else
            return fmt::format(fmt::runtime(pattern), factor * value);
    };
}

/// Shows the two ends of a range.
inline auto range_by(auto show_value) {
    return [=](const auto& ends) {
        return fmt::format("{} to {}", show_value(ends.first), show_value(ends.second));
    };
}

/// Shows a quantity in the units of the tables.
inline constexpr auto metric = [](auto value) { return show(value, UnitSystem::metric); };
inline constexpr auto as_current = [](Current current) { return show(current); };

/// An entry of a family being written: rows of name, value and source key, and the keys met on the way.
class EntryPage {
  public:
    void row(std::string name, std::string value, const std::string& source) {
        rows_.push_back({std::move(name), std::move(value), "[" + source + "]"});
        keys_.insert(source);
    }
    /// A value with its source, which may be absent.
    template <class Value, class Show>
    void row(std::string name, const Value& value, Show show_value) {
        if constexpr (requires { value.source; })
            row(std::move(name), show_value(value.value), value.source);
        else if (value)
            row(std::move(name), *value, show_value);
    }
    /// One row an element, its name behind a word such as "usual "; the figure behind another.
    void composition(const Composition& parts, std::string_view before = {}, std::string_view least = {}) {
        for (const auto& [element, percent] : parts)
            row(fmt::format("{}{}", before, element), percent, by(fmt::format("{}{{:.4g}} %", least)));
    }
    /// Sentences under the rows.
    void say(const std::string& text, const std::string& source) {
        said_ += wrapped(fmt::format("{} [{}]", text, source), "- ");
        keys_.insert(source);
    }
    void say(const std::vector<Advice>& advice) {
        for (const Advice& one : advice)
            say(one.text, one.source);
    }

    /// The rows, then each source that they name.
    std::string text(const Bibliography& sources) const {
        std::string text = table(rows_, {false, false, false}) + said_ + "\nSOURCES\n";
        for (const auto& [key, at] : sources)
            if (keys_.contains(key))
                text += wrapped(fmt::format("[{}] {}; edition {}; {}; kind: {}; known by: {}.", key, at.title,
                                            at.edition, at.place, at.kind, at.seen),
                                "- ");
        return text;
    }

  private:
    Rows rows_;
    std::string said_;
    std::set<std::string> keys_;
};

} // namespace ringfill
