#include <ringfill/report/text/take_text.hpp>

#include <cmath>

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/caution_list.hpp>
#include <ringfill/report/text/frame.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_title = 120; // three lines at most, so that the wire stays at the top

std::string head(const Plan& plan, const Style& style) {
    int bores = 0;
    for (const BorePlan& bore : plan.bores)
        bores += bore.count;
    std::string text = style.strong(wrapped(printable(plan.title, longest_title), ""));
    text += fmt::format("{} {} · {} · {} of arc\n", bores, bores == 1 ? "bore" : "bores", filler_of(plan),
                        show(plan.totals.arc));
    return text + heat_head(plan, style);
}

/// What the bore is filled with stands out. The packs stand at the end of the line, or below it where they
/// would run over the edge of the page.
std::string take_table(const Plan& plan, const Style& style) {
    std::vector<std::vector<std::string>> rows{{"", "need", "on top"}};
    for (const Need& line : plan.take)
        rows.push_back({printable(item_text(line, plan.units), 40), amount(line.need, line, plan.units),
                        amount(line.reserve, line, plan.units)});
    std::string text = style.strong("TAKE") + "\n";
    const auto lines = columns(rows, {false, true, true});
    text += fmt::format("  {}  load\n", lines.front());
    for (std::size_t i = 0; i < plan.take.size(); ++i) {
        const std::string packs = load(plan.take[i]);
        std::string whole = fmt::format("  {}  {}\n", lines[i + 1], packs);
        if (count_characters(whole) > page_width + 1)
            whole = fmt::format("  {}\n{}", lines[i + 1], wrapped(packs, "    load "));
        text += is_filler(plan.take[i].kind) ? style.strong(whole) : whole;
    }
    return text;
}

std::vector<std::string> bore_figures(const BorePlan& bore, UnitSystem units) {
    return {bore.build.skimmed ? show(2.0 * bore.build.skim_radius, units) : "none",
            show(2.0 * bore.layering.end_radius, units),
            fmt::format("{} × {}", bore.layering.layers, bore.layers.front().rings),
            bore.deposition.piece ? fmt::format("{} pieces", bore.metal.pieces)
                                  : show(bore.metal.wire, units),
            show(bore.metal.arc)};
}

/// The names stand before the figures, or above them where they are too long for that.
std::string bore_table(const Plan& plan, const Style& style) {
    std::vector<std::vector<std::string>> rows{{"skim to", "weld to", "layers × rings",
                                                plan.totals.pieces > 0 ? "filler each" : "wire each",
                                                "arc each"}};
    std::vector<std::string> names{""};
    std::size_t longest = 0;
    for (const BorePlan& bore : plan.bores) {
        rows.push_back(bore_figures(bore, plan.units));
        names.push_back(printable(bore.name) + (bore.count > 1 ? fmt::format(" × {}", bore.count) : ""));
        longest = std::max(longest, count_characters(names.back()));
    }
    const auto lines = columns(rows, {true, true, true, true, true});
    std::string text = style.strong("BORES") + "\n";
    const bool beside = 2 + longest + 2 + count_characters(lines.front()) <= page_width;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const std::string& name = names[i];
        if (beside)
            text += fmt::format("  {}{:{}}  {}\n", name, "", longest - count_characters(name), lines[i]);
        else
            text += fmt::format("{}    {}\n", i == 0 ? "" : wrapped(name, "  "), lines[i]);
    }
    return text;
}

std::string reasons(const Plan& plan, const Style& style) {
    std::vector<std::string> lines;
    for (const Need& need : plan.take)
        lines.push_back(fmt::format("{}: {}.", printable(item_text(need, plan.units), 40), need.why));
    return bullets("WHY SO MUCH", lines, style);
}

std::string assumed_list(const Plan& plan, const Style& style) {
    std::vector<std::string> lines;
    for (const Assumed& value : plan.assumed)
        lines.push_back(fmt::format("{}: {} [{}]", printable(value.path, 60), value.value, value.source));
    return lines.empty() ? "" : "\n" + bullets("ASSUMED (not in the job file)", lines, style);
}

} // namespace

std::string amount(double value, const Need& line, UnitSystem units) {
    const bool poured = line.kind == NeedKind::generator_fuel; // in litres or gallons, to a tenth
    if (poured && units == UnitSystem::inch)
        return fmt::format("{:.1f} gal", value * factor::litre / factor::gallon_us);
    switch (unit_of(line.kind)) {
    case NeedUnit::kilogram:
        return show(in_si<Mass>(value), units);
    case NeedUnit::litre:
        return poured ? fmt::format("{:.1f} L", value) : show(in_si<Volume>(value * factor::litre), units);
    case NeedUnit::kilowatt:
        return fmt::format("{:.1f} kW", value);
    case NeedUnit::piece:
        break;
    }
    return fmt::format("{:.0f}", value);
}

std::string filler_of(const Plan& plan) {
    std::string text;
    if (plan.totals.wire > Mass())
        text = fmt::format("{} of wire", show(plan.totals.wire, plan.units));
    std::int64_t electrodes = 0;
    std::int64_t rods = 0;
    for (const BorePlan& bore : plan.bores)
        if (bore.deposition.piece)
            (bore.deposition.piece->form == FillerForm::rod ? rods : electrodes) +=
                std::int64_t{bore.count} * bore.metal.pieces;
    for (const auto& [count, one, many] :
         {std::tuple{electrodes, "electrode", "electrodes"}, std::tuple{rods, "rod", "rods"}})
        if (count > 0)
            text += fmt::format("{}{} {}", text.empty() ? "" : ", ", count, count == 1 ? one : many);
    return text;
}

std::string load(const Need& line) {
    if (comes_singly(line))
        return fmt::format("{:.0f}", line.supplied);
    std::string text;
    for (const PackCount& pack : line.cover)
        text += fmt::format("{}{} × {}", text.empty() ? "" : " + ", pack.count, printable(pack.pack, 30));
    return text.empty() ? "no pack known" : text;
}

std::string take_text(const Plan& plan, const Style& style) {
    return head(plan, style) + "\n" + take_table(plan, style) + "\n" + bore_table(plan, style) + "\n" +
           caution_list(plan, style) + "\n" + reasons(plan, style) + "\n" + note_list(plan, style) +
           assumed_list(plan, style) + closing_line();
}

} // namespace ringfill
