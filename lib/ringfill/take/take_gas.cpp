#include <ringfill/take/take_gas.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/filter.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/take/cover.hpp>
#include <ringfill/units/metric.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {
namespace {

std::int64_t whole_litres(const GasPack& pack) {
    return std::max<std::int64_t>(1, std::llround(std::floor(litres(pack.usable()) + 1e-9)));
}

double as_number(std::int64_t whole) {
    return static_cast<double>(whole);
}

/// How need and reserve were reached.
std::vector<Working> need_working(const GasUse& use, const Need& line, double reserve) {
    return {{"need",
             "sum(n*V)",
             {{"n", use.counts},
              {"V", use.volume_each | ranges::views::transform(litres) | ranges::to<std::vector>(), "L"}},
             line.need,
             "L",
             "own"},
            {"reserve",
             "share*need",
             {{"share", reserve}, {"need", line.need, "L"}},
             line.reserve,
             "L",
             "practice"}};
}

/// How many of a pack must flow at once, 1 when its flow has no limit.
std::int64_t at_once(const GasPack& pack, VolumeFlow flow) {
    if (!pack.draw)
        return 1;
    return std::max<std::int64_t>(1, std::llround(std::ceil((flow / pack.draw->value).value() - 1e-9)));
}

/// Adds smallest cylinders until as many stand ready as the flow needs; says so in the reason.
void meet_flow(Need& line, Cover& best, const std::vector<GasPack>& cylinders, VolumeFlow flow,
               UnitSystem units) {
    std::size_t smallest = 0;
    std::int64_t needed = 1;
    for (std::size_t i = 0; i < cylinders.size(); ++i) {
        needed = std::max(needed, at_once(cylinders[i], flow));
        if (whole_litres(cylinders[i]) < whole_litres(cylinders[smallest]))
            smallest = i;
    }
    if (needed <= 1)
        return;
    line.why +=
        fmt::format("; {} is more than one cylinder gives without freezing its regulator: {} together, or a "
                    "heated regulator",
                    show(flow, units), needed);
    if (const std::int64_t more = needed - best.packs; more > 0) {
        best.counts[smallest] += more;
        best.supplied += more * whole_litres(cylinders[smallest]);
    }
}

} // namespace

Need take_gas(const GasUse& use, double reserve, const Packs& packs, UnitSystem units) {
    const auto cylinders = packs.gas | ranges::views::filter([&](const GasPack& pack) {
                               return pack.stocked && pack.units == units && pack.holds == use.holds;
                           }) |
                           ranges::to<std::vector>();
    Need line;
    line.item = fmt::format("gas {}", use.gas);
    line.need = litres(use.volume);
    line.reserve = reserve * line.need;
    line.unit = "L";
    line.source = "practice";
    line.why = fmt::format(
        "up to {} over {} of arc and {} starts with gas before and after, {:.3g} % for purging and leaks; "
        "on top {:.3g} %",
        show(use.flow, units), show(use.arc), use.starts, 100 * purge_and_leaks, 100 * reserve);
    std::vector<PackSize> sizes;
    for (const GasPack& cylinder : cylinders)
        sizes.push_back({whole_litres(cylinder), std::nullopt});
    const double all = line.need + line.reserve;
    Cover best = cover(whole_need(all, 1e-9), sizes);
    if (cylinders.empty())
        line.why += "; no cylinder of this gas is in the table of packs";
    else
        meet_flow(line, best, cylinders, use.flow, units);
    for (std::size_t i = 0; i < cylinders.size(); ++i)
        if (best.counts[i] > 0)
            line.cover.push_back({cylinders[i].name, best.counts[i]});
    line.supplied = static_cast<double>(best.supplied);
    line.pack_known = !cylinders.empty();
    line.spare = line.pack_known ? line.supplied - all : 0;
    line.working = need_working(use, line, reserve);
    if (line.pack_known)
        work_supply(line, best.counts | ranges::views::transform(as_number) | ranges::to<std::vector>(),
                    sizes | ranges::views::transform([](const PackSize& s) { return as_number(s.content); }) |
                        ranges::to<std::vector>());
    return line;
}

} // namespace ringfill
