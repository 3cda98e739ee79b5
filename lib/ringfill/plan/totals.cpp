#include <ringfill/plan/totals.hpp>

#include <ringfill/take/group.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {
Totals totals(const std::vector<BorePlan>& bores, const std::vector<GasUse>& gases) {
    Totals sum;
    for (const BorePlan& bore : bores) {
        const auto count = static_cast<double>(bore.count);
        sum.laid += count * bore.metal.laid;
        (bore.deposition.piece ? sum.piece_mass : sum.wire) += count * bore.metal.wire;
        sum.pieces += std::int64_t{bore.count} * bore.metal.pieces;
        sum.arc += count * bore.metal.arc;
    }
    for (const GasUse& gas : gases)
        sum.gas += gas.volume;
    return sum;
}

std::vector<Working> totals_working(const Totals& totals, const std::vector<GivenBore>& given,
                                    const std::vector<BorePlan>& bores) {
    const Input counts{"n", each(bores, [](const BorePlan& bore) { return bore.count; })};
    const auto sum = [&](const char* figure, const std::string& symbol, Amount value, auto of_bore) {
        return worked(figure, "sum(n*" + symbol + ")", {counts, {symbol, each(bores, of_bore), value.unit}},
                      value);
    };
    const auto filler = [](const BorePlan& bore, bool pieces) {
        return bore.deposition.piece.has_value() == pieces ? bore.metal.wire.value() : 0.0;
    };
    const auto arc = [](const BorePlan& bore) { return bore.metal.arc.value(); };
    const auto of_gas = [&](auto value) {
        return each(given, [&](const GivenBore& bore) { return value(bore.settings); });
    };
    std::vector<Working> work;
    if (totals.wire > Mass())
        work.push_back(sum("wire_kg", "m", in_kg(totals.wire),
                           [&](const BorePlan& bore) { return filler(bore, false); }));
    if (totals.pieces > 0)
        append(work,
               {sum("pieces", "k", totals.pieces, [](const BorePlan& bore) { return bore.metal.pieces; }),
                sum("pieces_kg", "m", in_kg(totals.piece_mass),
                    [&](const BorePlan& bore) { return filler(bore, true); })});
    append(
        work,
        {sum("laid_kg", "m", in_kg(totals.laid),
             [](const BorePlan& bore) { return bore.metal.laid.value(); }),
         sum("arc_s", "t", in_seconds(totals.arc), arc),
         worked("gas_l", "sum(n*Q*(t + k*(t_before + t_after))/60)*(1 + leaks)",
                {counts,
                 {"Q", of_gas([](const Settings& s) { return s.gas ? l_min(s.gas_flow) : 0.0; }), "L/min"},
                 {"t", each(bores, arc), "s"},
                 {"k", each(bores, [](const BorePlan& bore) { return bore.metal.starts; })},
                 {"t_before", of_gas([](const Settings& s) { return s.procedure->gas_before.value(); }), "s"},
                 {"t_after", of_gas([](const Settings& s) { return s.procedure->gas_after.value(); }), "s"},
                 {"leaks", purge_and_leaks}},
                in_litres(totals.gas), "practice")});
    return under("totals", std::move(work));
}

} // namespace ringfill
