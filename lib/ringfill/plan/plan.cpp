#include <ringfill/plan/plan.hpp>

#include <map>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/caution/hot_work.hpp>
#include <ringfill/caution/position_rules.hpp>
#include <ringfill/caution/survey_rules.hpp>
#include <ringfill/caution/weld_rules.hpp>
#include <ringfill/plan/plan_bore.hpp>
#include <ringfill/plan/plan_working.hpp>
#include <ringfill/plan/uses.hpp>
#include <ringfill/take/take.hpp>
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
                                 std::vector<Fault>& faults) {
    std::vector<BorePlan> bores;
    for (const WornBore& bore : job.bores) {
        find_base(shop.registry, bore.base, bore.path + ".base", faults);
        const auto own = settings.find(bore.procedure);
        try {
            if (own == settings.end()) {
                prepare(bore, survey(bore.worn, bore.length));
                continue;
            }
            bores.push_back(plan_bore(bore, own->second));
            ranges::push_back(
                faults, torch_faults(bore, job.torch, bores.back().build, bores.back().layering, job.units));
        } catch (const Faulty& faulty) {
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
        sum.wire += count * bore.metal.wire;
        sum.arc += count * bore.metal.arc;
    }
    for (const GasUse& gas : gases)
        sum.gas += gas.volume;
    return sum;
}

void note_bore(Plan& plan, const WornBore& bore, const BorePlan& planned) {
    if (!bore.boss_diameter)
        plan.notes.push_back(
            fmt::format("{}: without boss_diameter the wall is not known: wall, boss mass and heat "
                        "balance are left out.",
                        bore.name));
    for (std::size_t i = 0; i < planned.grooves.size(); ++i)
        if (!(planned.grooves[i].volume > Volume()))
            plan.notes.push_back(fmt::format("{}: the groove of {} goes with the skim; nothing to fill.",
                                             bore.name, show(bore.grooves[i].diameter, plan.units)));
}

/// Bores of one line share a set-up of the bar.
void note_lines(Plan& plan, const Job& job) {
    std::map<std::string, std::pair<int, std::string>> lines;
    for (const WornBore& bore : job.bores)
        if (bore.line) {
            auto& [count, names] = lines[*bore.line];
            count += bore.count;
            names += fmt::format("{}{}{}", names.empty() ? "" : ", ", bore.name,
                                 bore.count > 1 ? fmt::format(" × {}", bore.count) : "");
        }
    for (const auto& [line, bores] : lines)
        if (bores.first > 1)
            plan.notes.push_back(fmt::format("line {}: one set-up of the bar for {}.", line, bores.second));
}

void note_left_out(Plan& plan) {
    plan.notes.emplace_back(
        "heat: preheat, interpass temperature and temperature sticks are not part of this plan.");
    plan.notes.emplace_back("time, boring: waits, heating, fuel and boring time are not part of this plan.");
    plan.notes.emplace_back("quote: prices are used to choose packs only.");
}

void judge(Plan& plan, const Job& job, const SettingsByProcedure& settings) {
    for (const Procedure& procedure : job.procedures) {
        if (procedure.approved)
            plan.notes.push_back(fmt::format("procedure {}: the approved procedure {} rules.", procedure.name,
                                             procedure.approved->reference));
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
                          position_cautions(bore, procedure_of(job, bore), planned.bead, job.units));
        note_bore(plan, bore, planned);
    }
    plan.cautions.push_back(hot_work());
    note_lines(plan, job);
    note_left_out(plan);
}

} // namespace

Plan plan(const Job& job, const Shop& shop) {
    std::vector<Fault> faults;
    const SettingsByProcedure settings = all_settings(job, shop, faults);
    Plan result;
    result.bores = plan_bores(job, shop, settings, faults);
    refuse_if_any(Origin::job, faults);

    result.title = job.title;
    result.units = job.units;
    result.reserve = job.reserve;
    const auto wires = wire_uses(job, result.bores, settings);
    const auto gases = gas_uses(result.bores, settings);
    result.totals = totals(result.bores, gases);
    result.take = take(wires, gases, job.reserve, shop.packs, shop.wear_parts, job.units);
    ranges::push_back(result.take, take_holes(hole_uses(job), job.units));
    result.assumed = job.assumed;
    judge(result, job, settings);
    result.working = plan_working(job, result, settings);
    return result;
}

} // namespace ringfill
