#include <ringfill/report/page/sheet_end.hpp>

#include <algorithm>
#include <set>
#include <string_view>

#include <fmt/format.h>

#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/page_table.hpp>
#include <ringfill/report/text/working_text.hpp>

namespace ringfill {
namespace {

constexpr int blank_lines = 8;

/// How a source is known: read, restated or memory; practice has no source, and the job and what is worked
/// out from it need none.
std::string seen_of(const std::string& key, const Source& source) {
    if (source.kind == "practice")
        return "no source";
    return key == "own" || key == "job" || key == "approved" ? std::string("–") : source.seen;
}

std::string said(const std::string& text) {
    return text == "-" ? std::string() : text;
}

/// Every text that stands in brackets: one reading of a long page, not one a source.
std::set<std::string_view> in_brackets(std::string_view printed) {
    std::set<std::string_view> texts;
    for (std::size_t at = printed.find('['); at != std::string_view::npos; at = printed.find('[', at + 1)) {
        const std::size_t end = printed.find(']', at);
        if (end == std::string_view::npos)
            break;
        texts.insert(printed.substr(at + 1, end - at - 1));
    }
    return texts;
}

/// The way of a figure, which may break after its parts.
Markup path_of(const std::string& at, const std::string& figure) {
    Markup parts;
    for (std::size_t from = 0; from < figure.size();) {
        const std::size_t end = std::min(figure.find_first_of("._", from), figure.size() - 1) + 1;
        parts += words(figure.substr(from, end - from)) + Markup::as_written("<wbr/>");
        from = end;
    }
    return element("span", parts, {{"data-text", at}});
}

} // namespace

Markup sheet_blank_lines() {
    Markup lines;
    for (int i = 0; i < blank_lines; ++i)
        lines += element("div", Markup(), {{"class", "line"}});
    return element("h2", "Notes by hand") +
           element("div", lines, {{"class", "lines"}, {"aria-hidden", "true"}});
}

Markup sheet_sources(const Bibliography& sources, const std::string& printed) {
    PageTable table{"Sources named in brackets. Known: read in the source, restated in another document that "
                    "quotes it, or from memory and not looked up; common practice has no source",
                    {{"key"}, {"title"}, {"edition"}, {"place"}, {"known"}}};
    table.wide = true;
    table.kind = "small told";
    const std::set<std::string_view> named = in_brackets(printed);
    for (const auto& [key, source] : sources)
        if (named.contains(escape_markup(key)))
            table.rows.push_back({words(key), words(source.title), words(said(source.edition)),
                                  words(said(source.place)), words(seen_of(key, source))});
    return element("h2", "Sources", {{"id", "sources"}}) + written(table);
}

Markup sheet_notes(const Plan& plan) {
    Markup notes;
    for (std::size_t i = 0; i < plan.notes.size(); ++i)
        notes += element("li", as_told(fmt::format("notes[{}]", i), plan.notes[i]));
    Markup all = element("h2", "Notes", {{"id", "notes"}}) + element("ul", notes);
    if (plan.assumed.empty())
        return all;
    PageTable table{"Values that the job file left out", {{"field"}, {"taken"}, {"source"}}};
    table.kind = "small";
    for (std::size_t i = 0; i < plan.assumed.size(); ++i) {
        const Assumed& one = plan.assumed[i];
        const std::string path = fmt::format("assumed[{}]", i);
        table.rows.push_back({as_told(path + ".field", one.path), as_told(path + ".value", one.value),
                              words(fmt::format("[{}]", one.source))});
    }
    return all + element("h2", "Assumed") + written(table);
}

Markup sheet_working(const Plan& plan) {
    PageTable table{"Every figure of the result: value, formula, what goes into it, source",
                    {{"figure"}, {"value", true}, {"formula"}, {"inputs"}, {"source"}}};
    table.wide = true;
    table.kind = "tiny";
    for (std::size_t i = 0; i < plan.working.size(); ++i) {
        const Working& work = plan.working[i];
        const std::string path = fmt::format("working[{}]", i);
        table.rows.push_back({path_of(path + ".figure", work.figure),
                              figure(path + ".value", fmt::format("{:.7g}{}{}", work.value,
                                                                  work.unit.empty() ? "" : " ", work.unit)),
                              as_told(path + ".formula", work.formula),
                              element("span", inputs_of(work), {{"data-inputs", path + ".inputs"}}),
                              words(fmt::format("[{}]", work.source))});
    }
    return element("section",
                   element("h2", "Working", {{"id", "working"}}) +
                       element("p", "In the trade's metric units, as the result file writes them.") +
                       written(table),
                   {{"class", "working"}});
}

} // namespace ringfill
