#include <ringfill/report/page/page.hpp>

#include <ringfill/fault/listed.hpp>

#include <ringfill/fault/listed.hpp>

namespace ringfill {
namespace {

constexpr std::string_view shown_names[] = {"", "twice", "up", "down", "clock", "count"};

Markup written(const Sentence& sentence, const std::string& bore) {
    Attributes attributes{{"class", sentence.stands == Stands::stop ? "told stop" : "told"}};
    const auto in_bore = [&](const std::string& path) { return member_path(bore, path); };
    if (!sentence.figures.empty())
        attributes.emplace_back("data-figures", listed(sentence.figures, " ", in_bore));
    return element(sentence.stands == Stands::item ? "li" : "p", sentence.text, attributes);
}

} // namespace

Markup Part::figure(const std::string& name, const std::string& shown, Shown how) const {
    Attributes attributes{{"data-figure", at(name)}};
    if (how != Shown::plainly)
        attributes.emplace_back("data-shown", shown_names[static_cast<std::size_t>(how)]);
    return element("span", shown, attributes);
}

Markup paragraphs(const Sentences& sentences, const std::string& bore) {
    Markup all;
    Markup list;
    for (std::size_t i = 0; i < sentences.size(); ++i) {
        const bool is_item = sentences[i].stands == Stands::item;
        (is_item ? list : all) += written(sentences[i], bore);
        const bool goes_on = i + 1 < sentences.size() && sentences[i + 1].stands == Stands::item;
        if (is_item && !goes_on)
            all += element("ul", std::exchange(list, {}));
    }
    return all;
}

Markup written(const PageTable& table) {
    // A table set as blocks is no table any more to a screen reader, and its roles are written out.
    const auto cell = [&](std::size_t column, std::string_view name, const Markup& content,
                          Attributes attributes) {
        if (column >= table.numbers.first && column < table.numbers.second)
            attributes.emplace_back("class", "number");
        return element(name, content, attributes);
    };
    const auto line = [](const Markup& cells) { return element("tr", cells, {{"role", "row"}}); };
    const Markup heads = each(table.heads.size(), [&](std::size_t i) {
        return cell(i, "th", table.heads[i], {{"scope", "col"}, {"role", "columnheader"}});
    });
    const Markup rows = each(table.rows.size(), [&](std::size_t r) {
        const PageRow& cells = table.rows[r];
        return line(cell(0, "th", cells.front(), {{"scope", "row"}, {"role", "rowheader"}}) +
                    each(cells.size() - 1, [&](std::size_t i) {
                        return cell(i + 1, "td", cells[i + 1],
                                    {{"role", "cell"}, {"data-head", table.heads.at(i + 1)}});
                    }));
    });
    return element("table",
                   element("caption", table.caption) + element("thead", line(heads), {{"role", "rowgroup"}}) +
                       element("tbody", rows, {{"role", "rowgroup"}}),
                   {{"role", "table"}, {"class", table.kind}});
}

} // namespace ringfill
