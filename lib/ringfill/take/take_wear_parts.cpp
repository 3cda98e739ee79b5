#include <ringfill/take/take_wear_parts.hpp>

#include <cmath>

#include <fmt/format.h>

namespace ringfill {
namespace {

Need worn_through(std::string item, Time arc, const Sourced<Time>& life) {
    Need line;
    line.item = std::move(item);
    line.need = std::ceil((arc / life.value).value() - 1e-9);
    line.reserve = 1;
    line.unit = "pieces";
    line.supplied = line.need + line.reserve;
    line.why = fmt::format("{} of arc, one lasts {}; and one spare", show(arc), show(life.value));
    line.source = life.source;
    line.working = {
        {"need",
         "ceil(t/life - 1e-9)",
         {{"t", arc.value(), "s"}, {"life", life.value.value(), "s"}},
         line.need,
         "pieces",
         life.source},
        {"reserve", "0*need + 1", {{"need", line.need, "pieces"}}, line.reserve, "pieces", "practice"}};
    work_supply(line, {line.supplied}, {1});
    return line;
}

} // namespace

std::vector<Need> take_wear_parts(const WireUse& use, const WearParts& wear, UnitSystem units) {
    const std::string wire =
        fmt::format("{} {}", show_wire(use.diameter, units), use.filler.substr(use.filler.find('/') + 1));
    std::vector<Need> lines{worn_through("contact tips " + wire, use.arc, wear.tip_life),
                            worn_through("gas nozzles " + wire, use.arc, wear.nozzle_life)};
    if (use.wire > wear.liner_life.value) {
        Need line;
        line.item = "liner " + wire;
        line.need = 1;
        line.unit = "pieces";
        line.supplied = 1;
        line.why = fmt::format("{} of wire, one lasts {}", show(use.wire, units),
                               show(wear.liner_life.value, units));
        line.source = wear.liner_life.source;
        line.working = {
            {"need",
             "max(min(floor(m/life), 1), 0)",
             {{"m", use.wire.value(), "kg"}, {"life", wear.liner_life.value.value(), "kg"}},
             line.need,
             "pieces",
             wear.liner_life.source},
            {"reserve", "0*need", {{"need", line.need, "pieces"}}, line.reserve, "pieces", "practice"}};
        work_supply(line, {line.supplied}, {1});
        lines.push_back(line);
    }
    return lines;
}

} // namespace ringfill
