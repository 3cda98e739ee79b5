#include <ringfill/caution/cautions.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/caution/bore_rules.hpp>
#include <ringfill/caution/filler_rules.hpp>
#include <ringfill/caution/heat_rules.hpp>
#include <ringfill/caution/table_cautions.hpp>

namespace ringfill {
namespace {

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
bool is_all_in_doubt(const std::vector<BorePlan>& bores, const Procedure& procedure) {
    bool any = false;
    for (const BorePlan& bore : bores)
        if (bore.procedure == procedure.name) {
            if (!bore.heat.preheat.doubt)
                return false;
            any = true;
        }
    return any;
}

/// What concerns the whole job and its procedures.
std::vector<Caution> job_cautions(const Job& job, const std::vector<Settings>& settings,
                                  const std::vector<BorePlan>& bores) {
    std::vector<std::string> in_doubt;
    for (const BorePlan& bore : bores)
        if (bore.heat.preheat.doubt)
            in_doubt.push_back(bore.name);
    std::vector<Caution> found =
        cold_cautions(job.site, job.units, in_doubt, in_doubt.size() == bores.size());
    for (const Procedure& procedure : job.procedures)
        if (!is_all_in_doubt(bores, procedure))
            ranges::push_back(found, approved_cautions(procedure, job.units));
    for (const Settings& one : settings)
        ranges::push_back(found, form_cautions(*one.procedure, *one.filler));
    return found;
}

/// What concerns one bore and its weld.
std::vector<Caution> bore_cautions(const GivenBore& given, const BorePlan& planned, UnitSystem units) {
    const WornBore& bore = given.bore;
    const Procedure& procedure = *given.settings.procedure;
    std::vector<Caution> found = survey_cautions(bore, planned.survey, planned.build, units);
    const auto add = [&](std::vector<Caution> more) { ranges::push_back(found, std::move(more)); };
    add(weld_cautions(bore, planned.build, planned.bead, planned.layering, planned.deposition, units));
    add(position_cautions(bore, procedure, largest_bead(planned, given.settings), units));
    add(face_cautions(bore, planned.faces, units));
    add(family_cautions(bore, procedure));
    add(suit_cautions(bore, procedure, planned.suit ? &*planned.suit : nullptr, planned.buffer));
    if (planned.dilution)
        add(dilution_cautions(bore, procedure, *planned.dilution));
    if (planned.layer_metals)
        add(ferrite_cautions(bore, *planned.dilution, *planned.layer_metals));
    add(preheat_cautions(bore, procedure, planned.heat, planned.build, units));
    if (planned.heat_balance)
        add(balance_cautions(bore, *planned.heat_balance, units));
    add(fusion_cautions(bore, procedure.travel, planned.bead, planned.faces));
    return found;
}

/// What concerns the boring of all bores.
std::vector<Caution> bar_cautions(const Job& job, const std::vector<BorePlan>& bores,
                                  const Cutting& cutting) {
    std::vector<Caution> found;
    std::vector<HotBore> hot;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        ranges::push_back(found, boring_cautions(job.bores[i], bores[i].build, bores[i].boring, job.units));
        hot.push_back({bores[i].name, &bores[i].boring});
    }
    ranges::push_back(found, hot_finish_cautions(hot, cutting, job.units));
    return found;
}

int rank(const Caution& caution) {
    return caution.applies == Applies::yes ? static_cast<int>(caution.when) : 3;
}

} // namespace

std::vector<Caution> cautions(const PlannedWork& work, const CautionTables& tables) {
    const Job& job = work.job;
    std::vector<Caution> found;
    const auto add = [&](std::vector<Caution> more) { ranges::push_back(found, std::move(more)); };
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        add(heat_stops(job.bores[i], work.bores[i].heat, job.units));
    add(job_cautions(job, work.settings, work.bores));
    for (std::size_t i = 0; i < work.bores.size(); ++i)
        add(bore_cautions(work.given[i], work.bores[i], job.units));
    add(bar_cautions(job, work.bores, tables.cutting));
    add(table_cautions(tables.cautions, work_facts(work, tables.fuels), work.fire_watch));
    std::stable_sort(found.begin(), found.end(),
                     [](const Caution& one, const Caution& other) { return rank(one) < rank(other); });
    return found;
}

std::vector<std::string> caution_notes(const CautionTable& table) {
    std::vector<std::string> notes;
    for (const ReplacedCaution& one : table.replaced)
        notes.push_back(fmt::format("cautions: \"{}\" stands as {} has it, not as the product's own table.",
                                    one.name, one.file));
    return notes;
}

Bibliography cited(const std::vector<Caution>& cautions, const Job& job, const CautionTables& tables) {
    Bibliography sources;
    const auto families = families_of(job, tables.registry);
    const auto add = [&](const std::string& key) {
        if (sources.contains(key))
            return;
        if (const auto own = tables.cautions.sources.find(key); own != tables.cautions.sources.end())
            sources.insert(*own);
        for (const Family& family : families)
            if (const auto known = family.sources.find(key); known != family.sources.end())
                sources.insert(*known);
    };
    for (const Caution& caution : cautions) {
        add(caution.source);
        for (const std::string& key : caution.more_sources)
            add(key);
    }
    return sources;
}

} // namespace ringfill
