#include <ringfill/report/page/sheet.hpp>

#include <algorithm>
#include <set>
#include <string_view>

#include <fmt/format.h>

#include <ringfill/report/page/sheet_parts.hpp>
#include <ringfill/report/page/sheet_style.hpp>
#include <ringfill/say/working_words.hpp>

namespace ringfill {
namespace {

Markup head_of_page(const Plan& plan) {
    // The foot of every page of paper.
    const std::string foot =
        fmt::format("@page {{ margin: 12mm; @bottom-left {{ content: \"{}\"; font: 7pt sans-serif; "
                    "white-space: nowrap; }} @bottom-right {{ content: counter(page) \" / \" counter(pages); "
                    "font: 7pt sans-serif; }} }}\n",
                    closing());
    return element("head", Markup::as_written(
                               "<meta charset=\"utf-8\"/>"
                               "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>") +
                               element("title", "Hot-work notes, not a permit: " + plan.title) +
                               element("style", Markup::as_written(std::string(sheet_style) + foot)));
}

/// A section of the page. @param label what a screen reader calls it.
Markup section(const std::string& kind, const std::string& label, const Markup& content) {
    return element("section", content, {{"class", kind}, {"aria-label", label}});
}

constexpr int blank_lines = 8;

/// How a source is known: read, restated or memory; practice has no source, and the job and what is worked
/// out from it need none.
std::string seen_of(const std::string& key, const Source& source) {
    if (source.kind == "practice")
        return "no source";
    return key == "own" || key == "job" || key == "approved" ? std::string("–") : source.seen;
}

/// Every text that stands in brackets: a long page is read once, not once a source.
std::set<std::string_view> in_brackets(std::string_view printed) {
    std::set<std::string_view> texts;
    for (std::size_t at = printed.find('['); at != std::string_view::npos; at = printed.find('[', at + 1))
        texts.insert(printed.substr(at + 1, printed.find(']', at) - at - 1));
    return texts;
}

/// The path of a figure, which may break after its parts.
Markup path_of(const std::string& at, const std::string& figure) {
    Markup parts;
    for (std::size_t from = 0; from < figure.size();) {
        const std::size_t end = std::min(figure.find_first_of("._", from), figure.size() - 1) + 1;
        parts += figure.substr(from, end - from) + Markup::as_written("<wbr/>");
        from = end;
    }
    return element("span", parts, {{"data-text", at}});
}

/// Lines to write on.
Markup blank_lines_part() {
    const auto line = [](std::size_t) { return element("div", {}, {{"class", "line"}}); };
    return element("h2", "Notes by hand") +
           element("div", each(blank_lines, line), {{"class", "lines"}, {"aria-hidden", "true"}});
}

/// The sources whose keys stand in brackets in what is printed, with how each is known.
Markup sources_part(const Bibliography& sources, const std::string& printed) {
    PageTable table = table_of("Sources named in brackets. Known: read in the source, restated in another "
                               "document that quotes it, or from memory and not looked up; common practice "
                               "has no source",
                               "small told wide", {"key", "title", "edition", "place", "known"});
    const std::set<std::string_view> named = in_brackets(printed);
    const auto unless_none = [](const std::string& text) { return text == "-" ? std::string() : text; };
    for (const auto& [key, source] : sources)
        if (named.contains(escape_markup(key)))
            table.rows.push_back(row(key, source.title, unless_none(source.edition),
                                     unless_none(source.place), seen_of(key, source)));
    return heading("sources", "Sources") + written(table);
}

/// What is out of the usual, and the values that the job left out.
Markup notes_part(const Plan& plan) {
    const Part result = result_of(plan);
    const auto note_at = [&](std::size_t i) {
        return element("li", result.text(fmt::format("notes[{}]", i), plan.notes[i]));
    };
    const Markup notes = heading("notes", "Notes") + element("ul", each(plan.notes.size(), note_at));
    if (plan.assumed.empty())
        return notes;
    PageTable table = table_of("Values that the job file left out", "small", {"field", "taken", "source"});
    table.add_list(result, "assumed", plan.assumed, [](const Part& in, const Assumed& assumed, auto) {
        return row(in.text("field", assumed.path), in.text("value", assumed.value),
                   fmt::format("[{}]", assumed.source));
    });
    return notes + element("h2", "Assumed") + written(table);
}

/// How every figure was reached, as a compact table.
Markup working_part(const Plan& plan) {
    PageTable table = table_of("Every figure of the result: value, formula, what goes into it, source",
                               "tiny wide", {"figure", "value", "formula", "inputs", "source"}, {1, 2});
    table.add_list(result_of(plan), "working", plan.working, [](const Part& in, const Working& work, auto) {
        return row(path_of(in.at("figure"), work.figure), in.figure("value", value_text(work)),
                   in.text("formula", work.formula),
                   element("span", inputs_of(work), {{"data-inputs", in.at("inputs")}}),
                   fmt::format("[{}]", work.source));
    });
    return element("section",
                   heading("working", "Working") +
                       element("p", "In the trade's metric units, as the result file writes them.") +
                       written(table),
                   {{"class", "working"}});
}

} // namespace

std::string sheet(const Job& job, const Plan& plan, const Bibliography& sources) {
    // What can hurt stands before the bores: it is read before anything is lit.
    Markup body = element("header", sheet_head(plan)) + sheet_take(plan) + sheet_day(plan) +
                  section("safety", "Fire watch and cautions", sheet_fire_watch(plan) + job_cautions(plan));
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        body += sheet_bore({result_of(plan).in("bores", i), plan, job.bores.at(i), plan.bores[i],
                            fmt::format("bore-{}", i + 1)});
    const Markup lines = blank_lines_part();
    const Markup notes = notes_part(plan);
    const Markup working = working_part(plan);
    const std::string printed = (body + lines + notes + working).written();
    body += section("job", "For the whole job", lines + sources_part(sources, printed) + notes) + working;
    const Markup page = element("body", element("main", body) + element("footer", element("p", closing())));
    return "<!DOCTYPE html>\n" + element("html", head_of_page(plan) + page, {{"lang", "en-GB"}}).written() +
           "\n";
}

} // namespace ringfill
