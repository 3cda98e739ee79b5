#include <ringfill/take/take_holes.hpp>

#include <cmath>

#include <fmt/format.h>

namespace ringfill {
namespace {

/// All holes of one diameter.
struct SameDiameter {
    Length diameter;
    std::vector<double> holes;
    std::vector<double> fittings;
    std::string where;
};

std::vector<SameDiameter> by_diameter(const std::vector<HoleUse>& holes) {
    std::vector<SameDiameter> groups;
    for (const HoleUse& use : holes) {
        SameDiameter* group = nullptr;
        for (SameDiameter& known : groups)
            if (std::fabs((known.diameter - use.diameter).value()) < 1e-6)
                group = &known;
        if (!group)
            group = &groups.emplace_back(SameDiameter{use.diameter, {}, {}, {}});
        group->holes.push_back(use.holes);
        group->fittings.push_back(use.fitting ? use.holes : 0);
        group->where += fmt::format("{}{} in {}", group->where.empty() ? "" : ", ", use.holes, use.bore);
    }
    return groups;
}

double sum(const std::vector<double>& numbers) {
    double total = 0;
    for (const double number : numbers)
        total += number;
    return total;
}

Need pieces(std::string item, const std::vector<double>& each, double spare, std::string why) {
    Need line;
    line.item = std::move(item);
    line.need = sum(each);
    line.reserve = spare;
    line.unit = "pieces";
    line.supplied = line.need + line.reserve;
    line.why = std::move(why);
    line.source = "practice";
    line.working = {{"need", "sum(n)", {{"n", each}}, line.need, "pieces", "practice"},
                    {"reserve",
                     "0*need + spare",
                     {{"need", line.need, "pieces"}, {"spare", spare, "pieces"}},
                     line.reserve,
                     "pieces",
                     "practice"}};
    work_supply(line, {line.supplied}, {1});
    return line;
}

} // namespace

std::vector<Need> take_holes(const std::vector<HoleUse>& holes, UnitSystem units) {
    std::vector<Need> lines;
    for (const SameDiameter& group : by_diameter(holes)) {
        const std::string size = show_wire(group.diameter, units);
        lines.push_back(pieces(
            fmt::format("plug rods {}", size), group.holes, 1,
            fmt::format("a piece of copper or carbon rod in each hole before welding ({}); and one spare",
                        group.where)));
        lines.push_back(
            pieces(fmt::format("drill {}", size), {1}, 0, "to reopen the plugged holes after boring"));
        lines.back().charge = Charge::tool;
        if (sum(group.fittings) > 0)
            lines.push_back(pieces(fmt::format("fittings, hole {}", size), group.fittings, 1,
                                   "heat ruins the old ones; and one spare"));
    }
    return lines;
}

} // namespace ringfill
