#include <ringfill/day/day_work.hpp>

#include <algorithm>
#include <array>
#include <map>

#include <fmt/format.h>

namespace ringfill {
namespace {

/// What every step of one kind takes.
struct StepKind {
    Step step;
    std::string_view words;
    Phase phase = Phase::set_up;
    bool uses_bar = false;
    bool fire = false;    ///< flame, arc, sparks, or a pause between them
    bool welding = false; ///< between the first and the last ring
    bool waits = false;
};

constexpr auto step_kinds = std::to_array<StepKind>({
    {Step::unload, "unload and make the place safe"},
    {Step::set_up_bar, "set up and align the bar", Phase::set_up, true},
    {Step::survey, "survey"},
    {Step::mount_tool, "mount tool", Phase::set_up, true},
    {Step::skim, "skim", Phase::boring, true},
    {Step::check_cracks, "crack check"},
    {Step::plug_holes, "plug holes"},
    {Step::mount_torch, "mount torch", Phase::set_up, true},
    {Step::preheat, "preheat", Phase::heating, true, true},
    {Step::wait_too_hot, "wait: too hot after", Phase::waiting, true, true, true, true},
    {Step::clean_layer, "clean the layer", Phase::welding, true, true, true},
    {Step::weld, "weld", Phase::welding, true, true, true},
    {Step::reheat, "reheats between rings", Phase::heating, true, true},
    {Step::hold, "hold hot after the last ring", Phase::heating, true, true},
    {Step::trim, "trim the ends", Phase::boring, true},
    {Step::rough, "rough and semi-finish", Phase::boring, true},
    {Step::finish, "finish and spring pass", Phase::boring, true},
    {Step::face, "face", Phase::boring, true},
    {Step::cut_grooves, "cut grooves", Phase::boring, true},
    {Step::reopen_holes, "reopen holes", Phase::boring, true},
    {Step::chamfer, "chamfer", Phase::boring, true},
    {Step::measure, "measure size", Phase::boring},
    {Step::take_off_bar, "take the bar off", Phase::clean_up},
    {Step::pack, "pack and hand over", Phase::clean_up},
});

/// Adds a step that takes any time.
void add_if_any(WorkBlock& block, Step step, Time length) {
    if (length > Time())
        block.steps.push_back(work_step(step, length));
}

/// Standing time of the bar's own work of one kind.
Time standing_of(const BoringPlan& boring, std::string_view step) {
    Time sum = {};
    for (const Standing& standing : boring.standing)
        if (standing.step == step)
            sum += standing.time();
    return sum;
}

/// Cutting time of some cuts, and their share of setting the bit.
template <class Wanted>
Time cutting(const BoringPlan& boring, Wanted wanted) {
    Time sum = {};
    int count = 0;
    for (const Cut& cut : boring.cuts)
        if (wanted(cut.kind)) {
            sum += cut.time;
            ++count;
        }
    const double share =
        boring.cuts.empty() ? 0.0 : static_cast<double>(count) / static_cast<double>(boring.cuts.size());
    return sum + share * standing_of(boring, "tool_set");
}

bool is_skim(CutKind kind) {
    return kind == CutKind::skim;
}

/// Hand work between the skim and the torch.
WorkBlock before_the_weld(const WornBore& bore, const std::vector<StepTime>& times) {
    WorkBlock block{{work_step(Step::check_cracks, time_of(times, "crack check"))}};
    if (!bore.holes.empty())
        block.steps.push_back(work_step(Step::plug_holes, static_cast<double>(bore.holes.size()) *
                                                              time_of(times, "plug a hole")));
    return block;
}

/// All bores of a line are measured and skimmed on one set-up, before any of them is welded. The tool is
/// mounted for the first skim.
void add_survey_and_skim(LineWork& line, const std::string& name, const BorePlan& planned,
                         const std::vector<StepTime>& times) {
    std::vector<WorkStep>& steps = line.set_up.steps;
    steps.push_back(work_step(Step::survey, time_of(times, "survey"), name));
    const Time skim = cutting(planned.boring, is_skim);
    if (!(skim > Time()))
        return;
    const bool tool_is_on = std::any_of(steps.begin(), steps.end(),
                                        [](const WorkStep& step) { return step.phase == Phase::boring; });
    if (!tool_is_on)
        steps.push_back(work_step(Step::mount_tool, time_of(times, "mount tool")));
    steps.push_back(work_step(Step::skim, skim, name));
}

/// The rings of one layer that are welded without a stop.
WorkStep stretch(const HeatStep& step, int rings, Time step_a_ring) {
    WorkStep weld =
        work_step(Step::weld, step.time + static_cast<double>(rings) * step_a_ring,
                  step.pass == "bore" ? fmt::format("layer {} to ring {}", step.layer, step.after_ring)
                                      : fmt::format("{} layer {}", step.pass, step.layer));
    weld.arc_time = step.time;
    return weld;
}

/// The rings of a bore, with the waits between them.
void add_rings(WorkBlock& block, const HeatRun& run, const std::vector<StepTime>& times) {
    const HeatStep* before = nullptr;
    int rings_before = 0;
    for (const HeatStep& step : run.steps) {
        if (step.stage == HeatStage::stop)
            block.steps.push_back(
                work_step(Step::wait_too_hot, step.time, fmt::format("ring {}", step.after_ring)));
        if (step.stage != HeatStage::weld)
            continue;
        const bool same_layer = before && before->pass == step.pass && before->layer == step.layer;
        if (before && !same_layer)
            block.steps.push_back(work_step(Step::clean_layer, time_of(times, "clean a layer")));
        block.steps.push_back(
            stretch(step, step.after_ring - (same_layer ? rings_before : 0), time_of(times, "step a ring")));
        rings_before = step.after_ring;
        before = &step;
    }
}

/// From the first flame to the last ring and the hold.
WorkBlock hot_block(const BorePlan& planned, const std::vector<StepTime>& times) {
    const HeatRun& hot = planned.heat_balance->hot.run;
    const HeatRun& cold = planned.heat_balance->cold().run;
    WorkBlock block;
    block.hot = true;
    block.steps = {work_step(Step::mount_torch, time_of(times, "mount torch")),
                   work_step(Step::preheat, cold.warm_up)};
    add_rings(block, hot, times);
    add_if_any(block, Step::reheat, cold.reheating);
    add_if_any(block, Step::hold, std::max(hot.post_heating, cold.post_heating));
    block.rest = std::max(*hot.cooling_to_rough, *cold.cooling_to_rough);
    block.rest_name = "cools for roughing";
    return block;
}

WorkBlock roughing(const BorePlan& planned, const std::vector<StepTime>& times) {
    const BoringPlan& boring = planned.boring;
    const HeatBalance& balance = *planned.heat_balance;
    WorkBlock block;
    block.steps = {work_step(Step::mount_tool, time_of(times, "mount tool"))};
    add_if_any(block, Step::trim, standing_of(boring, "trim"));
    block.steps.push_back(work_step(Step::rough, cutting(boring, [](CutKind kind) {
                                                     return !is_skim(kind) && !is_last(kind);
                                                 }) + standing_of(boring, "bar_move")));
    block.rest = std::max(*balance.hot.run.cooling_to_finish, *balance.cold().run.cooling_to_finish);
    block.rest_name = "cools for finishing";
    return block;
}

WorkBlock finishing(const BorePlan& planned, const std::vector<StepTime>& times) {
    const BoringPlan& boring = planned.boring;
    WorkBlock block;
    block.steps = {work_step(Step::finish, cutting(boring, is_last))};
    Time facing = standing_of(boring, "facing_head");
    for (const Facing& face : boring.facing)
        facing += face.time;
    add_if_any(block, Step::face, facing);
    add_if_any(block, Step::cut_grooves, standing_of(boring, "groove"));
    add_if_any(block, Step::reopen_holes, standing_of(boring, "hole"));
    add_if_any(block, Step::chamfer, standing_of(boring, "chamfer"));
    block.steps.push_back(work_step(Step::measure, time_of(times, "measure size")));
    return block;
}

} // namespace

WorkStep work_step(Step step, Time length, const std::string& of) {
    const auto kind = std::find_if(step_kinds.begin(), step_kinds.end(),
                                   [&](const StepKind& one) { return one.step == step; });
    WorkStep made;
    made.name = of.empty() ? std::string(kind->words) : fmt::format("{} {}", kind->words, of);
    made.length = length;
    made.waits = kind->waits;
    made.uses_bar = kind->uses_bar;
    made.welding = kind->welding;
    made.fire = kind->fire;
    made.phase = kind->phase;
    return made;
}

BoreWork bore_work(const std::string& name, const WornBore& bore, const BorePlan& planned,
                   const std::vector<StepTime>& times) {
    return {name,
            {before_the_weld(bore, times), hot_block(planned, times), roughing(planned, times),
             finishing(planned, times)}};
}

std::vector<LineWork> line_works(const Job& job, const std::vector<BorePlan>& bores,
                                 const std::vector<StepTime>& times) {
    const WorkBlock set_up{{work_step(Step::set_up_bar, time_of(times, "align"))}};
    const WorkBlock strip{{work_step(Step::take_off_bar, time_of(times, "strip"))}};
    std::vector<LineWork> lines;
    std::map<std::string, std::size_t> known;
    for (std::size_t i = 0; i < bores.size(); ++i)
        for (int piece = 1; piece <= bores[i].count; ++piece) {
            const std::string name = piece_name(bores[i], piece);
            const std::string line = job.bores[i].line.value_or("");
            const auto found = line.empty() ? known.end() : known.find(line);
            if (found == known.end()) {
                if (!line.empty())
                    known.emplace(line, lines.size());
                lines.push_back({line, set_up, {}, strip});
            }
            LineWork& mine = found == known.end() ? lines.back() : lines[found->second];
            add_survey_and_skim(mine, name, bores[i], times);
            mine.bores.push_back(bore_work(name, job.bores[i], bores[i], times));
        }
    return lines;
}

std::string no_day_because(const std::vector<BorePlan>& bores) {
    long pieces = 0;
    for (const BorePlan& bore : bores)
        pieces += bore.count;
    if (pieces > most_pieces_of_a_day)
        return fmt::format("{} pieces are more than the {} that are laid out", pieces, most_pieces_of_a_day);
    for (const BorePlan& bore : bores) {
        if (!bore.heat_balance)
            return fmt::format("the heat balance of {} is left out", bore.name);
        if (end_of(*bore.heat_balance) != BalanceEnd::done)
            return fmt::format("the heat of {} does not come to its end", bore.name);
    }
    return {};
}

} // namespace ringfill
