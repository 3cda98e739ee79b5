#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/value.hpp>

namespace ringfill {

/// The value as JSON text: two blanks of indent, members in their order, short lists of plain values on one
/// line, numbers in the fewest digits that keep fifteen significant ones. Ends in a line break. Throws
/// std::logic_error for a number that is not finite: no such number may reach a result.
std::string write_json(const Value& value);

/// The same on one line without blanks: one value of JSON Lines, its line break included.
std::string write_json_line(const Value& value);

/// The same put behind a text, without the line break.
void append_json(std::string& text, const Value& value);

/// A text as JSON put behind another. What could disturb a terminal is escaped, so that a result can be
/// looked at; a reader gets the same text.
void append_text(std::string& to, std::string_view text);

/// A number put behind a text in the fewest digits that keep fifteen significant ones, which its scientific
/// form is asked for; never with an exponent between 1e-5 and 1e15. Throws std::logic_error for one that is
/// not finite.
void append_number(std::string& to, double number);

/// The same alone.
std::string write_number(double number);

/// An object of JSON put behind a text member by member, without blanks: for what would cost much to build as
/// a Value first. Begun when made; end() once, after its members.
class LineObject {
  public:
    explicit LineObject(std::string& out) : out_(out) { out_ += '{'; }

    void put(std::string_view name, std::string_view text) {
        begin(name);
        append_text(out_, text);
    }
    void put(std::string_view name, double number) {
        begin(name);
        append_number(out_, number);
    }
    void put(std::string_view name, const std::vector<double>& numbers) {
        begin(name);
        char before = '[';
        for (const double number : numbers) {
            out_ += std::exchange(before, ',');
            append_number(out_, number);
        }
        out_ += numbers.empty() ? "[]" : "]";
    }
    /// An object within, which `fill` gives its members.
    template <class Fill>
    void put_object(std::string_view name, Fill fill) {
        begin(name);
        LineObject inner(out_);
        fill(inner);
        inner.end();
    }
    void end() { out_ += '}'; }

  private:
    void begin(std::string_view name) {
        if (out_.back() != '{')
            out_ += ',';
        append_text(out_, name);
        out_ += ':';
    }

    std::string& out_;
};

} // namespace ringfill
