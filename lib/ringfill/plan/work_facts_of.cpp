#include <ringfill/plan/work_facts_of.hpp>

#include <algorithm>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

/// What a composition says of an element; an element that it does not name is not in it.
double percent_of(const Composition& composition, std::string_view element) {
    for (const auto& [name, percent] : composition)
        if (name == element)
            return percent.value;
    return 0;
}

std::optional<double> certified(const WornBore& bore, std::string_view element) {
    for (const auto& [name, percent] : bore.composition)
        if (name == element)
            return percent;
    return std::nullopt;
}

/// The most of an element that the arc meets. A metal without a composition leaves it open.
std::optional<double> most_of(std::string_view element, const WornBore& bore, const Base& base,
                              const Filler& filler) {
    const auto on_certificate = certified(bore, element);
    if (filler.composition.empty() || (base.composition.empty() && !on_certificate))
        return std::nullopt;
    return std::max({percent_of(filler.composition, element), percent_of(base.composition, element),
                     on_certificate.value_or(0)});
}

/// The powder of a cored wire may be metal alone; what is not known counts as flux.
bool carries_flux(FillerForm form) {
    return form == FillerForm::cored || form == FillerForm::stick;
}

BoreFacts bore_facts(const BorePlan& planned, const WornBore& bore, const Shop& shop, const Filler& filler) {
    BoreFacts facts;
    facts.name = bore.name;
    if (planned.heat.preheat.minimum)
        facts.preheat = planned.heat.preheat.minimum->value;
    if (planned.heat_balance)
        facts.peak = planned.heat_balance->peak();
    facts.delayed_cracks = ranges::any_of(planned.heat.preheat.values, [](const AnsweredFigure& value) {
        return value.name == "crack_test_wait_s";
    });
    std::vector<Fault> none; // the name is known: the bore is planned
    const Base& base = *find_base(shop.registry, bore.base, bore.path, none);
    facts.metal = {most_of("Mn", bore, base, filler), most_of("Cr", bore, base, filler),
                   most_of("Ni", bore, base, filler), most_of("Cu", bore, base, filler)};
    facts.holes = bore.holes;
    return facts;
}

FuelFacts fuel_facts(const std::string& name, const Fuels& fuels) {
    const auto known = ranges::find(fuels.fuels, name, &Fuel::name);
    return {name, known != fuels.fuels.end() && known->oxygen_m3_kg.has_value()};
}

/// The fuels of the heat balances; the heater of the job also where there is none.
std::optional<std::vector<FuelFacts>> burnt(const Plan& plan, const Job& job, const Fuels& fuels) {
    std::vector<FuelFacts> found;
    bool open = false;
    const auto add = [&](const std::string& fuel) {
        if (!fuel.empty() && ranges::find(found, fuel, &FuelFacts::name) == found.end())
            found.push_back(fuel_facts(fuel, fuels));
    };
    for (const BorePlan& bore : plan.bores)
        if (bore.heat_balance)
            add(bore.heat_balance->heater.fuel);
        else if (job.heater)
            add(ranges::find(fuels.heaters, job.heater->kind, &HeaterKind::name)->fuel);
        else
            open = true;
    return found.empty() && open ? std::nullopt : std::optional(std::move(found));
}

} // namespace

WorkFacts work_facts_of(const Plan& plan, const Job& job, const Shop& shop,
                        const SettingsByProcedure& settings) {
    WorkFacts facts;
    facts.site = job.site;
    facts.units = job.units;
    for (const Procedure& procedure : job.procedures) {
        const Settings& own = settings.at(procedure.name);
        facts.procedures.push_back({procedure.name, {}, own.gas != nullptr, carries_flux(own.filler->form)});
        for (const BorePlan& bore : plan.bores)
            if (bore.procedure == procedure.name)
                facts.procedures.back().current = bore.heat.current ? bore.heat.current : procedure.current;
        if (!facts.procedures.back().current)
            facts.procedures.back().current = procedure.current;
    }
    for (std::size_t i = 0; i < job.bores.size(); ++i)
        facts.bores.push_back(
            bore_facts(plan.bores[i], job.bores[i], shop, *settings.at(plan.bores[i].procedure).filler));
    facts.fuels = burnt(plan, job, shop.fuels);
    return facts;
}

} // namespace ringfill
