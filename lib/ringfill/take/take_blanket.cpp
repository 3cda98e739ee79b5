#include <ringfill/take/take_blanket.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

std::string reason(const BlanketUse& use) {
    if (use.preheated && use.cools_slowly)
        return fmt::format("{} (preheated, cools slowly)", use.bore);
    return fmt::format("{} ({})", use.bore, use.preheated ? "preheated" : "cools slowly");
}

} // namespace

std::vector<Need> take_blanket(const std::vector<BlanketUse>& uses) {
    std::vector<double> each;
    std::string bores;
    for (const BlanketUse& use : uses) {
        if (!use.preheated && !use.cools_slowly)
            continue;
        bores += fmt::format("{}{}", each.empty() ? "" : ", ", reason(use));
        each.push_back(1);
    }
    if (each.empty())
        return {};
    Need line;
    line.item = "insulating blanket";
    line.need = static_cast<double>(each.size());
    line.unit = "pieces";
    line.supplied = line.need;
    line.why = fmt::format("keeps the heat in and evens it out, one for each bore of {}", bores);
    line.source = "practice";
    line.charge = Charge::tool;
    line.working = {{"need", "sum(n)", {{"n", each}}, line.need, "pieces", "practice"},
                    {"reserve", "0*need", {{"need", line.need, "pieces"}}, 0, "pieces", "practice"}};
    work_supply(line, {line.supplied}, {1});
    return {line};
}

} // namespace ringfill
