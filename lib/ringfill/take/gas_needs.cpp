#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/min_element.hpp>

#include <ringfill/take/group.hpp>
#include <ringfill/take/needs.hpp>
#include <ringfill/take/offers.hpp>
#include <ringfill/units/metric.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {
namespace {

/// Adds smallest cylinders until as many stand ready as the flow needs; says so in the reason.
void meet_flow(Need& line, Cover& best, const std::vector<GasPack>& cylinders,
               const std::vector<Offer>& offers, VolumeFlow flow, UnitSystem units) {
    std::int64_t needed = 1;
    for (const GasPack& cylinder : cylinders)
        if (cylinder.draw) // else its flow has no limit
            needed = std::max<std::int64_t>(
                needed, std::llround(std::ceil((flow / cylinder.draw->value).value() - 1e-9)));
    if (needed <= 1)
        return;
    line.why += fmt::format("; {} is more than one cylinder gives without freezing its regulator: {} "
                            "together, or a heated regulator",
                            show(flow, units), needed);
    const auto smallest = ranges::min_element(offers, {}, &Offer::content);
    if (const std::int64_t more = needed - best.packs; more > 0) {
        best.counts[static_cast<std::size_t>(smallest - offers.begin())] += more;
        best.supplied += more * smallest->content;
    }
}

} // namespace

Need gas_need(const GasUse& use, double reserve, const Packs& packs, UnitSystem units) {
    const double need = litres(use.volume);
    Need line = need_of(
        kinds::gas, use.gas, {}, {{"n", use.counts}, {"V", use.each, "L"}, {"share", reserve}},
        {need, "sum(n*V)", "own"}, {reserve * need, "share*need"},
        fmt::format("up to {} over {} of arc and {} starts with gas before and after, {:.3g} "
                    "% for purging and leaks; on top {:.3g} %",
                    show(use.flow, units), show(use.arc), use.starts, 100 * purge_and_leaks, 100 * reserve));
    const std::vector<GasPack> cylinders = sold(packs.gas, units, use.holds);
    const std::vector<Offer> offers = cylinders_of(cylinders);
    if (!is_offered(line, offers, "cylinder of this gas"))
        return line;
    Cover best = cover(whole_amount(line, 1), offers);
    meet_flow(line, best, cylinders, offers, use.flow, units);
    load(line, best, offers, 1);
    return line;
}

} // namespace ringfill
