#include <ringfill/caution/cautions.hpp>

#include <algorithm>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

double percent_of(const Composition& composition, std::string_view element) {
    for (const auto& [name, percent] : composition)
        if (name == element)
            return percent.value;
    return 0;
}

/// The element that makes up the rest of an alloy, by its group or structure; tables do not name its share.
std::string_view rest_of(std::string_view kind) {
    const auto has = [&](std::string_view word) { return kind.find(word) != std::string_view::npos; };
    return has("bronze") || has("copper") ? "Cu" : has("nickel") ? "Ni" : "";
}

constexpr double most_of_an_alloy = 50; // percent: more than any limit that is looked for

/// The most that is known of an element: limit, usual share, least share, or the rest of the alloy. Nothing:
/// no share of anything is known.
std::optional<double> share_of(std::string_view element, std::string_view kind,
                               std::initializer_list<const Composition*> compositions) {
    if (element == rest_of(kind))
        return most_of_an_alloy;
    std::optional<double> most;
    for (const Composition* one : compositions)
        if (!one->empty())
            most = std::max(most.value_or(0), percent_of(*one, element));
    return most;
}

/// The most of an element that the arc meets in filler and base; a metal of unknown shares leaves it open
/// unless the other one has enough to tell.
MetalShare most_of(std::string_view element, const WornBore& bore, const Base& base, const Filler& filler) {
    MetalShare share;
    const auto of_filler = share_of(element, filler.group, {&filler.composition, &filler.typical});
    const auto of_base = share_of(element, base.structure, {&base.composition, &base.composition_min});
    const auto own = ranges::find(bore.composition, element, [](const auto& part) { return part.first; });
    share.most = std::max(
        {own != bore.composition.end() ? own->second : 0.0, of_filler.value_or(0), of_base.value_or(0)});
    share.is_whole = of_filler && (of_base || !bore.composition.empty());
    return share;
}

BoreFacts bore_facts(const BorePlan& planned, const GivenBore& given) {
    const WornBore& bore = given.bore;
    const Filler& filler = *given.settings.filler;
    BoreFacts facts;
    facts.name = bore.name;
    facts.preheat = planned.heat.preheat.least();
    if (planned.heat_balance)
        facts.peak = planned.heat_balance->peak();
    facts.delayed_cracks = ranges::any_of(planned.heat.preheat.values, [](const AnsweredFigure& value) {
        return value.name == "crack_test_wait_s";
    });
    for (const auto& [id, symbol] : elements)
        facts.metal[id] = most_of(symbol, bore, given.base, filler);
    facts.holes = bore.holes;
    return facts;
}

/// The fuels of the heat balances; the heater of the job also where there is none.
std::optional<std::vector<FuelFacts>> burnt(const std::vector<BorePlan>& bores, const Job& job,
                                            const Fuels& fuels) {
    std::vector<FuelFacts> found;
    bool open = false;
    const auto add = [&](const std::string& name) {
        const auto fuel = ranges::find(fuels.fuels, name, &Fuel::name);
        if (!name.empty() && ranges::find(found, name, &FuelFacts::name) == found.end())
            found.push_back({name, fuel != fuels.fuels.end() && fuel->oxygen_m3_kg.has_value()});
    };
    for (const BorePlan& bore : bores)
        if (bore.heat_balance)
            add(bore.heat_balance->heater.fuel);
        else if (job.heater)
            add(ranges::find(fuels.heaters, job.heater->kind, &HeaterKind::name)->fuel);
        else
            open = true;
    return found.empty() && open ? std::nullopt : std::optional(std::move(found));
}

} // namespace

WorkFacts work_facts(const PlannedWork& work, const Fuels& fuels) {
    WorkFacts facts;
    facts.site = work.job.site;
    facts.units = work.job.units;
    for (const Settings& own : work.settings) {
        const Procedure& procedure = *own.procedure;
        const auto bore = ranges::find(work.bores, procedure.name, &BorePlan::procedure);
        if (bore == work.bores.end())
            continue;
        const FillerForm form = own.filler->form;
        const bool stick = form == FillerForm::stick;
        const Arc arc = stick ? Arc::stick : form == FillerForm::rod ? Arc::rod : Arc::wire;
        // the powder of a cored wire may be metal alone; what is not known counts as flux
        facts.procedures.push_back({procedure.name, arc,
                                    bore->heat.current ? bore->heat.current : procedure.current,
                                    own.gas != nullptr, stick || form == FillerForm::cored});
    }
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        facts.bores.push_back(bore_facts(work.bores[i], work.given[i]));
    facts.fuels = burnt(work.bores, work.job, fuels);
    facts.fuel_is_assumed = !work.job.heater;
    return facts;
}

} // namespace ringfill
