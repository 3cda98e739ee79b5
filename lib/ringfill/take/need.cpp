#include <ringfill/take/need.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// To a ten-thousandth at most; a size is written with as few digits as it has.
std::string number_text(double value, std::size_t least_decimals) {
    std::string text = fmt::format("{:.4f}", value);
    const std::size_t least = text.find('.') + (least_decimals > 0 ? 1 + least_decimals : 0);
    return text.substr(0, std::max(least, text.find_last_not_of("0.") + 1));
}

/// A size in the units of a person, or as an id writes it.
std::string size_text(const NeedSize& size, std::optional<UnitSystem> units) {
    if (const auto* diameter = std::get_if<Length>(&size))
        return units ? show_wire(*diameter, *units) : number_text(mm(*diameter), 1) + " mm";
    if (const auto* melts = std::get_if<Temperature>(&size))
        return units ? show_exact(*melts, *units) : number_text(deg_c(*melts), 0) + " degC";
    if (const auto* set = std::get_if<SetRating>(&size))
        return fmt::format("{:.0f} A {}{:.0f} %{}", set->amperes, units ? "at " : "", set->duty_pct,
                           units ? " duty" : "");
    return {};
}

} // namespace

std::string in_words(const std::vector<PackCount>& packs) {
    return listed(packs, " + ",
                  [](const PackCount& pack) { return fmt::format("{} × {}", pack.count, pack.pack); });
}

bool comes_singly(const Need& need) {
    return need.kind.unit == "pieces" && need.cover.empty() && need.pack_known;
}

std::string need_id(const Need& need) {
    return fmt::format("{}:{}:{}", need.kind.id, need.substance, size_text(need.size, std::nullopt));
}

std::vector<NamePart> name_parts(const Need& need, UnitSystem units) {
    using Role = NamePart::Role;
    std::vector<NamePart> parts;
    std::string_view rest = need.kind.called;
    while (!rest.empty()) {
        const std::string_view token = rest.substr(0, rest.find(' '));
        rest.remove_prefix(std::min(token.size() + 1, rest.size()));
        if (token == "{substance}")
            parts.push_back({Role::substance, need.substance});
        else if (token == "{served}")
            parts.push_back({Role::serves, need.substance.substr(need.substance.find('/') + 1)});
        else if (token == "{size}")
            parts.push_back({Role::size, size_text(need.size, units)});
        else
            parts.push_back({Role::kind, token == "{name}" ? need.name : std::string(token)});
    }
    return parts;
}

std::string item_text(const Need& need, UnitSystem units) {
    return listed(name_parts(need, units), " ", &NamePart::text);
}

NeedFigure spares(int count) {
    return {static_cast<double>(count), count > 0 ? fmt::format("0*need + {}", count) : "0*need"};
}

Need need_of(NeedKind kind, std::string substance, NeedSize size, std::vector<Input> inputs, NeedFigure need,
             NeedFigure reserve, std::string why, std::string source) {
    const std::string unit(kind.unit);
    inputs.emplace_back("need", need.value, unit);
    Need line{kind, std::move(substance), size, {}, need.value, reserve.value};
    line.why = std::move(why);
    line.source = std::move(source);
    line.working = worked(inputs, {{"need", need.formula, {need.value, unit}, need.source},
                                   {"reserve", reserve.formula, {reserve.value, unit}, reserve.source}});
    return line;
}

Need by_the_piece(Need line) {
    line.supplied = line.need + line.reserve;
    work_supply(line, "sum(n*c)", {{"n", std::vector{line.supplied}}, {"c", std::vector{1.0}, "pieces"}});
    return line;
}

void work_supply(Need& line, std::string formula, std::vector<Input> inputs) {
    const std::string unit(line.kind.unit);
    line.spare = line.supplied - (line.need + line.reserve);
    const std::vector<Input> figures = {
        {"supplied", line.supplied, unit}, {"need", line.need, unit}, {"reserve", line.reserve, unit}};
    append(line.working, {worked("supplied", std::move(formula), std::move(inputs), {line.supplied, unit}),
                          worked("spare", "supplied - need - reserve", figures, {line.spare, unit})});
}

} // namespace ringfill
