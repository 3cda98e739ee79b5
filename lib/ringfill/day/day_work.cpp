#include <ringfill/day/day_work.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/hold.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

using Times = std::vector<StepTime>;

Time standing_time(const Times& times, Step step) {
    return step_time(times, step.standing).time.value;
}

WorkStep standing(const Times& times, Step step, const std::string& on = {}) {
    return {step, standing_time(times, step), on};
}

/// Standing time of the bar's own work of one kind.
Time bar_stands(const BoringPlan& boring, std::string_view step) {
    const auto found = ranges::find(boring.standing, step, &Standing::step);
    return found == boring.standing.end() ? Time() : found->time();
}

/// Cutting time of some cuts, and their share of setting the bit.
Time cutting(const BoringPlan& boring, bool (*wanted)(CutKind)) {
    Time sum;
    double count = 0;
    for (const Cut& cut : boring.cuts)
        if (wanted(cut.kind)) {
            sum += cut.time;
            ++count;
        }
    return sum + count / static_cast<double>(boring.cuts.size()) * bar_stands(boring, "tool_set");
}

bool is_skim(CutKind kind) {
    return kind == CutKind::skim;
}

/// The tool is mounted for the first skim.
void add_survey_and_skim(std::vector<WorkStep>& steps, const std::string& piece, const BoringPlan& boring,
                         const Times& times) {
    steps.push_back(standing(times, steps::survey, piece));
    const WorkStep skim{steps::skim, cutting(boring, is_skim), piece};
    if (!(skim.length > Time()))
        return;
    if (!ranges::contains(steps, steps::mount_tool, &WorkStep::step))
        steps.push_back(standing(times, steps::mount_tool));
    steps.push_back(skim);
}

/// Hand work between the skim and the torch.
WorkBlock before_the_weld(const WornBore& bore, const Times& times) {
    WorkBlock block{{standing(times, steps::check_cracks)}};
    if (!bore.holes.empty())
        block.steps.push_back({steps::plug_holes, static_cast<double>(bore.holes.size()) *
                                                      standing_time(times, steps::plug_holes)});
    return block;
}

/// The rings of a bore, as far as they are welded without a rest, with the dwells that are told, the rests
/// and the cleaning between layers.
void add_rings(std::vector<WorkStep>& steps, const HeatRun& run) {
    for (const HeatStep& step : run.steps) {
        if (step.stage == HeatStage::rest)
            steps.push_back({steps::wait_too_hot, step.time, fmt::format("ring {}", step.after_ring)});
        else if (step.stage == HeatStage::clean)
            steps.push_back({steps::clean_layer, step.told});
        else if (step.stage == HeatStage::weld)
            steps.push_back({step.in_stitches ? steps::weld_in_stitches : steps::weld, step.arc + step.told,
                             step.pass == "bore"
                                 ? fmt::format("layer {} to {} {}", step.layer,
                                               step.in_stitches ? "stitch" : "ring", step.after_ring)
                                 : fmt::format("{} layer {}", step.pass, step.layer),
                             step.arc});
    }
}

/// A heat treatment takes the longest hold that a document asks for, and what it takes to bring the part
/// there, up to heat and down again.
Time treatment_time(const BoreHeat& heat, const Times& times) {
    Time longest{};
    for (const HeatTreatment& asked : heat.preheat.heat_treatment)
        longest = std::max(longest, treatment_hold(asked, mm(*heat.wall)));
    return longest + standing_time(times, steps::heat_treat);
}

/// From the first flame to the last ring and the hold. What is not fit for service as welded is bored only
/// after its heat treatment.
WorkBlock hot_block(const Job& job, const BorePlan& planned, const Times& times) {
    const HeatBalance& balance = *planned.heat_balance;
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    WorkBlock block{{}, true, steps::cool_to_rough, *longest_cooling(balance, &BossCooling::to_rough)};
    if (!planned.deposition.piece) // electrodes and rods are welded by hand
        block.steps.push_back(standing(times, steps::mount_torch));
    if (preheats_by_flame(planned))
        block.steps.push_back(standing(times, steps::rig_burner));
    block.steps.push_back({steps::preheat, cold.warm_up.time});
    block.steps.push_back({steps::soak, soaks_by_wall(job, planned) ? soaking_time(planned) : cold.delay});
    add_rings(block.steps, hot);
    block.steps.push_back({steps::reheat, cold.reheating});
    block.steps.push_back({steps::hold, std::max(hot.post_heating, cold.post_heating)});
    if (!planned.heat.preheat.heat_treatment.empty()) {
        block.resting = steps::heat_treat;
        block.rest += treatment_time(planned.heat, times);
    }
    return block;
}

WorkBlock roughing(const BorePlan& planned, const Times& times) {
    const BoringPlan& boring = planned.boring;
    const HeatBalance& balance = *planned.heat_balance;
    const auto is_rough = [](CutKind kind) { return !is_skim(kind) && !is_last(kind); };
    return {{standing(times, steps::mount_tool),
             {steps::trim, bar_stands(boring, "trim")},
             {steps::rough, cutting(boring, is_rough) + bar_stands(boring, "bar_move")}},
            false,
            steps::cool_to_finish,
            *longest_cooling(balance, &BossCooling::to_finish)};
}

WorkBlock finishing(const BoringPlan& boring, const Times& times) {
    Time facing = bar_stands(boring, "facing_head");
    for (const Facing& face : boring.facing)
        facing += face.time;
    return {{{steps::finish, cutting(boring, is_last)},
             {steps::face, facing},
             {steps::cut_grooves, bar_stands(boring, "groove")},
             {steps::reopen_holes, bar_stands(boring, "hole")},
             {steps::chamfer, bar_stands(boring, "chamfer")},
             standing(times, steps::measure)}};
}

} // namespace

bool preheats_by_flame(const BorePlan& planned) {
    const auto& balance = planned.heat_balance;
    return balance && !balance->heater.fuel.empty() && balance->cold().run.warm_up.time > Time();
}

Time soaking_time(const BorePlan& planned) {
    return std::max(planned.heat_balance->cold().run.delay, equalising_time(*planned.heat.wall));
}

bool soaks_by_wall(const Job& job, const BorePlan& planned) {
    return preheats_by_flame(planned) && !planned.heat_balance->heater.stays && planned.heat.wall &&
           !(job.heater && job.heater->start_delay);
}

JobWork work_on(const Job& job, const std::vector<BorePlan>& bores, const std::vector<StepTime>& times) {
    JobWork work{standing(times, steps::unload), {}, standing(times, steps::pack)};
    for (std::size_t i = 0; i < bores.size(); ++i)
        for (int piece = 1; piece <= bores[i].count; ++piece) {
            const BorePlan& planned = bores[i];
            const std::string name = piece_name(planned, piece);
            const std::string line_name = job.bores[i].line.value_or("");
            auto line = ranges::find(work.lines, line_name, &LineWork::line);
            if (line == work.lines.end() || line_name.empty())
                line = work.lines.insert(work.lines.end(), {line_name,
                                                            {{standing(times, steps::set_up_bar)}},
                                                            {},
                                                            standing(times, steps::take_off_bar)});
            add_survey_and_skim(line->set_up.steps, name, planned.boring, times);
            line->bores.push_back({name,
                                   {before_the_weld(job.bores[i], times), hot_block(job, planned, times),
                                    roughing(planned, times), finishing(planned.boring, times)},
                                   planned.heat.preheat.asked != PreheatState::none});
        }
    return work;
}

} // namespace ringfill
