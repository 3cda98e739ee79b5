#include <ringfill/plan/plan_working.hpp>

#include <functional>

#include <range/v3/action/push_back.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/boring/boring_working.hpp>
#include <ringfill/heat/balance_working.hpp>
#include <ringfill/heat/heat_working.hpp>
#include <ringfill/quote/quote_working.hpp>
#include <ringfill/survey/survey_working.hpp>
#include <ringfill/units/metric.hpp>
#include <ringfill/weld/gas.hpp>
#include <ringfill/weld/weld_working.hpp>

namespace ringfill {
namespace {

std::vector<Working> bore_working(const GivenBore& given, const BorePlan& planned, const Cutting& cutting) {
    const WornBore& bore = given.bore;
    const Settings& settings = given.settings;
    const WeldFigures weld{bore,
                           planned.build,
                           planned.deposition,
                           settings.unscaled,
                           planned.bead,
                           planned.layering,
                           settings.bead_ratio,
                           settings.pitch_ratio,
                           planned.torch_path,
                           settings.travel_limit,
                           settings.procedure->bead_ratio ? "own" : settings.filler->bead_ratio.source};
    std::vector<Working> work = survey_working(bore, planned.survey);
    append(work, build_working(bore, planned.survey, planned.build));
    append(work, bead_working(weld));
    append(work, layers_working(weld, planned.layers));
    append(work, faces_working(weld, planned.faces));
    append(work, grooves_working(weld, planned.grooves));
    append(work, metal_working(weld, planned.layers, planned.faces, planned.grooves, planned.metal));
    if (planned.dilution)
        append(work, dilution_working(*planned.dilution, planned.layer_metals));
    append(work, heat_working(bore, planned.build, planned.bead.travel, planned.faces, planned.grooves,
                              planned.heat));
    if (planned.heat_balance)
        append(work, balance_working(bore, planned.build, planned.metal.arc, *planned.heat_balance));
    append(work, boring_working(bore, planned, planned.boring, cutting));
    return work;
}

/// One value of each bore, in a list.
std::vector<double> each(const Plan& plan, const std::function<double(const BorePlan&)>& value) {
    return plan.bores | ranges::views::transform(value) | ranges::to<std::vector>();
}

/// A total that is the sum of one figure over the bores, counts applied.
Working total(const Plan& plan, const Input& counts, std::string figure, std::string symbol, std::string unit,
              double value, const std::function<double(const BorePlan&)>& one) {
    return {std::move(figure),
            "sum(n*" + symbol + ")",
            {counts, {symbol, each(plan, one), unit}},
            value,
            unit,
            "own"};
}

/// Wire by mass, electrodes and rods by number and mass, each where the job has any.
std::vector<Working> filler_totals(const Plan& plan, const Input& counts) {
    const bool any_pieces = plan.totals.pieces > 0;
    std::vector<Working> work;
    if (plan.totals.wire > Mass())
        work.push_back(
            total(plan, counts, "wire_kg", "m", "kg", plan.totals.wire.value(), [](const BorePlan& bore) {
                return bore.deposition.piece ? 0.0 : bore.metal.wire.value();
            }));
    if (!any_pieces)
        return work;
    work.push_back(total(plan, counts, "pieces", "k", "", static_cast<double>(plan.totals.pieces),
                         [](const BorePlan& bore) { return static_cast<double>(bore.metal.pieces); }));
    work.push_back(
        total(plan, counts, "pieces_kg", "m", "kg", plan.totals.piece_mass.value(),
              [](const BorePlan& bore) { return bore.deposition.piece ? bore.metal.wire.value() : 0.0; }));
    return work;
}

std::vector<Working> totals_working(const Plan& plan, const std::vector<GivenBore>& given) {
    const Input counts{"n", each(plan, [](const BorePlan& bore) { return static_cast<double>(bore.count); })};
    const auto of_gas = [&](const std::function<double(const Settings&)>& value) {
        return given | ranges::views::transform([&](const GivenBore& bore) { return value(bore.settings); }) |
               ranges::to<std::vector>();
    };
    std::vector<Working> work = filler_totals(plan, counts);
    ranges::push_back(
        work,
        std::vector<Working>{
            total(plan, counts, "laid_kg", "m", "kg", plan.totals.laid.value(),
                  [](const BorePlan& bore) { return bore.metal.laid.value(); }),
            total(plan, counts, "arc_s", "t", "s", plan.totals.arc.value(),
                  [](const BorePlan& bore) { return bore.metal.arc.value(); }),
            {"gas_l",
             "sum(n*Q*(t + k*(t_before + t_after))/60)*(1 + leaks)",
             {counts,
              {"Q", of_gas([](const Settings& s) { return s.gas ? l_min(s.gas_flow) : 0.0; }), "L/min"},
              {"t", each(plan, [](const BorePlan& bore) { return bore.metal.arc.value(); }), "s"},
              {"k", each(plan, [](const BorePlan& bore) { return static_cast<double>(bore.metal.starts); })},
              {"t_before", of_gas([](const Settings& s) { return s.procedure->gas_before.value(); }), "s"},
              {"t_after", of_gas([](const Settings& s) { return s.procedure->gas_after.value(); }), "s"},
              {"leaks", purge_and_leaks}},
             litres(plan.totals.gas),
             "L",
             "practice"}});
    return under("totals", std::move(work));
}

} // namespace

std::vector<Working> plan_working(const Plan& plan, const std::vector<GivenBore>& given,
                                  const Cutting& cutting) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        append(work, under(element_path("bores", i), bore_working(given[i], plan.bores[i], cutting)));
    append(work, totals_working(plan, given));
    if (plan.day)
        append(work, day_working(*plan.day));
    append(work, fire_watch_working(plan.fire_watch));
    for (std::size_t i = 0; i < plan.take.size(); ++i)
        append(work, under(element_path("take", i), plan.take[i].working));
    if (plan.quote)
        append(work, quote_working(*plan.quote));
    return work;
}

} // namespace ringfill
