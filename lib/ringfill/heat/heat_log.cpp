#include <ringfill/heat/heat_log.hpp>

#include <algorithm>
#include <utility>

namespace ringfill {

Temperature HeatLog::mean() const {
    return in_si<Temperature>(mean_boss(walk_.mesh(), walk_.field()));
}

void HeatLog::note() {
    for (const auto& [seconds, kelvin] : std::exchange(trace_, {}))
        if (seconds < walk_.seconds())
            run_.curve.push_back({in_si<Time>(seconds), in_si<Temperature>(kelvin)});
    run_.curve.push_back({in_si<Time>(walk_.seconds()), mean()});
    run_.peak = std::max(run_.peak, mean());
}

HeatStep HeatLog::here(HeatStage stage) const {
    HeatStep step;
    step.stage = stage;
    step.pass = pass_;
    step.layer = layer_;
    step.after_ring = ring_;
    step.in_stitches = in_stitches_;
    return step;
}

void HeatLog::add(HeatStage stage, double began, Temperature from) {
    HeatStep step;
    step.stage = stage;
    step.time = in_si<Time>(walk_.seconds() - began);
    step.from = from;
    step.to = mean();
    run_.steps.push_back(std::move(step));
    note();
}

void HeatLog::add_cooling(HeatStage stage, const std::optional<Time>& time, Temperature from,
                          Temperature to) {
    if (!time || !(*time > Time()))
        return;
    HeatStep step;
    step.stage = stage;
    step.time = *time;
    step.from = from;
    step.to = to;
    run_.steps.push_back(std::move(step));
}

void HeatLog::begin_layer(const RingPass& pass) {
    next_pass_ = pass.pass;
    next_layer_ = pass.layer;
    in_stitches_ = pass.stitches_a_ring > 1;
    rings_in_layer_ = 0;
    pauses_.clear();
}

void HeatLog::end_layer() {
    end_welding(walk_.seconds(), mean());
    tell_dwells();
}

void HeatLog::add_pause(const RingPause& pause, double began, Temperature from) {
    const bool between_layers = rings_in_layer_ == 0;
    const bool is_rest = pause.is_rest();
    const Time least = in_si<Time>(pause.least);
    const Time dwell = is_rest ? least : least + in_si<Time>(pause.waited);
    run_.pausing += dwell;
    if (between_layers && dwell > Time()) {
        HeatStep clean = here(has_begun() ? HeatStage::clean : HeatStage::make_ready);
        clean.time = clean.told = dwell;
        clean.from = from;
        clean.to = pause.parts.empty() ? mean() : in_si<Temperature>(pause.parts.front().from);
        run_.steps.push_back(std::move(clean));
        run_.told_pausing += dwell;
    } else if (!between_layers) {
        pauses_.push_back({is_rest ? std::nullopt : std::optional(dwell), least});
    }
    bool has_reheat = false;
    for (const BetweenRings& part : pause.parts) {
        if (!part.is_reheat && !is_rest)
            continue;
        end_welding(began + dwell.value(), in_si<Temperature>(part.from));
        HeatStep step = here(part.is_reheat ? HeatStage::reheat : HeatStage::rest);
        step.time = in_si<Time>(part.seconds);
        step.from = in_si<Temperature>(part.from);
        step.to = in_si<Temperature>(part.to);
        (part.is_reheat ? run_.reheating : run_.resting) += step.time;
        run_.steps.push_back(std::move(step));
        has_reheat = has_reheat || part.is_reheat;
    }
    run_.rests += is_rest;
    run_.reheats += has_reheat;
    note();
}

void HeatLog::add_ring(double began) {
    const Time arc = in_si<Time>(walk_.seconds() - began);
    if (!std::exchange(is_welding_, true)) {
        welding_began_ = began;
        welding_from_ = run_.curve.back().temperature;
        arc_ = Time();
    }
    pass_ = next_pass_;
    layer_ = next_layer_;
    ring_ = ++rings_in_layer_;
    arc_ += arc;
    run_.welding += arc;
    run_.arcs.emplace_back(in_si<Time>(began), in_si<Time>(walk_.seconds()));
    run_.ring_peak = std::max(run_.ring_peak, mean());
    note();
}

void HeatLog::end_welding(double at, Temperature to) {
    if (!std::exchange(is_welding_, false))
        return;
    HeatStep step = here(HeatStage::weld);
    step.time = in_si<Time>(at - welding_began_);
    step.from = welding_from_;
    step.to = to;
    step.arc = arc_;
    run_.steps.push_back(std::move(step));
}

/// What is told of a stretch, without the rings at its ends after which there is a rest.
ToldDwell HeatLog::told_dwell_of(DwellStretch stretch, const std::vector<std::optional<Time>>& own) const {
    while (!own[stretch.first])
        ++stretch.first;
    while (!own[stretch.last])
        --stretch.last;
    return {
        pass_,           layer_,      static_cast<int>(stretch.first + 1), static_cast<int>(stretch.last + 1),
        stretch.longest, stretch.told};
}

/// The pauses of the layer as one dwell a stretch, and what each step of welding waits by them.
void HeatLog::tell_dwells() {
    std::vector<std::optional<Time>> own;
    for (const Pause& pause : pauses_)
        own.push_back(pause.dwell);
    std::vector<Time> told;
    for (const Pause& pause : pauses_)
        told.push_back(pause.least);
    for (const DwellStretch& stretch : dwell_stretches(own, step_over_)) {
        for (std::size_t i = stretch.first; i <= stretch.last; ++i)
            if (own[i])
                told[i] = stretch.told;
        if (stretch.told > step_over_)
            run_.dwells.push_back(told_dwell_of(stretch, own));
    }
    std::size_t from = 0;
    for (HeatStep& step : run_.steps)
        if (step.stage == HeatStage::weld && step.pass == pass_ && step.layer == layer_)
            for (; from < std::min(told.size(), static_cast<std::size_t>(step.after_ring)); ++from) {
                step.told += told[from];
                run_.told_pausing += told[from];
            }
}

} // namespace ringfill
