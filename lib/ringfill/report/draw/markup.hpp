#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ringfill {

/// Text made fit for a page, between tags or in an attribute: what `printable` leaves of it (however long),
/// with & < > " ' written out.
std::string escape_markup(std::string_view utf8);

/// A piece of a page, whole in itself. A text comes into it only through `words` or an attribute, both of
/// which escape it; the well-formedness of XML is kept, so that any reader can parse the page.
class Markup {
  public:
    bool empty() const { return written_.empty(); }
    const std::string& written() const { return written_; }

    /// Takes markup as it is written: drawings and our own fixed text, never anything from a job or a table.
    static Markup as_written(std::string own);

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

/// A text.
Markup words(std::string_view utf8);

/// <name attributes>content</name>
Markup element(std::string_view name, const Markup& content, const Attributes& attributes = {});

/// The same around a text.
Markup element(std::string_view name, std::string_view utf8, const Attributes& attributes = {});

} // namespace ringfill
