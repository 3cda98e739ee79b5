#include <fmt/format.h>

#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/page_table.hpp>
#include <ringfill/report/page/sheet_bore.hpp>
#include <ringfill/report/text/boring_text.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A list of more cuts is told by its ends.
constexpr std::size_t longest_list = 40;
constexpr std::size_t kept_at_begin = 20;
constexpr std::size_t kept_at_end = 12;

std::vector<Markup> cut_row(const SheetBore& bore, std::size_t i) {
    const Cut& cut = bore.planned.boring.cuts[i];
    const UnitSystem units = bore.units();
    const bool to_size = cut.kind == CutKind::finish || cut.kind == CutKind::spring;
    const auto at = [&](std::string_view name) {
        return bore.at(fmt::format("boring.cuts[{}].{}", i, name));
    };
    return {words(words_for(cut.kind)), figure(at("depth_mm"), show_pitch(cut.depth, units)),
            figure(at("diameter_from_mm"),
                   cut.kind == CutKind::spring ? show_fine(cut.from, units) : show(cut.from, units)),
            figure(at("diameter_to_mm"), to_size ? show_fine(cut.to, units) : show(cut.to, units)),
            figure(at("time_s"), show(cut.time))};
}

Markup cut_table(const SheetBore& bore) {
    const BoringPlan& boring = bore.planned.boring;
    PageTable table{"Cuts", {{"cut"}, {"a side", true}, {"from", true}, {"to", true}, {"time", true}}};
    table.kind = "cuts";
    const std::size_t count = boring.cuts.size();
    for (std::size_t i = 0; i < count; ++i) {
        if (count > longest_list && i == kept_at_begin) {
            const std::size_t left = count - kept_at_begin - kept_at_end;
            table.rows.push_back(
                {words(fmt::format("… {} cuts more, in the result file", left)), {}, {}, {}, {}});
            i += left;
        }
        table.rows.push_back(cut_row(bore, i));
    }
    for (std::size_t i = 0; i < boring.facing.size(); ++i) {
        const Facing& face = boring.facing[i];
        const auto at = [&](std::string_view name) {
            return bore.at(fmt::format("boring.facing[{}].{}", i, name));
        };
        table.rows.push_back({words(fmt::format("face {}, ", i + 1)) +
                                  figure(at("cuts"), fmt::format("{}", face.cuts)) + words(" cuts at ") +
                                  figure(at("rpm"), show_turning(face.bar.used)),
                              figure(at("depth_mm"), show_pitch(face.depth, bore.units())),
                              {},
                              {},
                              figure(at("time_s"), show(face.time))});
    }
    return written(table);
}

/// What the gauge must read: at 20 °C, and while the bore is warm.
Markup gauge_table(const SheetBore& bore) {
    const BoringPlan& boring = bore.planned.boring;
    const UnitSystem units = bore.units();
    PageTable table{fmt::format("What the gauge must read, itself at {}",
                                show(celsius(reference_temperature_degC), units)),
                    {{"bore at"}, {"larger by", true}, {"from", true}, {"to", true}}};
    table.kind = "gauge";
    const std::string at_20 = show(celsius(reference_temperature_degC), units);
    if (boring.limits)
        table.rows.push_back(
            {words(at_20), words("–"),
             figure(bore.at("boring.limits_mm[0]"), show_fine_low(boring.limits->low, units), Shown::up),
             figure(bore.at("boring.limits_mm[1]"), show_fine_high(boring.limits->high, units),
                    Shown::down)});
    else
        table.rows.push_back(
            {words(at_20), words("–"),
             figure(bore.at("boring.final_diameter_mm"), show_fine(boring.final_diameter, units)),
             words("no limits given")});
    for (std::size_t i = 0; i < boring.gauge.size(); ++i) {
        const GaugeReading& gauge = boring.gauge[i];
        const auto at = [&](std::string_view name) {
            return bore.at(fmt::format("boring.gauge[{}].{}", i, name));
        };
        std::vector<Markup> row{figure(at("at_degC"), show(gauge.at, units)),
                                figure(at("growth_mm"), show_fine(gauge.growth, units))};
        if (boring.limits) {
            row.push_back(
                figure(at("low_mm"), show_fine_low(boring.limits->low + gauge.growth, units), Shown::up));
            row.push_back(figure(at("high_mm"), show_fine_high(boring.limits->high + gauge.growth, units),
                                 Shown::down));
        } else {
            row.push_back(figure(at("reading_mm"), show_fine(boring.final_diameter + gauge.growth, units)));
            row.push_back(words("no limits given"));
        }
        table.rows.push_back(std::move(row));
    }
    return written(table);
}

} // namespace

Markup sheet_boring(const SheetBore& bore) {
    Sentence bar{bar_sentence(bore.planned, bore.units()),
                 "  ",
                 {"boring.rpm", "boring.cutting_speed_m_min", "boring.feed_mm", "boring.feed_mm_min"}};
    return element("h3", "Boring") + paragraphs({bar}, bore.path) + cut_table(bore) + gauge_table(bore) +
           paragraphs(boring_sentences(bore.planned.boring, bore.units()), bore.path);
}

} // namespace ringfill
