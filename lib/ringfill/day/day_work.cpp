#include <ringfill/day/day_work.hpp>

#include <algorithm>
#include <map>

#include <fmt/format.h>

namespace ringfill {
namespace {

WorkStep hand(std::string name, Time length) {
    return {std::move(name), length};
}

WorkStep at_bar(std::string name, Time length, Phase phase = Phase::set_up) {
    WorkStep step{std::move(name), length, false, true};
    step.phase = phase;
    return step;
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

bool is_last(CutKind kind) {
    return kind == CutKind::finish || kind == CutKind::spring;
}

/// Hand work between the skim and the torch.
WorkBlock before_the_weld(const WornBore& bore, const std::vector<StepTime>& times) {
    const auto of = [&](std::string_view step) { return step_time(times, step).time.value; };
    WorkBlock block{{hand("crack check", of("crack check"))}};
    if (!bore.holes.empty())
        block.steps.push_back(hand("plug holes", static_cast<double>(bore.holes.size()) * of("plug a hole")));
    return block;
}

/// All bores of a line are measured and skimmed on one set-up, before any of them is welded.
void add_survey_and_skim(LineWork& line, const std::string& name, const BorePlan& planned,
                         const std::vector<StepTime>& times) {
    const auto of = [&](std::string_view step) { return step_time(times, step).time.value; };
    line.set_up.steps.push_back(hand(fmt::format("survey {}", name), of("survey")));
    const Time skim = cutting(planned.boring, is_skim);
    if (!(skim > Time()))
        return;
    const bool tool_is_on = std::any_of(line.set_up.steps.begin(), line.set_up.steps.end(),
                                        [](const WorkStep& step) { return step.name == "mount tool"; });
    if (!tool_is_on)
        line.set_up.steps.push_back(at_bar("mount tool", of("mount tool")));
    line.set_up.steps.push_back(at_bar(fmt::format("skim {}", name), skim, Phase::boring));
}

std::string name_of_stretch(const HeatStep& step) {
    return step.pass == "bore" ? fmt::format("weld layer {} to ring {}", step.layer, step.after_ring)
                               : fmt::format("weld {} layer {}", step.pass, step.layer);
}

/// From the first flame to the last ring and the hold.
WorkBlock hot_block(const BorePlan& planned, const std::vector<StepTime>& times) {
    const auto of = [&](std::string_view step) { return step_time(times, step).time.value; };
    const HeatRun& hot = planned.heat_balance->hot.run;
    const HeatRun& cold = planned.heat_balance->cold().run;
    WorkBlock block;
    block.hot = true;
    block.steps = {at_bar("mount torch", of("mount torch")), at_bar("preheat", cold.warm_up, Phase::heating)};
    const HeatStep* before = nullptr;
    int rings_before = 0;
    for (const HeatStep& step : hot.steps) {
        if (step.stage == HeatStage::stop)
            block.steps.push_back({fmt::format("wait: too hot after ring {}", step.after_ring),
                                   step.time,
                                   true,
                                   true,
                                   {},
                                   true});
        if (step.stage != HeatStage::weld)
            continue;
        const bool same_layer = before && before->pass == step.pass && before->layer == step.layer;
        if (before && !same_layer)
            block.steps.push_back(
                {"clean the layer", of("clean a layer"), false, true, {}, true, false, Phase::welding});
        const int rings = step.after_ring - (same_layer ? rings_before : 0);
        rings_before = step.after_ring;
        WorkStep weld = at_bar(name_of_stretch(step),
                               step.time + static_cast<double>(rings) * of("step a ring"), Phase::welding);
        weld.arc_time = step.time;
        weld.welding = true;
        block.steps.push_back(std::move(weld));
        before = &step;
    }
    if (cold.reheating > Time())
        block.steps.push_back(at_bar("reheats between rings", cold.reheating, Phase::heating));
    if (const Time hold = std::max(hot.post_heating, cold.post_heating); hold > Time())
        block.steps.push_back(at_bar("hold hot after the last ring", hold, Phase::heating));
    for (WorkStep& step : block.steps)
        step.fire = step.name != "mount torch";
    block.rest = std::max(*hot.cooling_to_rough, *cold.cooling_to_rough);
    block.rest_name = "cools for roughing";
    return block;
}

WorkBlock roughing(const BorePlan& planned, const std::vector<StepTime>& times) {
    const BoringPlan& boring = planned.boring;
    const HeatBalance& balance = *planned.heat_balance;
    WorkBlock block;
    block.steps = {at_bar("mount tool", step_time(times, "mount tool").time.value)};
    if (const Time trim = standing_of(boring, "trim"); trim > Time())
        block.steps.push_back(at_bar("trim the ends", trim, Phase::boring));
    block.steps.push_back(
        at_bar("rough and semi-finish",
               cutting(boring, [](CutKind kind) { return !is_skim(kind) && !is_last(kind); }) +
                   standing_of(boring, "bar_move"),
               Phase::boring));
    block.rest = std::max(*balance.hot.run.cooling_to_finish, *balance.cold().run.cooling_to_finish);
    block.rest_name = "cools for finishing";
    return block;
}

WorkBlock finishing(const BorePlan& planned, const std::vector<StepTime>& times) {
    const BoringPlan& boring = planned.boring;
    WorkBlock block;
    block.steps = {at_bar("finish and spring pass", cutting(boring, is_last), Phase::boring)};
    Time facing = standing_of(boring, "facing_head");
    for (const Facing& one : boring.facing)
        facing += one.time;
    const std::pair<const char*, Time> rest[] = {{"face", facing},
                                                 {"cut grooves", standing_of(boring, "groove")},
                                                 {"reopen holes", standing_of(boring, "hole")},
                                                 {"chamfer", standing_of(boring, "chamfer")}};
    for (const auto& [name, time] : rest)
        if (time > Time())
            block.steps.push_back(at_bar(name, time, Phase::boring));
    block.steps.push_back(hand("measure size", step_time(times, "measure size").time.value));
    block.steps.back().phase = Phase::boring;
    return block;
}

} // namespace

BoreWork bore_work(const std::string& name, const WornBore& bore, const BorePlan& planned,
                   const std::vector<StepTime>& times) {
    return {name,
            {before_the_weld(bore, times), hot_block(planned, times), roughing(planned, times),
             finishing(planned, times)}};
}

std::vector<LineWork> line_works(const Job& job, const std::vector<BorePlan>& bores,
                                 const std::vector<StepTime>& times) {
    const auto of = [&](std::string_view step) { return step_time(times, step).time.value; };
    const WorkBlock set_up{{at_bar("set up and align the bar", of("align"))}};
    WorkBlock strip{{hand("take the bar off", of("strip"))}};
    strip.steps.front().phase = Phase::clean_up;
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
