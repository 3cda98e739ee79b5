#include <ringfill/plan/plan.hpp>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/caution/approved_rules.hpp>
#include <ringfill/caution/balance_rules.hpp>
#include <ringfill/caution/cold_rules.hpp>
#include <ringfill/caution/face_rules.hpp>
#include <ringfill/caution/ferrite_rules.hpp>
#include <ringfill/caution/filler_rules.hpp>
#include <ringfill/caution/form_rules.hpp>
#include <ringfill/caution/fusion_rules.hpp>
#include <ringfill/caution/position_rules.hpp>
#include <ringfill/caution/preheat_rules.hpp>
#include <ringfill/caution/suits_rules.hpp>
#include <ringfill/caution/survey_rules.hpp>
#include <ringfill/caution/weld_rules.hpp>
#include <ringfill/plan/heat_uses.hpp>
#include <ringfill/plan/notes.hpp>
#include <ringfill/plan/plan_balances.hpp>
#include <ringfill/plan/plan_bore.hpp>
#include <ringfill/plan/plan_boring.hpp>
#include <ringfill/plan/plan_cautions.hpp>
#include <ringfill/plan/plan_day.hpp>
#include <ringfill/plan/plan_metals.hpp>
#include <ringfill/plan/plan_quote.hpp>
#include <ringfill/plan/plan_working.hpp>
#include <ringfill/plan/settings_told.hpp>
#include <ringfill/plan/too_much.hpp>
#include <ringfill/plan/uses.hpp>
#include <ringfill/take/take.hpp>
#include <ringfill/take/take_fire_watch.hpp>
#include <ringfill/weld/torch_fit.hpp>

namespace ringfill {
namespace {

SettingsByProcedure all_settings(const Job& job, const Shop& shop, std::vector<Fault>& faults) {
    SettingsByProcedure found;
    for (const Procedure& procedure : job.procedures)
        if (auto one = settings(procedure, shop, job.units, faults))
            found.emplace(procedure.name, std::move(*one));
    return found;
}

/// Plans every bore whose procedure stands and judges the others as far as it goes; the faults of all are
/// collected.
std::vector<BorePlan> plan_bores(const Job& job, const Shop& shop, const SettingsByProcedure& settings,
                                 std::vector<Fault>& faults, const Progress& progress) {
    std::vector<BorePlan> bores;
    std::size_t at = 0;
    for (const WornBore& bore : job.bores) {
        if (progress)
            progress("planning bore", ++at, job.bores.size());
        const Base* base = find_base(shop.registry, bore.base, bore.path + ".base", faults);
        const auto own = settings.find(bore.procedure);
        try {
            if (own == settings.end()) {
                prepare(bore, survey(bore.worn, bore.length));
                continue;
            }
            bores.push_back(plan_bore(bore, own->second));
            if (base) {
                plan_metals(bores.back(), bore, own->second, shop, *base);
                plan_heat(bores.back(), bore, own->second, job.site, shop.registry, *base);
                plan_boring(bores.back(), bore, job, shop, *base);
            }
            ranges::push_back(
                faults, torch_faults(bore, job.torch, bores.back().build, bores.back().layering, job.units));
        } catch (const Faulty& faulty) {
            if (faulty.origin() != Origin::job)
                throw;
            ranges::push_back(faults, faulty.faults());
        }
    }
    return bores;
}

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

/// The largest bead laid in a bore: of its layers, of a face, or of a groove, which is filled unscaled.
const Bead& largest_bead(const BorePlan& bore, const Settings& settings) {
    const Bead* largest = &bore.bead;
    for (const FacePad& face : bore.faces)
        if (face.bead.section > largest->section)
            largest = &face.bead;
    for (const GrooveFill& groove : bore.grooves)
        if (groove.volume > Volume() && settings.unscaled.section > largest->section)
            largest = &settings.unscaled;
    return *largest;
}

/// Whether every bore of a procedure waits for its metal to be identified, so that nothing rules yet.
bool is_all_in_doubt(const Plan& plan, const Procedure& procedure) {
    bool any = false;
    for (const BorePlan& bore : plan.bores)
        if (bore.procedure == procedure.name) {
            if (!bore.heat.doubt)
                return false;
            any = true;
        }
    return any;
}

void judge(Plan& plan, const Job& job, const SettingsByProcedure& settings) {
    for (std::size_t i = 0; i < job.bores.size(); ++i)
        ranges::push_back(plan.cautions, heat_stops(job.bores[i], plan.bores[i].heat, job.units));
    std::vector<std::string> in_doubt;
    for (const BorePlan& bore : plan.bores)
        if (bore.heat.doubt)
            in_doubt.push_back(bore.name);
    ranges::push_back(plan.cautions,
                      cold_cautions(job.site, job.units, in_doubt, in_doubt.size() == plan.bores.size()));
    for (const Procedure& procedure : job.procedures)
        if (const auto approved = approved_caution(procedure, job.units);
            approved && !is_all_in_doubt(plan, procedure))
            plan.cautions.push_back(*approved);
    for (const Procedure& procedure : job.procedures) {
        ranges::push_back(plan.cautions, form_cautions(procedure, *settings.at(procedure.name).filler));
        ranges::push_back(plan.notes, settings.at(procedure.name).notes);
        ranges::push_back(plan.assumed, settings.at(procedure.name).assumed);
    }
    for (std::size_t i = 0; i < job.bores.size(); ++i) {
        const WornBore& bore = job.bores[i];
        const BorePlan& planned = plan.bores[i];
        ranges::push_back(plan.cautions, survey_cautions(bore, planned.survey, planned.build, job.units));
        ranges::push_back(plan.cautions, weld_cautions(bore, planned.build, planned.bead, planned.layering,
                                                       planned.deposition, job.units));
        ranges::push_back(plan.cautions,
                          position_cautions(bore, procedure_of(job, bore),
                                            largest_bead(planned, settings.at(bore.procedure)), job.units));
        ranges::push_back(plan.cautions, face_cautions(bore, planned.faces, job.units));
        ranges::push_back(plan.cautions, filler_cautions(bore, procedure_of(job, bore)));
        ranges::push_back(plan.cautions,
                          suit_cautions(bore, procedure_of(job, bore),
                                        planned.suit ? &*planned.suit : nullptr, planned.buffer));
        if (planned.dilution)
            ranges::push_back(plan.cautions,
                              dilution_cautions(bore, procedure_of(job, bore), *planned.dilution));
        if (planned.layer_metals)
            ranges::push_back(plan.cautions,
                              ferrite_cautions(bore, *planned.dilution, *planned.layer_metals));
        ranges::push_back(plan.cautions, preheat_cautions(bore, procedure_of(job, bore), planned.heat,
                                                          planned.build, job.units));
        if (planned.heat_balance)
            ranges::push_back(plan.cautions, balance_cautions(bore, *planned.heat_balance, job.units));
        ranges::push_back(plan.cautions,
                          fusion_cautions(bore, procedure_of(job, bore).travel, planned.bead, planned.faces));
        ranges::push_back(plan.notes, bore_notes(bore, planned, job.units));
    }
    ranges::push_back(plan.notes, line_notes(job));
}

} // namespace

std::string piece_name(const BorePlan& bore, int piece) {
    return bore.count > 1 ? fmt::format("{} {}", bore.name, piece) : bore.name;
}

Plan plan(const Job& job, const Shop& shop, const Progress& progress) {
    std::vector<Fault> faults;
    const SettingsByProcedure settings = all_settings(job, shop, faults);
    Plan result;
    result.bores = plan_bores(job, shop, settings, faults, progress);
    for (const auto& [filler, price] : job.prices.wire_kg)
        find_filler(shop.registry, filler, "prices.wire_kg." + filler, faults);
    const std::optional<FireWatch> watch = fire_watch_of(job, shop, faults);
    refuse_if_any(Origin::job, faults);

    plan_balances(result.bores, job, shop, progress);
    result.title = job.title;
    result.units = job.units;
    result.reserve = job.reserve;
    const auto wires = wire_uses(job, result.bores, settings);
    const auto gases = gas_uses(result.bores, settings);
    result.totals = totals(result.bores, gases);
    result.take = take(wires, piece_uses(job, result.bores, settings), gases, job.reserve, shop.packs,
                       shop.wear_parts, job.units);
    ranges::push_back(result.take, take_sticks(stick_uses(result.bores), shop.sticks, job.units));
    ranges::push_back(result.take, heat_needs(job, result.bores, shop));
    ranges::push_back(result.take, take_holes(hole_uses(job), job.units));
    ranges::push_back(result.take, take_inserts(insert_uses(result.bores),
                                                bar_settings(job.boring, shop.cutting).edge_life.source));
    refuse_if_any(Origin::job, too_much(result.take));
    result.assumed = job.assumed;
    for (const auto& [name, one] : settings)
        leave_out_unfit(result.assumed, one);
    ranges::push_back(result.assumed, heat_assumed(job, result.bores));
    judge(result, job, settings);
    judge_boring(result, job, shop.cutting);
    plan_day(result, job, shop);
    result.fire_watch = *watch;
    plan_fire_watch(result);
    ranges::push_back(result.take, take_fire_watch(result.fire_watch));
    judge_by_table(result, job, shop, settings);
    plan_quote(result, job, shop, faults);
    refuse_if_any(Origin::job, faults);
    gather_working(result, job, settings);
    return result;
}

} // namespace ringfill
