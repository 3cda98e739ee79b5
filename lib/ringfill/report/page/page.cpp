#include <ringfill/report/page/page.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

constexpr std::string_view shown_names[] = {"", "twice", "up", "down", "clock", "count"};

Attributes attributes_of(const Sentence& sentence, const std::string& bore) {
    Attributes attributes{{"class", sentence.stands == Stands::stop ? "told stop" : "told"}};
    std::string figures;
    for (const std::string& path : sentence.figures)
        figures += (figures.empty() ? "" : " ") + member_path(bore, path);
    if (!figures.empty())
        attributes.emplace_back("data-figures", figures);
    return attributes;
}

bool holds_numbers(const PageTable& table, std::size_t column) {
    return column >= table.numbers.first && column < table.numbers.second;
}

Markup cell(const PageTable& table, std::string_view name, const Markup& content, Attributes attributes,
            std::size_t column) {
    if (holds_numbers(table, column))
        attributes.emplace_back("class", "number");
    return element(name, content, attributes);
}

Markup row_of(const PageTable& table, const PageTable::Row& row) {
    Markup cells;
    for (std::size_t i = 0; i < row.size(); ++i)
        cells += i == 0 ? cell(table, "th", row[i], {{"scope", "row"}, {"role", "rowheader"}}, i)
                        : cell(table, "td", row[i], {{"role", "cell"}, {"data-head", table.heads.at(i)}}, i);
    return element("tr", cells, {{"role", "row"}});
}

} // namespace

std::string Part::at(const std::string& name) const {
    return member_path(path, name);
}

Markup Part::figure(const std::string& name, const std::string& shown, Shown how) const {
    Attributes attributes{{"data-figure", at(name)}};
    if (how != Shown::plainly)
        attributes.emplace_back("data-shown", shown_names[static_cast<std::size_t>(how)]);
    return element("span", shown, attributes);
}

Markup Part::text(const std::string& name, const std::string& text) const {
    return element("span", text, {{"data-text", at(name)}});
}

Markup paragraphs(const Sentences& sentences, const std::string& bore) {
    Markup all;
    Markup list;
    const auto end_list = [&] {
        if (!list.empty())
            all += element("ul", list);
        list = {};
    };
    for (const Sentence& sentence : sentences) {
        const bool is_advice = sentence.stands == Stands::item;
        if (!is_advice)
            end_list();
        (is_advice ? list : all) +=
            element(is_advice ? "li" : "p", sentence.text, attributes_of(sentence, bore));
    }
    end_list();
    return all;
}

Markup tick_box(const std::string& label) {
    return element("span", Markup(), {{"class", "tick"}, {"role", "img"}, {"aria-label", label}});
}

Markup framed(std::string_view caption, std::string drawing) {
    return element("figure", element("figcaption", caption) + Markup::as_written(std::move(drawing)));
}

void PageTable::add_list(std::size_t count, const Ends& ends, const std::function<Row(std::size_t)>& row_at,
                         const std::function<Row(std::size_t, std::size_t)>& left_out) {
    for (std::size_t i = 0; i < count; ++i) {
        if (count > ends.longest && i == ends.at_begin) {
            rows.push_back(left_out(i, count - ends.at_end));
            i = count - ends.at_end;
        }
        rows.push_back(row_at(i));
    }
}

Markup written(const PageTable& table) {
    Markup heads;
    for (std::size_t i = 0; i < table.heads.size(); ++i)
        heads += cell(table, "th", table.heads[i], {{"scope", "col"}, {"role", "columnheader"}}, i);
    Markup rows;
    for (const PageTable::Row& row : table.rows)
        rows += row_of(table, row);
    // A table set as blocks is no table any more to a screen reader, so its roles are written out.
    const std::string kind = table.wide ? table.kind + (table.kind.empty() ? "wide" : " wide") : table.kind;
    Attributes attributes{{"role", "table"}};
    if (!kind.empty())
        attributes.emplace_back("class", kind);
    return element("table",
                   element("caption", table.caption) +
                       element("thead", element("tr", heads, {{"role", "row"}}), {{"role", "rowgroup"}}) +
                       element("tbody", rows, {{"role", "rowgroup"}}),
                   attributes);
}

} // namespace ringfill
