#pragma once

#include <functional>
#include <string>
#include <vector>

#include <ringfill/report/draw/markup.hpp>
#include <ringfill/say/sentence.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// How a figure on a page follows from the figure of the result, beside the unit and the rounding to its
/// digits.
enum class Shown {
    plainly,
    twice, ///< a radius as its diameter
    up,    ///< rounded up: a least temperature in steps of 5 °C or 10 °F, a lower limit of size in its last
           ///< digit
    down,  ///< rounded down likewise
    clock, ///< seconds from the start of the day as day and time of the clock
    count, ///< how many a list holds
};

/// A part of the result, such as bores[0].build, and of the job where the job has it under the same path.
/// What the page shows of it carries its path, so that page, result and job can be held against each other.
struct Part {
    std::string path;
    UnitSystem units;

    std::string at(const std::string& name) const;
    Part in(const std::string& name) const { return {at(name), units}; }
    Part in(const std::string& list, std::size_t index) const {
        return in(list + "[" + std::to_string(index) + "]");
    }

    /// A figure of the plan as people read it.
    Markup figure(const std::string& name, const std::string& shown, Shown how = Shown::plainly) const;
    template <class Value>
    Markup figure(const std::string& name, Value value) const {
        return figure(name, text_of(value));
    }
    /// A figure as the job gives it.
    template <class Value>
    Markup given(const std::string& name, Value value) const {
        return element("span", text_of(value), {{"data-given", at(name)}});
    }
    /// A text of the result, word for word.
    Markup text(const std::string& name, const std::string& text) const;

  private:
    template <class Value>
    std::string text_of(Value value) const {
        if constexpr (std::is_integral_v<Value>)
            return std::to_string(value);
        else if constexpr (requires { show(value, units); })
            return show(value, units);
        else
            return show(value);
    }
};

/// Sentences as paragraphs, advice as a list. @param bore the path of their bore in the result; may be empty.
Markup paragraphs(const Sentences& sentences, const std::string& bore);

/// A box to tick.
Markup tick_box(const std::string& label);

/// A drawing of our own under its caption.
Markup framed(std::string_view caption, std::string drawing);

/// A table with a caption and a head that repeats on every sheet of paper. The first cell of a row names the
/// row.
struct PageTable {
    using Row = std::vector<Markup>;

    std::string caption;
    std::vector<std::string> heads;
    std::pair<std::size_t, std::size_t> numbers = {}; ///< columns that are set to the right, from and before
    std::string kind = {};                            ///< a class of the style, may be empty
    bool wide = false; ///< on a narrow screen a row is a block, its cells under their heads
    std::vector<Row> rows = {};

    /// A row of texts and figures; "" is an empty cell.
    template <class... Cells>
    static Row row(const Cells&... cells) {
        return {Markup(cells)...};
    }
    template <class... Cells>
    void add(const Cells&... cells) {
        rows.push_back(row(cells...));
    }

    /// Adds rows of a list; one longer than `longest` is shown by its ends, with the row `left_out` of the
    /// indices from and before between them.
    struct Ends {
        std::size_t longest;
        std::size_t at_begin;
        std::size_t at_end;
    };
    void add_list(std::size_t count, const Ends& ends, const std::function<Row(std::size_t)>& row_at,
                  const std::function<Row(std::size_t, std::size_t)>& left_out);
};

Markup written(const PageTable& table);

} // namespace ringfill
