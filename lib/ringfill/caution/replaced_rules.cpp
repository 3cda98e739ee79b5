#include <ringfill/caution/replaced_rules.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {

std::string shown_figure(const Value& figure, std::string_view unit, UnitSystem units) {
    if (const bool* flag = figure.flag())
        return *flag ? "yes" : "no";
    if (const std::string* text = figure.text())
        return printable(*text);
    if (!figure.number())
        return "none";
    if (unit == "degC")
        return show_exact(celsius(*figure.number()), units);
    const std::string number = write_number(*figure.number());
    return unit.empty() ? number : fmt::format("{} {}", number, unit);
}

void replaced_rules(CautionList& cautions, const std::vector<ReplacedRow>& replaced,
                    const std::set<std::string>& families) {
    for (const ReplacedRow& one : replaced) {
        if (one.lowered.empty() || (!one.family.empty() && !families.contains(one.family)))
            continue;
        const std::string figures = listed(one.lowered, "; ", [&](const LoweredFigure& figure) {
            return fmt::format("{} {}, ours {}", figure.words,
                               shown_figure(figure.theirs, figure.unit, cautions.units),
                               shown_figure(figure.ours, figure.unit, cautions.units));
        });
        cautions.before(
            "{0} of {1} in {2} is less careful than our own table: have somebody qualified stand by "
            "it, or take it out.",
            "{3}", in_quotes(one.row), one.table, printable(one.file), figures);
    }
}

} // namespace ringfill
