#include <ringfill/report/csv/plan_csv.hpp>

#include <boost/algorithm/string/split.hpp>
#include <fmt/format.h>

#include <range/v3/view/enumerate.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/report/csv/csv.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/report/json/rows.hpp>
#include <ringfill/say/quote_words.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {
namespace {

/// A table of some members of the result by their names, which commas part; what a row does not have is an
/// empty cell. Of members of one name the first counts.
std::string table_csv(const std::string& columns, const Value::List& rows) {
    std::vector<std::string> names;
    boost::split(names, columns, [](char sign) { return sign == ','; });
    std::vector<Value::List> cells{{names.begin(), names.end()}};
    for (const Value& row : rows)
        cells.push_back(list_of(names, [&](const std::string& name) {
            const Value* found = row.find(name);
            return found ? *found : Value();
        }));
    return csv(cells);
}

auto bore_members(const BorePlan& bore) {
    return object(member<"bore">(bore.name), member<"count">(bore.count));
}

void add_passes(Value::List& rows, const BorePlan& bore) {
    const auto add = [&](std::string_view pass, std::size_t i, Turning first_torch, Turning last_torch,
                         const auto&... figures) {
        rows.push_back(object(bore_members(bore), member<"pass">(pass), member<"number">(i + 1),
                              member<"torch_first_rpm">(first_torch), member<"torch_last_rpm">(last_torch),
                              figures..., member<"layers">(1)));
    };
    const auto diameters = [](Length from, Length to) {
        return object(member<"from_diameter_mm">(2.0 * from), member<"to_diameter_mm">(2.0 * to));
    };
    for (const auto& [i, fill] : ranges::views::enumerate(bore.grooves))
        if (fill.volume > Volume())
            add("groove", i, fill.torch, fill.torch, groove_object(fill, {}));
    for (const auto& [i, layer] : ranges::views::enumerate(bore.layers))
        add("layer", i, layer.torch, layer.torch, diameters(layer.radius_before, layer.radius_after),
            member<"pitch_mm">(bore.bead.pitch), member<"travel_mm_min">(bore.bead.travel),
            layer_object(layer, i));
    for (const auto& [i, face] : ranges::views::enumerate(bore.faces))
        add("face", i, face.first_torch(), face.last_torch(), diameters(face.first_radius, face.last_radius),
            face_object(face, {}));
}

} // namespace

std::string take_csv(const Plan& plan) {
    const auto row = [&](const Need& need) {
        const auto words = [](const PackCount& pack) {
            return fmt::format("{} x {}", pack.count, pack.pack);
        };
        return object(member<"load">(listed(need.cover, " + ", words)), member<"supplied">(need.supplied),
                      member<"spare">(need.spare), need_object(need, plan.units));
    };
    return table_csv("item,need,reserve,unit,load,supplied,spare,why,source", list_of(plan.take, row));
}

std::string passes_csv(const Plan& plan) {
    Value::List rows;
    for (const BorePlan& bore : plan.bores)
        add_passes(rows, bore);
    return table_csv("bore,count,pass,number,from_diameter_mm,to_diameter_mm,layers,rings,pitch_mm,travel_mm_"
                     "min,torch_first_rpm,torch_last_rpm,path_mm,laid_kg,arc_s",
                     rows);
}

std::string boring_csv(const Plan& plan) {
    Value::List rows;
    for (const BorePlan& bore : plan.bores) {
        const auto add = [&](std::string_view step, int pieces, const auto&... figures) {
            rows.push_back(object(bore_members(bore), member<"step">(step), member<"pieces">(pieces),
                                  member<"deposit">(bore.boring.settings.deposit.group),
                                  member<"tool">(bore.boring.settings.tool), figures...));
        };
        for (const Cut& cut : bore.boring.cuts)
            add(word_of(cut.kind), 1, member<"from_diameter_mm">(cut.from), member<"to_diameter_mm">(cut.to),
                cut_object(cut, bore.boring));
        for (const Facing& face : bore.boring.facing)
            add("facing", face.cuts, facing_object(face));
        for (const Standing& step : bore.boring.standing)
            add(step.step, step.count, standing_object(step));
    }
    return table_csv(
        "bore,count,step,pieces,depth_mm,from_diameter_mm,to_diameter_mm,rpm,feed_mm,time_s,deposit,tool",
        rows);
}

std::string quote_csv(const Plan& plan) {
    Value::List rows;
    if (plan.quote) {
        const Quote& quote = *plan.quote;
        const int exponent = quote.currency.exponent.value;
        const auto add = [&](std::string_view part, bool counts, const auto&... figures) {
            rows.push_back(object(member<"part">(part), member<"counts">(counts ? "yes" : "no"),
                                  member<"currency">(quote.currency.name), figures...));
        };
        const auto money = [&](std::optional<Minor> amount) {
            return member<"amount">(given(amount, [&](Minor minor) { return money_text(minor, exponent); }));
        };
        for (const QuoteSection& section : quote.sections)
            for (const QuoteLine& line : section.lines)
                add(word_of(section.part), section.counts, line_object(line, exponent));
        if (quote.total)
            add("sum", true, money(quote.subtotal));
        for (const OnTop& top : quote.on_top)
            add(top.name, true, member<"price">(share_text(top.share)), money(top.amount));
        add("total", true, money(quote.total),
            member<"missing">(when(!quote.is_whole(), total_name(quote) + incomplete_text(quote))));
    }
    return table_csv("part,counts,item,quantity,unit,of,price,amount,currency,missing", rows);
}

} // namespace ringfill
