#include <ringfill/report/page/sheet.hpp>

#include <fmt/format.h>

#include <ringfill/report/page/sheet_bore.hpp>
#include <ringfill/report/page/sheet_cautions.hpp>
#include <ringfill/report/page/sheet_end.hpp>
#include <ringfill/report/page/sheet_fire_watch.hpp>
#include <ringfill/report/page/sheet_head.hpp>
#include <ringfill/report/page/sheet_style.hpp>
#include <ringfill/report/text/closing.hpp>

namespace ringfill {
namespace {

Markup head_of_page(const Plan& plan) {
    return element("head", Markup::as_written(
                               "<meta charset=\"utf-8\"/>"
                               "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>") +
                               element("title", "Hot-work notes, not a permit: " + plan.title) +
                               element("style", Markup::as_written(sheet_style(closing()))));
}

} // namespace

std::string sheet(const Job& job, const Plan& plan, const Bibliography& sources) {
    Markup body = element("header", sheet_head(plan));
    body += sheet_take(plan) + sheet_day(plan);
    // What can hurt stands before the bores: it is read before anything is lit.
    body += element("section", sheet_fire_watch(plan) + job_cautions(plan),
                    {{"class", "safety"}, {"aria-label", "Fire watch and cautions"}});
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        body += sheet_bore({plan, job.bores.at(i), plan.bores[i], fmt::format("bores[{}]", i),
                            fmt::format("bore-{}", i + 1)});
    Markup end = sheet_blank_lines();
    const Markup notes = sheet_notes(plan);
    const Markup working = sheet_working(plan);
    const std::string printed = body.written() + end.written() + notes.written() + working.written();
    end += sheet_sources(sources, printed) + notes;
    body += element("section", end, {{"class", "job"}, {"aria-label", "For the whole job"}}) + working;
    const Markup page = element("body", element("main", body) + element("footer", element("p", closing())));
    return "<!DOCTYPE html>\n" + element("html", head_of_page(plan) + page, {{"lang", "en-GB"}}).written() +
           "\n";
}

} // namespace ringfill
