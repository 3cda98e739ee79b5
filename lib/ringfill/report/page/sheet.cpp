#include <ringfill/report/page/sheet.hpp>

#include <fmt/format.h>

#include <ringfill/report/page/sheet_parts.hpp>
#include <ringfill/report/page/sheet_style.hpp>

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

} // namespace

std::string sheet(const Job& job, const Plan& plan, const Bibliography& sources) {
    // What can hurt stands before the bores: it is read before anything is lit.
    Markup body = element("header", sheet_head(plan)) + sheet_take(plan) + sheet_day(plan) +
                  section("safety", "Fire watch and cautions", sheet_fire_watch(plan) + job_cautions(plan));
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        body += sheet_bore({{fmt::format("bores[{}]", i), plan.units},
                            plan,
                            job.bores.at(i),
                            plan.bores[i],
                            fmt::format("bore-{}", i + 1)});
    const Markup lines = sheet_blank_lines();
    const Markup notes = sheet_notes(plan);
    const Markup working = sheet_working(plan);
    const std::string printed = (body + lines + notes + working).written();
    body += section("job", "For the whole job", lines + sheet_sources(sources, printed) + notes) + working;
    const Markup page = element("body", element("main", body) + element("footer", element("p", closing())));
    return "<!DOCTYPE html>\n" + element("html", head_of_page(plan) + page, {{"lang", "en-GB"}}).written() +
           "\n";
}

} // namespace ringfill
