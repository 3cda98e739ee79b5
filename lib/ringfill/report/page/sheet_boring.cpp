#include <fmt/format.h>

#include <ringfill/report/page/sheet_parts.hpp>
#include <ringfill/say/boring_sentences.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

Markup cut_table(const SheetBore& bore) {
    const BoringPlan& boring = bore.planned.boring;
    PageTable table = table_of("Cuts", "cuts", {"cut", "a side", "from", "to", "time"}, {1, 5});
    const auto cut_row = [&](const Part& in, const Cut& cut, auto) {
        const auto [from, to] = shown_diameters(cut, bore.units);
        return row(words_for(word_of(cut.kind)), in.figure("depth_mm", show_pitch(cut.depth, bore.units)),
                   in.figure("diameter_from_mm", from), in.figure("diameter_to_mm", to),
                   in.figure("time_s", cut.time));
    };
    const auto left_out = [](std::size_t from, std::size_t before) {
        return row(fmt::format("… {} cuts more, in the result file", before - from), "", "", "", "");
    };
    const auto face_row = [&](const Part& in, const Facing& face, std::size_t i) {
        return row(fmt::format("face {}, ", i + 1) + in.figure("cuts", face.cuts) + " cuts at " +
                       in.figure("rpm", show_turning(face.bar.used)),
                   in.figure("depth_mm", show_pitch(face.depth, bore.units)), "", "",
                   in.figure("time_s", face.time));
    };
    table.add_list(bore, "boring.cuts", boring.cuts, cut_row, {40, 20, 12, left_out});
    return written(table.add_list(bore, "boring.facing", boring.facing, face_row));
}

/// What the gauge must read: at 20 °C, and while the bore is warm.
Markup gauge_table(const SheetBore& bore) {
    const BoringPlan& boring = bore.planned.boring;
    const Part result = bore.in("boring");
    const std::string at_20 = show(celsius(reference_temperature_degC), bore.units);
    PageTable table = table_of("What the gauge must read, itself at " + at_20, "gauge",
                               {"bore at", "larger by", "from", "to"}, {1, 4});
    table.rows = {boring.limits ? row(at_20, "–", result.limit("limits_mm[0]", boring.limits->low, Shown::up),
                                      result.limit("limits_mm[1]", boring.limits->high, Shown::down))
                                : row(at_20, "–", result.fine("final_diameter_mm", boring.final_diameter),
                                      "no limits given")};
    table.add_list(result, "gauge", boring.gauge, [](const Part& in, const GaugeReading& gauge, auto) {
        const Markup at = in.figure("at_degC", gauge.at);
        const Markup growth = in.fine("growth_mm", gauge.growth);
        return gauge.limits ? row(at, growth, in.limit("low_mm", gauge.limits->first, Shown::up),
                                  in.limit("high_mm", gauge.limits->second, Shown::down))
                            : row(at, growth, in.fine("reading_mm", gauge.reading), "no limits given");
    });
    return written(table);
}

} // namespace

Markup sheet_boring(const SheetBore& bore) {
    return element("h3", "Boring") + paragraphs({bar_sentence(bore.planned, bore.units)}, bore.path) +
           cut_table(bore) + gauge_table(bore) +
           paragraphs(boring_sentences(bore.planned.boring, bore.units), bore.path);
}

} // namespace ringfill
