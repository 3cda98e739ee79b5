#include <ringfill/plan/totals.hpp>

#include <cmath>

#include <ringfill/take/group.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {

Totals totals(const std::vector<GivenBore>& given, const std::vector<BorePlan>& bores, Volume gas) {
    const auto of_filler = [](bool pieces) {
        return [pieces](const BorePlan& bore) {
            return bore.deposition.piece.has_value() == pieces ? bore.metal.wire.value() : 0.0;
        };
    };
    const auto of_gas = [&](auto value) {
        return each(given, [&](const GivenBore& bore) { return value(bore.settings); });
    };
    const std::vector<double> counts = each(bores, &BorePlan::count);
    const auto arc_of = [](const BorePlan& bore) { return bore.metal.arc.value(); };
    std::vector<Working> work;
    const auto sum_of = [&](const char* figure, const std::string& symbol, const char* unit, auto of_each) {
        const std::vector<double> values = each(bores, of_each);
        const double sum = sum_of_products(counts, values);
        if (sum > 0)
            work.push_back(worked(figure, "sum(n*" + symbol + ")", {{"n", counts}, {symbol, values, unit}},
                                  {sum, unit}));
        return sum;
    };
    Totals totals;
    totals.gas = gas;
    totals.wire = in_si<Mass>(sum_of("wire_kg", "m", "kg", of_filler(false)));
    totals.pieces =
        std::llround(sum_of("pieces", "k", "", [](const BorePlan& bore) { return bore.metal.pieces; }));
    totals.piece_mass = in_si<Mass>(sum_of("pieces_kg", "m", "kg", of_filler(true)));
    totals.laid = in_si<Mass>(
        sum_of("laid_kg", "m", "kg", [](const BorePlan& bore) { return bore.metal.laid.value(); }));
    totals.arc = in_si<Time>(sum_of("arc_s", "t", "s", arc_of));
    work.push_back(
        worked("gas_l", "sum(n*Q*(t + k*(t_before + t_after))/60)*(1 + leaks)",
               {{"n", counts},
                {"Q", of_gas([](const Settings& s) {
                     return s.gas ? s.gas_flow.value() / factor::litre * factor::minute : 0.0;
                 }),
                 "L/min"},
                {"t", each(bores, arc_of), "s"},
                {"k", each(bores, [](const BorePlan& bore) { return bore.metal.starts; })},
                {"t_before", of_gas([](const Settings& s) { return s.procedure->gas_before.value(); }), "s"},
                {"t_after", of_gas([](const Settings& s) { return s.procedure->gas_after.value(); }), "s"},
                {"leaks", purge_and_leaks}},
               {litres(gas), "L"}, "practice"));
    totals.working = under("totals", std::move(work));
    return totals;
}

} // namespace ringfill
