#include <ringfill/report/csv/plan_csv.hpp>

#include <fmt/format.h>

#include <ringfill/report/csv/csv.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/report/text/passes_text.hpp>
#include <ringfill/say/quote_words.hpp>

namespace ringfill {
namespace {

/// A row has the same members in all rows of its table, in the order of the columns; absent ones are null.
using TableRow = Value::Object;

template <class... Members>
TableRow row(Members... members) {
    return {std::move(members)...};
}

/// @param pattern any row, for the headings.
std::string table_csv(const TableRow& pattern, const std::vector<TableRow>& rows) {
    std::vector<Value::List> cells(1);
    for (const Member& column : pattern)
        cells.front().emplace_back(column.name);
    for (const TableRow& each : rows)
        cells.push_back(list_of(each, &Member::value));
    return csv(cells);
}

TableRow need_row(const Need& need, UnitSystem units) {
    const auto words = [](const PackCount& pack) { return fmt::format("{} x {}", pack.count, pack.pack); };
    return row(member("item", item_text(need, units)), member("need", need.need),
               member("reserve", need.reserve), member("unit", unit_text(unit_of(need.kind))),
               member("load", listed(need.cover, " + ", words)), member("supplied", need.supplied),
               member("spare", need.spare), member("why", need.why), member("source", need.source));
}

TableRow pass_row(const BorePlan& bore, const PassRow& pass) {
    return row(member("bore", bore.name), member("count", bore.count), member("pass", pass.name()),
               member("number", pass.number), member("from_diameter_mm", pass.from),
               member("to_diameter_mm", pass.to), member("layers", pass.layers), member("rings", pass.rings),
               member("pitch_mm", pass.pitch), member("travel_mm_min", pass.travel),
               member("torch_first_rpm", pass.first_torch), member("torch_last_rpm", pass.last_torch),
               member("path_mm", pass.path), member("laid_kg", pass.laid), member("arc_s", pass.arc));
}

/// A cut, the facing of a face, or what stands between them.
struct BoringStep {
    std::string_view name;
    int pieces = 1;
    Time time;
    std::optional<Turning> bar = {};
    std::optional<Length> feed = {};
    std::optional<Length> depth = {};
    std::optional<Length> from = {};
    std::optional<Length> to = {};
};

TableRow step_row(const BorePlan& bore, const BoringStep& step) {
    return row(member("bore", bore.name), member("count", bore.count), member("step", step.name),
               member("pieces", step.pieces), member("depth_mm", step.depth),
               member("from_diameter_mm", step.from), member("to_diameter_mm", step.to),
               member("rpm", step.bar), member("feed_mm", step.feed), member("time_s", step.time));
}

/// @param price as a text: of a unit, or a share of what stands above.
TableRow quote_row(const Quote& quote, std::string_view part, bool counts, const QuoteLine& line,
                   const std::string& price) {
    const auto number = [](Thousandths quantity) { return static_cast<double>(quantity) / 1000; };
    const auto money = [&](Minor amount) { return money_text(amount, quote.currency.exponent.value); };
    return row(member("part", part), member("counts", counts ? "yes" : "no"), member("item", line.item),
               member("quantity", given(line.quantity, number)), member("unit", line.unit),
               member("of", given(line.part ? line.part->supplied : std::nullopt, number)),
               member("price", price), member("amount", given(line.amount, money)),
               member("currency", quote.currency.name), member("missing", line.missing));
}

} // namespace

std::string take_csv(const Plan& plan) {
    std::vector<TableRow> rows;
    for (const Need& need : plan.take)
        rows.push_back(need_row(need, plan.units));
    return table_csv(need_row({}, plan.units), rows);
}

std::string passes_csv(const Plan& plan) {
    std::vector<TableRow> rows;
    for (const BorePlan& bore : plan.bores)
        for (const PassRow& pass : pass_rows(bore))
            rows.push_back(pass_row(bore, pass));
    return table_csv(pass_row({}, {}), rows);
}

std::string boring_csv(const Plan& plan) {
    std::vector<TableRow> rows;
    for (const BorePlan& bore : plan.bores) {
        const auto add = [&](const BoringStep& step) { rows.push_back(step_row(bore, step)); };
        const BoringPlan& boring = bore.boring;
        for (const Cut& cut : boring.cuts)
            add({name_of(cut.kind), 1, cut.time, boring.bar.used, boring.settings.feed.value, cut.depth,
                 cut.from, cut.to});
        for (const Facing& face : boring.facing)
            add({"facing", face.cuts, face.time, face.bar.used, face.feed, face.depth});
        for (const Standing& step : boring.standing)
            add({step.step, step.count, step.time()});
    }
    return table_csv(step_row({}, {}), rows);
}

std::string quote_csv(const Plan& plan) {
    std::vector<TableRow> rows;
    if (plan.quote) {
        const Quote& quote = *plan.quote;
        const auto add = [&](std::string_view name, std::optional<Minor> amount,
                             const std::string& share = {}, const std::string& missing = {}) {
            QuoteLine sum;
            sum.amount = amount;
            sum.missing = missing;
            rows.push_back(quote_row(quote, name, true, sum, share));
        };
        for (const QuoteSection& section : quote.sections)
            for (const QuoteLine& line : section.lines)
                rows.push_back(
                    quote_row(quote, in_words(section.part), section.counts, line,
                              line.price ? decimal_text(*line.price, quote.currency.exponent.value) : ""));
        if (quote.total)
            add("sum", quote.subtotal);
        for (const OnTop& one : quote.on_top)
            add(one.name, one.amount, share_text(one.share));
        add("total", quote.total, "", quote.is_whole() ? "" : total_name(quote) + incomplete_text(quote));
    }
    return table_csv(quote_row({}, {}, true, {}, {}), rows);
}

} // namespace ringfill
