#pragma once

#include <functional>
#include <string>
#include <vector>

#include <ringfill/fault/place.hpp>
#include <ringfill/report/draw/markup.hpp>
#include <ringfill/say/sentence.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// How a figure on a page follows from the figure of the result, beside the unit and the rounding to its
/// digits: a radius as its diameter; rounded up (a least temperature in steps of 5 °C or 10 °F, a lower limit
/// of size in its last digit) or down likewise; seconds from the start of the day as day and time of the
/// clock; how many a list holds.
enum class Shown { plainly, twice, up, down, clock, count };

/// A part of the result, such as bores[0].build, and of the job where the job has it under the same path.
/// What the page shows of it carries its path, so that page, result and job can be held against each other.
struct Part {
    std::string path;
    UnitSystem units;

    std::string at(const std::string& name) const { return member_path(path, name); }
    Part in(const std::string& name) const { return {at(name), units}; }
    Part in(const std::string& list, std::size_t index) const { return in(element_path(list, index)); }

    /// A figure of the plan as people read it.
    Markup figure(const std::string& name, const std::string& shown, Shown how = Shown::plainly) const;
    template <class Value>
    Markup figure(const std::string& name, Value value) const {
        return figure(name, text_of(value));
    }
    /// A radius of the result as its diameter.
    Markup across(const std::string& name, Length radius) const {
        return figure(name, show(2.0 * radius, units), Shown::twice);
    }
    /// A finished size, to all its digits.
    Markup fine(const std::string& name, Length size) const { return figure(name, show_fine(size, units)); }
    /// A limit of size, rounded as it is shown.
    Markup limit(const std::string& name, Length size, Shown how) const {
        return figure(name, show_limit(size, units, how == Shown::up), how);
    }
    /// A figure as the job gives it.
    template <class Value>
    Markup given(const std::string& name, Value value) const {
        return element("span", text_of(value), {{"data-given", at(name)}});
    }
    /// A text of the result, word for word.
    Markup text(const std::string& name, const std::string& text) const {
        return element("span", text, {{"data-text", at(name)}});
    }

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

/// What `piece_at` makes of each index, one after the other.
template <class PieceAt>
Markup each(std::size_t count, PieceAt piece_at) {
    Markup all;
    for (std::size_t i = 0; i < count; ++i)
        all += piece_at(i);
    return all;
}

/// The head of a part of the page that can be linked to.
inline Markup heading(const std::string& id, const Markup& title) {
    return element("h2", title, {{"id", id}});
}

/// A paragraph of running text in small print.
inline Markup small_print(const Markup& text) {
    return element("p", text, {{"class", "told"}});
}

/// Sentences as paragraphs, advice as a list. @param bore the path of their bore in the result; may be empty.
Markup paragraphs(const Sentences& sentences, const std::string& bore = {});

/// A box to tick.
inline Markup tick_box(const std::string& label) {
    return element("span", {}, {{"class", "tick"}, {"role", "img"}, {"aria-label", label}});
}

/// A drawing of our own under its caption.
inline Markup framed(std::string_view caption, std::string drawing) {
    return element("figure", element("figcaption", caption) + Markup::as_written(std::move(drawing)));
}

/// The cells of a row; "" is an empty one.
using PageRow = std::vector<Markup>;
template <class... Cells>
PageRow row(const Cells&... cells) {
    return {Markup(cells)...};
}

/// A list longer than `longest` is shown by its ends, with the row `left_out` of the indices from and before
/// between them.
struct Ends {
    std::size_t longest = std::string::npos;
    std::size_t at_begin = 0;
    std::size_t at_end = 0;
    std::function<PageRow(std::size_t from, std::size_t before)> left_out = {};
};

/// A table with a caption and a head that repeats on every sheet of paper. The first cell of a row names the
/// row.
struct PageTable {
    std::string caption;
    std::string kind; ///< classes of the style; wide: on a narrow screen a row is a block, its cells under
                      ///< their heads
    std::vector<std::string> heads;
    std::pair<std::size_t, std::size_t> numbers; ///< columns that are set to the right, from and before
    std::vector<PageRow> rows = {};

    /// Adds a row for each item of a list under its name in a part of the result: `row_of(in, item, index)`.
    template <class List, class RowOf>
    PageTable& add_list(const Part& part, const std::string& name, const List& list, RowOf row_of,
                        const Ends& ends = {}) {
        for (std::size_t i = 0; i < list.size(); ++i) {
            if (list.size() > ends.longest && i == ends.at_begin) {
                rows.push_back(ends.left_out(i, list.size() - ends.at_end));
                i = list.size() - ends.at_end;
            }
            rows.push_back(row_of(part.in(name, i), list[i], i));
        }
        return *this;
    }
};

/// A table without rows. @param right the columns that are set to the right, from and before.
inline PageTable table_of(const std::string& title, const std::string& kind,
                          const std::vector<std::string>& heads,
                          std::pair<std::size_t, std::size_t> right = {}) {
    return {title, kind, heads, right};
}

Markup written(const PageTable& table);

} // namespace ringfill
