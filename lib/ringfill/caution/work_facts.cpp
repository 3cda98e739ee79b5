#include <ringfill/caution/cautions.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

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
        for (const auto& [name, percent] : *one)
            most = std::max(most.value_or(0), name == element ? percent.value : 0);
    return most;
}

/// The most of an element that the arc meets in filler and base; a metal of unknown shares leaves it open
/// unless the other one has enough to tell.
void add_element(WorkFacts& facts, const Circumstance* of, std::string_view element, const GivenBore& given) {
    const auto& [bore, settings, base] = given;
    const Filler& filler = *settings.filler;
    const auto of_filler = share_of(element, filler.group, {&filler.composition, &filler.typical});
    const auto of_base = share_of(element, base.structure, {&base.composition, &base.composition_min});
    double most = std::max(of_filler.value_or(0), of_base.value_or(0));
    for (const auto& [name, percent] : bore.composition)
        most = std::max(most, name == element ? percent : 0);
    facts.add(of, most, fmt::format("filler or metal hold {} of", element),
              !of_filler || (!of_base && bore.composition.empty()));
}

void add_bore(WorkFacts& facts, const BorePlan& planned, const GivenBore& given) {
    const Preheat& heat = planned.heat.preheat;
    const auto& balance = planned.heat_balance;
    facts.about = {Concern::bore, planned.name};
    facts.add(circumstance("preheat_degC"),
              heat.minimum ? std::optional(deg_c(heat.minimum->value)) : std::nullopt, "the preheat is");
    facts.add(circumstance("peak_degC"), balance ? std::optional(deg_c(balance->peak())) : std::nullopt,
              "the boss gets to");
    facts.add(circumstance("delayed_cracks"),
              ranges::contains(heat.values, "crack_test_wait_s", &AnsweredFigure::name),
              "the rules of the metal ask for a wait");
    const auto is_open = [](const Hole& hole) { return hole.other_end == "open"; };
    const auto is_shut = [&](const Hole& hole) { return hole.other_end && !is_open(hole); };
    if (ranges::any_of(given.bore.holes, is_shut))
        facts.add(circumstance("plugged_passage"), 1,
                  "a hole that is plugged for the weld is shut at its far end too");
    else if (!ranges::all_of(given.bore.holes, is_open))
        facts.add(circumstance("plugged_passage"), std::nullopt); // the job does not say of one
    add_element(facts, circumstance("manganese_pct"), "Mn", given);
    add_element(facts, circumstance("chromium_pct"), "Cr", given);
    add_element(facts, circumstance("nickel_pct"), "Ni", given);
    add_element(facts, circumstance("copper_pct"), "Cu", given);
}

void add_procedure(WorkFacts& facts, const Settings& settings, const BorePlan& bore) {
    const auto& current = bore.heat.current ? bore.heat.current : settings.procedure->current;
    const FillerForm form = settings.filler->form;
    const bool stick = form == FillerForm::stick;
    facts.about = {Concern::procedure, settings.procedure->name};
    // each kind of arc has filter shades of its own
    facts.add(stick                     ? circumstance("stick_current_A")
              : form == FillerForm::rod ? circumstance("rod_current_A")
                                        : circumstance("wire_current_A"),
              current ? std::optional(current->value()) : std::nullopt, "the arc has");
    facts.add(circumstance("shielding_gas"), settings.gas != nullptr, "the arc burns under shielding gas");
    // the powder of a cored wire may be metal alone; what is not known counts as flux
    facts.add(circumstance("flux"), stick || form == FillerForm::cored, "the filler carries a flux");
    ++facts.procedures;
}

/// Lists of the site that tell circumstances by their names, after "near_" where they are near the heat.
constexpr std::pair<std::string_view, std::optional<std::vector<std::string>> Site::*> lists[] = {
    {"site.near", &Site::near}, {"site.residue", &Site::residue}, {"site.crew", &Site::crew}};

void add_listed(WorkFacts& facts, const Circumstance& of,
                const std::optional<std::vector<std::string>>& list) {
    const std::string_view near = "near_";
    const std::string_view name = of.name.substr(of.name.starts_with(near) ? near.size() : 0);
    for (const std::string_view one : {name, name == "grease" ? "oil" : name})
        if (list && ranges::contains(*list, one))
            return facts.add(&of, 1, fmt::format("the job names {} in {}", one, of.field));
    facts.add(&of, list ? std::optional(0.0) : std::nullopt);
}

/// The fuels of the heat balances; the heater of the job also where there is none.
std::optional<std::vector<BurntFuel>> burnt(const PlannedWork& work, const Fuels& fuels) {
    std::vector<BurntFuel> found;
    bool open = false;
    const auto add = [&](const std::string& name) {
        const auto fuel = ranges::find(fuels.fuels, name, &Fuel::name);
        if (!name.empty() && !ranges::contains(found, name, &BurntFuel::name))
            found.push_back({name, fuel != fuels.fuels.end() && fuel->oxygen_m3_kg.has_value()});
    };
    for (const BorePlan& bore : work.bores)
        if (bore.heat_balance)
            add(bore.heat_balance->heater.fuel);
        else if (work.job.heater)
            add(ranges::find(fuels.heaters, work.job.heater->kind, &HeaterKind::name)->fuel);
        else
            open = true;
    return found.empty() && open ? std::nullopt : std::optional(std::move(found));
}

} // namespace

void add_site(WorkFacts& facts, const Site& site) {
    const auto said = [&](const Circumstance* of, const std::optional<bool>& flag, bool wanted = true) {
        facts.add(of, flag ? std::optional<double>(*flag == wanted) : std::nullopt,
                  flag ? fmt::format("the job says {} is {}", of->field, *flag) : "");
    };
    const auto measured = [&](const Circumstance* of, const auto& quantity, const char* words) {
        facts.add(of, quantity ? std::optional(quantity->value()) : std::nullopt, words);
    };
    for (const Circumstance& one : circumstances)
        for (const auto& [field, list] : lists)
            if (one.field == field)
                add_listed(facts, one, site.*list);
    facts.add(circumstance("always"), 1, "on every job");
    said(circumstance("wet"), site.wet);
    said(circumstance("indoors"), site.indoors);
    said(circumstance("outdoors"), site.indoors, false);
    said(circumstance("enclosed"), site.enclosed);
    const std::string coating = site.coating.value_or("");
    const bool nobody_knows = coating == "unknown";
    const std::string words = nobody_knows   ? "nobody knows the coating"
                              : site.coating ? "the coating is " + coating
                                             : "";
    facts.add(circumstance("coated"), site.coating ? std::optional(coating != "none") : std::nullopt, words);
    facts.add(circumstance("zinc_coated"),
              site.coating && !nobody_knows ? std::optional(coating == "zinc") : std::nullopt, words);
    if (site.room_volume || site.indoors != false)
        measured(circumstance("room_volume_m3"), site.room_volume, "a room of");
    if (site.ceiling || site.indoors != false)
        measured(circumstance("ceiling_m"), site.ceiling, "a ceiling of");
    facts.add(circumstance("ambient_degC"), site.ambient ? std::optional(deg_c(*site.ambient)) : std::nullopt,
              "the site has");
}

void add_fuels(WorkFacts& facts, const std::optional<std::vector<BurntFuel>>& fuels, bool is_assumed) {
    const std::string assumed = is_assumed ? ", assumed: the job names no heater" : "";
    for (const Circumstance& one : circumstances) {
        if (one.field != circumstance("fuel_gas")->field)
            continue;
        Fact& fact = facts.known[&one].emplace_back();
        if (fuels && !is_assumed)
            fact.figure = 0;
        if (&one == circumstance("electric_heater") && fact.figure)
            fact = {fuels->empty(), "the heater is electric"};
        const bool is_oxygen = &one == circumstance("oxygen");
        for (const auto& [name, takes_oxygen] : fuels.value_or(std::vector<BurntFuel>()))
            if (is_oxygen ? takes_oxygen : &one == circumstance("fuel_gas") || name == one.name) {
                fact = {1, fmt::format("{} {}{}", name,
                                       is_oxygen ? "burns with oxygen from cylinders" : "heats the boss",
                                       assumed)};
                break;
            }
    }
}

WorkFacts work_facts(const PlannedWork& work, const Fuels& fuels) {
    WorkFacts facts{work.job.units, work.bores.size()};
    add_site(facts, work.job.site);
    for (const Settings& own : work.settings)
        if (const auto bore = ranges::find(work.bores, own.procedure->name, &BorePlan::procedure);
            bore != work.bores.end())
            add_procedure(facts, own, *bore);
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        add_bore(facts, work.bores[i], work.given[i]);
    add_fuels(facts, burnt(work, fuels), !work.job.heater);
    return facts;
}

} // namespace ringfill
