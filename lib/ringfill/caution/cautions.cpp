#include <ringfill/caution/cautions.hpp>

#include <functional>
#include <initializer_list>
#include <set>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/for_each.hpp>
#include <range/v3/algorithm/none_of.hpp>
#include <range/v3/algorithm/stable_sort.hpp>

#include <ringfill/caution/replaced_rules.hpp>
#include <ringfill/caution/rules.hpp>
#include <ringfill/caution/table_cautions.hpp>

namespace ringfill {
namespace {

/// A rule on one bore, and what it guards where it does not say so itself.
struct BoreRule {
    void (*judge)(CautionList& cautions, const RuledBore& on);
    Matter matter;
};

constexpr std::initializer_list<BoreRule> of_weld = {
    {survey_rules, Matter::quality},   {weld_rules, Matter::quality},     {position_rules, Matter::quality},
    {face_rules, Matter::quality},     {family_rules, Matter::quality},   {suit_rules, Matter::cracking},
    {dilution_rules, Matter::quality}, {ferrite_rules, Matter::cracking}, {preheat_rules, Matter::cracking},
    {balance_rules, Matter::cracking}, {fusion_rules, Matter::quality}};

/// Judges every bore by some rules.
void judge_bores(CautionList& cautions, const PlannedWork& work, std::initializer_list<BoreRule> rules) {
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        for (const auto& [judge, matter] : rules) {
            cautions.about = {{Concern::bore, work.bores[i].name}};
            cautions.matter = matter;
            judge(cautions, {work.given[i].bore, work.given[i].settings, work.bores[i], work.job.units});
        }
}

/// What concerns the whole job and its procedures.
void judge_whole_job(CautionList& cautions, const PlannedWork& work) {
    std::vector<std::string> in_doubt;
    for (const BorePlan& bore : work.bores)
        if (bore.heat.preheat.doubt)
            in_doubt.push_back(bore.name);
    cautions.about = {};
    cautions.matter = Matter::cracking;
    cold_rules(cautions, work.job.site, in_doubt, in_doubt.size() == work.bores.size());
    for (const Procedure& procedure : work.job.procedures) {
        const auto is_laid = [&](const BorePlan& bore) { return bore.procedure == procedure.name; };
        // nothing rules yet where every bore of it waits for its metal to be identified
        cautions.about = {{Concern::procedure, procedure.name}};
        if (ranges::none_of(work.bores, is_laid) || ranges::any_of(work.bores, [&](const BorePlan& bore) {
                return is_laid(bore) && !bore.heat.preheat.doubt;
            }))
            approved_rules(cautions, procedure);
    }
    for (const Settings& one : work.settings) {
        cautions.about = {{Concern::procedure, one.procedure->name}};
        form_rules(cautions, *one.procedure, *one.filler);
    }
}

/// What tables of the user make less careful.
void judge_replaced(CautionList& cautions, const PlannedWork& work, const Shop& shop) {
    std::set<std::string> families;
    for (const Family& family : families_of(work.job, shop.registry))
        families.insert(family.name);
    cautions.about = {};
    cautions.matter = Matter::cracking;
    replaced_rules(cautions, replaced_rows(shop), families);
}

int rank(const Caution& caution) {
    return caution.applies == Applies::yes ? static_cast<int>(caution.when) : 3;
}

} // namespace

std::vector<Caution> cautions(const PlannedWork& work, const Shop& shop) {
    CautionList cautions{work.job.units};
    judge_bores(cautions, work, {{heat_stops, Matter::cracking}});
    judge_replaced(cautions, work, shop);
    judge_whole_job(cautions, work);
    judge_bores(cautions, work, of_weld);
    judge_bores(cautions, work, {{boring_rules, Matter::quality}});
    cautions.about = {};
    hot_finish_rules(cautions, work.bores, shop.cutting);
    std::vector<Caution> found = std::move(cautions.found);
    append(found, table_cautions(shop.cautions, work_facts(work, shop.fuels), work.fire_watch));
    ranges::stable_sort(found, std::less<>(), rank);
    return found;
}

Bibliography cited(const std::vector<Caution>& cautions, const Job& job, const Shop& shop) {
    std::vector<const Bibliography*> known{&shop.cautions.sources};
    for (const Family& family : families_of(job, shop.registry))
        known.push_back(&family.sources);
    Bibliography sources;
    const auto cite = [&](const std::string& key) {
        for (const Bibliography* bibliography : known)
            if (const auto source = bibliography->find(key); source != bibliography->end())
                sources.insert(*source); // the first one stays
    };
    for (const Caution& caution : cautions) {
        ranges::for_each(caution.more_sources, cite);
        cite(caution.source);
    }
    return sources;
}

} // namespace ringfill
