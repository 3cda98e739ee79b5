#include <ringfill/report/page/page_table.hpp>

namespace ringfill {
namespace {

Markup head_of(const PageTable& table) {
    Markup cells;
    for (const PageColumn& column : table.columns) {
        Attributes attributes{{"scope", "col"}, {"role", "columnheader"}};
        if (column.is_number)
            attributes.emplace_back("class", "number");
        cells += element("th", column.head, attributes);
    }
    return element("thead", element("tr", cells, {{"role", "row"}}), {{"role", "rowgroup"}});
}

Markup row_of(const PageTable& table, const std::vector<Markup>& row) {
    Markup cells;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const PageColumn& column = table.columns.at(i);
        const bool names_row = i == table.row_head;
        Attributes attributes;
        if (names_row)
            attributes = {{"scope", "row"}, {"role", "rowheader"}};
        else
            attributes = {{"role", "cell"}, {"data-head", column.head}};
        if (column.is_number)
            attributes.emplace_back("class", "number");
        cells += element(names_row ? "th" : "td", row[i], attributes);
    }
    return element("tr", cells, {{"role", "row"}});
}

} // namespace

Markup written(const PageTable& table) {
    Markup rows;
    for (const auto& row : table.rows)
        rows += row_of(table, row);
    // Roles are said because a table set as blocks is no table any more to a screen reader.
    const std::string kind = table.wide ? table.kind + (table.kind.empty() ? "wide" : " wide") : table.kind;
    Attributes attributes{{"role", "table"}};
    if (!kind.empty())
        attributes.emplace_back("class", kind);
    return element("table",
                   element("caption", table.caption) + head_of(table) +
                       element("tbody", rows, {{"role", "rowgroup"}}),
                   attributes);
}

} // namespace ringfill
