#pragma once

#include <concepts>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ringfill {

/// Text made fit for a page, between tags or in an attribute: what `printable` leaves of it (however long),
/// with & < > " ' written out.
std::string escape_markup(std::string_view utf8);

/// A piece of a page, whole in itself. A text is escaped where it becomes markup or an attribute, and the
/// markup is well-formed XML, so that any reader can parse the page.
class Markup {
  public:
    Markup() = default;
    template <std::convertible_to<std::string_view> Text>
    Markup(const Text& text) : written_(escape_markup(text)) {}

    bool empty() const { return written_.empty(); }
    const std::string& written() const { return written_; }

    /// Takes markup as it is written: drawings and our own fixed text, never anything from a job or a table.
    static Markup as_written(std::string own) {
        Markup markup;
        markup.written_ = std::move(own);
        return markup;
    }

    Markup& operator+=(const Markup& next) {
        written_ += next.written_;
        return *this;
    }
    friend Markup operator+(Markup first, const Markup& second) { return first += second; }

  private:
    std::string written_;
};

/// Attributes by their names; values are escaped.
using Attributes = std::vector<std::pair<std::string_view, std::string>>;

/// <name attributes>content</name>
Markup element(std::string_view name, const Markup& content, const Attributes& attributes = {});

} // namespace ringfill
