#include <ringfill/report/page/sheet_bore.hpp>

#include <fmt/format.h>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/sheet_cautions.hpp>

namespace ringfill {
namespace {

Markup drawings(const SheetBore& bore) {
    const auto framed = [](std::string drawing, std::string_view caption) {
        return element("figure", element("figcaption", caption) + Markup::as_written(std::move(drawing)));
    };
    return element("div",
                   framed(cross_section(bore.worn, bore.planned, bore.units(), bore.id + "-cross"),
                          "Across, seen from the near face") +
                       framed(longitudinal_section(bore.worn, bore.planned, bore.units(), bore.id + "-long"),
                              "Along the axis"),
                   {{"class", "drawings"}});
}

} // namespace

Markup sheet_bore(const SheetBore& bore) {
    Markup title = words("Bore: ") + as_told(bore.at("name"), bore.planned.name);
    if (bore.planned.count > 1)
        title += words(", each of ") + figure(bore.at("count"), fmt::format("{}", bore.planned.count));
    return element("section",
                   element("h2", title, {{"id", bore.id}}) + sheet_facts(bore) + drawings(bore) +
                       sheet_layers(bore) + sheet_heat(bore) + sheet_boring(bore) + sheet_forms(bore) +
                       bore_cautions(bore.plan, bore.planned.name),
                   {{"class", "bore"}, {"aria-labelledby", bore.id}});
}

} // namespace ringfill
