#include <ringfill/report/text/take_text.hpp>

#include <functional>
#include <utility>

#include <fmt/format.h>

#include <range/v3/view/drop.hpp>
#include <range/v3/view/zip.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/take_words.hpp>
#include <ringfill/say/time_sentences.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_title = 120; // three lines at most, so that the wire stays at the top

/// What is melted in all: "4.31 kg of wire", "62 electrodes", or both.
std::string filler_of(const Plan& plan) {
    std::vector<std::string> parts;
    if (plan.totals.wire > Mass())
        parts.push_back(fmt::format("{} of wire", show(plan.totals.wire, plan.units)));
    for (const bool are_rods : {false, true}) {
        std::int64_t count = 0;
        for (const BorePlan& bore : plan.bores)
            if (bore.deposition.piece && (bore.deposition.piece->form == FillerForm::rod) == are_rods)
                count += std::int64_t{bore.count} * bore.metal.pieces;
        if (count > 0)
            parts.push_back(counted(count, are_rods ? "rod" : "electrode"));
    }
    return listed(parts, ", ");
}

/// What the bore is filled with stands out. The packs stand at the end of the line, or below it where they
/// would run over the edge of the page.
std::string take_table(const Plan& plan, const Style& style) {
    Rows rows{{"", "need", "on top"}};
    for (const Need& need : plan.take)
        rows.push_back({printable(item_text(need, plan.units), 40), amount(need.need, need, plan.units),
                        amount(need.reserve, need, plan.units)});
    const auto lines = columns(rows, {false, true, true});
    std::string text = fmt::format("{}\n  {}  load\n", style.strong("TAKE"), lines.front());
    for (const auto& [need, line] : ranges::views::zip(plan.take, lines | ranges::views::drop(1))) {
        std::string whole = fmt::format("  {}  {}\n", line, load(need));
        if (count_characters(whole) > page_width + 1)
            whole = fmt::format("  {}\n{}", line, wrapped(load(need), "    load "));
        text += is_filler(need.kind) ? style.strong(whole) : whole;
    }
    return text;
}

/// The names stand before the figures, or above them where they are too long for that.
std::string bore_table(const Plan& plan, const Style& style) {
    Rows rows{{"", "skim to", "weld to", "layers × rings",
               plan.totals.pieces > 0 ? "filler each" : "wire each", "arc each"}};
    for (const BorePlan& bore : plan.bores)
        rows.push_back({printable(bore.name) + (bore.count > 1 ? fmt::format(" × {}", bore.count) : ""),
                        bore.build.skimmed ? show(2.0 * bore.build.skim_radius, plan.units) : "none",
                        show(2.0 * bore.layering.end_radius, plan.units),
                        fmt::format("{} × {}", bore.layering.layers, bore.layers.front().rings),
                        bore.deposition.piece ? fmt::format("{} pieces", bore.metal.pieces)
                                              : show(bore.metal.wire, plan.units),
                        show(bore.metal.arc)});
    const std::vector<bool> right{false, true, true, true, true, true};
    std::string text = style.strong("BORES") + "\n";
    if (count_characters(columns(rows, right).front()) + 2 <= page_width)
        return text + table(rows, right);
    std::vector<std::string> names;
    for (auto& row : rows)
        names.push_back(std::exchange(row.front(), ""));
    const auto lines = columns(rows, right);
    for (const auto& [name, line] : ranges::views::zip(names, lines))
        text += fmt::format("{}  {}\n", name.empty() ? "" : wrapped(name), line);
    return text;
}

} // namespace

std::string take_text(const Plan& plan, const Style& style) {
    const auto why = [&](const Need& need) {
        return fmt::format("{}: {}.", printable(item_text(need, plan.units), 40), need.why);
    };
    const auto taken = [](const Assumed& value) {
        return fmt::format("{}: {} [{}]", printable(value.path, 60), value.value, value.source);
    };
    return fmt::format(
        "{}{} · {} · {} of arc\n{}\n{}\n{}\n{}\n{}\n{}{}{}", view_title(plan, style, longest_title),
        bores_in_all(plan), filler_of(plan), show(plan.totals.arc), heat_head(plan, style),
        take_table(plan, style), bore_table(plan, style), caution_list(plan, style),
        bullets("WHY SO MUCH", style, plan.take, why), bullets("NOTES", style, plan.notes, std::identity()),
        plan.assumed.empty() ? ""
                             : "\n" + bullets("ASSUMED (not in the job file)", style, plan.assumed, taken),
        closing_line());
}

} // namespace ringfill
