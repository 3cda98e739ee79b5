#include <array>

#include <fmt/format.h>

#include <ringfill/report/page/sheet_parts.hpp>
#include <ringfill/say/boring_sentences.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

PageTable::Row cut_row(const SheetBore& bore, std::size_t i) {
    const Cut& cut = bore.planned.boring.cuts[i];
    const Part in = bore.in("boring.cuts", i);
    const auto [from, to] = shown_diameters(cut, bore.units);
    return PageTable::row(
        words_for(name_of(cut.kind)), in.figure("depth_mm", show_pitch(cut.depth, bore.units)),
        in.figure("diameter_from_mm", from), in.figure("diameter_to_mm", to), in.figure("time_s", cut.time));
}

Markup cut_table(const SheetBore& bore) {
    const BoringPlan& boring = bore.planned.boring;
    PageTable table{.caption = "Cuts",
                    .heads = {"cut", "a side", "from", "to", "time"},
                    .numbers = {1, 5},
                    .kind = "cuts"};
    table.add_list(
        boring.cuts.size(), {40, 20, 12}, [&](std::size_t i) { return cut_row(bore, i); },
        [](std::size_t from, std::size_t before) {
            return PageTable::row(fmt::format("… {} cuts more, in the result file", before - from), "", "",
                                  "", "");
        });
    for (std::size_t i = 0; i < boring.facing.size(); ++i) {
        const Facing& face = boring.facing[i];
        const Part in = bore.in("boring.facing", i);
        table.add(fmt::format("face {}, ", i + 1) + in.figure("cuts", face.cuts) + " cuts at " +
                      in.figure("rpm", show_turning(face.bar.used)),
                  in.figure("depth_mm", show_pitch(face.depth, bore.units)), "", "",
                  in.figure("time_s", face.time));
    }
    return written(table);
}

/// What the gauge must read: at 20 °C, and while the bore is warm.
Markup gauge_table(const SheetBore& bore) {
    const BoringPlan& boring = bore.planned.boring;
    const UnitSystem units = bore.units;
    const std::string at_20 = show(celsius(reference_temperature_degC), units);
    PageTable table{.caption = "What the gauge must read, itself at " + at_20,
                    .heads = {"bore at", "larger by", "from", "to"},
                    .numbers = {1, 4},
                    .kind = "gauge"};
    // The limits under their names in a part of the result, or the one size.
    using Names = std::array<std::string, 3>;
    const auto add = [&](const Markup& at, const Markup& growth, const Part& in, const Names& names,
                         const std::optional<std::pair<Length, Length>>& limits, Length size) {
        PageTable::Row row{at, growth};
        if (limits) {
            row.push_back(in.figure(names[0], show_fine_low(limits->first, units), Shown::up));
            row.push_back(in.figure(names[1], show_fine_high(limits->second, units), Shown::down));
        } else {
            row.push_back(in.figure(names[2], show_fine(size, units)));
            row.push_back("no limits given");
        }
        table.rows.push_back(std::move(row));
    };
    std::optional<std::pair<Length, Length>> limits;
    if (boring.limits)
        limits = {boring.limits->low, boring.limits->high};
    add(at_20, "–", bore.in("boring"), {"limits_mm[0]", "limits_mm[1]", "final_diameter_mm"}, limits,
        boring.final_diameter);
    for (std::size_t i = 0; i < boring.gauge.size(); ++i) {
        const GaugeReading& gauge = boring.gauge[i];
        const Part in = bore.in("boring.gauge", i);
        add(in.figure("at_degC", gauge.at), in.figure("growth_mm", show_fine(gauge.growth, units)), in,
            {"low_mm", "high_mm", "reading_mm"}, gauge.limits, gauge.reading);
    }
    return written(table);
}

} // namespace

Markup sheet_boring(const SheetBore& bore) {
    return element("h3", "Boring") + paragraphs({bar_sentence(bore.planned, bore.units)}, bore.path) +
           cut_table(bore) + gauge_table(bore) +
           paragraphs(boring_sentences(bore.planned.boring, bore.units), bore.path);
}

} // namespace ringfill
