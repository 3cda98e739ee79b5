#include <ringfill/day/filled_day.hpp>

#include <algorithm>

namespace ringfill {
namespace {

/// Nobody begins in the evening what is left after less [common practice, no source].
const Time least_part = in_si<Time>(15 * 60);

/// A break lies no further from the middle of the day than this where it is had in a wait [own choice].
const Time near_middle = in_si<Time>(3'600);

/// The share of the working day that a break before or after a fire may lie off its middle [own choice].
constexpr double far_from_middle = 0.25;

Time length_from(const std::vector<WorkStep>& steps, std::size_t first) {
    Time length;
    for (std::size_t i = first; i < steps.size(); ++i)
        length += steps[i].length;
    return length;
}

} // namespace

Piece piece_from(const std::vector<WorkStep>& steps, std::size_t first) {
    const Step& step = steps[first].step;
    const bool stays_hot = step.has_fire && !step.can_be_cut;
    Piece piece{1, steps[first].length, stays_hot, step.can_be_cut};
    Time length = piece.length;
    for (std::size_t i = first + 1; stays_hot && i < steps.size() && !steps[i].step.can_be_cut; ++i) {
        length += steps[i].length;
        if (steps[i].step.has_fire)
            piece = {i + 1 - first, length, true, false};
    }
    return piece;
}

Time FilledDay::begin_of(const std::vector<WorkStep>& steps, std::size_t first, Time earliest,
                         Time lead) const {
    if (first == steps.size() || is_morning(earliest))
        return earliest;
    const Piece piece = piece_from(steps, first);
    const auto with_break = [&](Time length) {
        return break_place(earliest, length, piece) == BreakPlace::none ? length : length + calendar_.breaks;
    };
    const Time evening = working_end(calendar_, earliest);
    const Time all = with_break(lead + length_from(steps, first));
    const Time next = with_break(lead + piece.length);
    const bool begins_today = ends_with_the_day(calendar_, earliest, earliest + all) ||
                              earliest + next <= evening ||
                              (piece.can_be_cut && earliest + next - piece.length + least_part <= evening);
    return begins_today ? earliest : next_morning(earliest);
}

void FilledDay::put(const std::string& bore, const WorkStep& step) {
    if (!(step.length > Time()))
        return;
    const Time from = day_.ends;
    day_.ends += step.length;
    day_.entries.push_back({from, day_.ends, bore, step.step, step.on, step.arc_time});
}

void FilledDay::put_after_break(const std::string& bore, const WorkStep& step) {
    if (is_break_due(now()) && is_break_before(now(), step.length))
        have_break({});
    put(bore, step);
}

Time FilledDay::make_way(const std::string& bore, const std::vector<WorkStep>& steps, std::size_t first) {
    const Piece piece = piece_from(steps, first);
    for (Time at = begin_of(steps, first, now()); at > now(); at = begin_of(steps, first, now()))
        wait_until(at, bore, steps::wait_for_morning);
    const BreakPlace place = break_place(now(), piece.length, piece);
    break_inside_ = place == BreakPlace::inside;
    if (place == BreakPlace::before)
        have_break({});
    if (place == BreakPlace::inside && piece.can_be_cut)
        return middle_of_day(calendar_, now()) - now();
    const Time evening = working_end(calendar_, now());
    const bool fits = now() + piece.length <= evening ||
                      ends_with_the_day(calendar_, now(), now() + length_from(steps, first));
    return fits || !piece.can_be_cut ? piece.length : evening - now();
}

void FilledDay::break_in_fire(const std::string& bore, const WorkStep& step) {
    if (break_inside_ && is_break_due(now()) && is_break_before(now(), step.length)) {
        day_.breaks_in_fire.push_back({day_of(now()), bore});
        have_break(bore);
    }
}

void FilledDay::wait_until(Time until, const std::string& bore, Step wait) {
    while (now() < until) {
        const Time evening = working_end(calendar_, now());
        const Time morning = next_morning(now());
        const bool overnight = evening < morning && until >= morning;
        if (!overnight)
            wait_on_site(std::min(until, morning), bore, wait);
        else if (now() >= evening)
            add_wait(morning, bore, wait, Phase::idle, true);
        else
            add_wait(evening, bore, wait, Phase::idle);
    }
}

bool FilledDay::is_break_due(Time at) const {
    return calendar_.breaks > Time() && last_break_ != day_of(at) && at < working_end(calendar_, at);
}

/// Whether the middle of the day lies nearer to the begin of a step than to its end, or is over; nobody
/// begins the day with a break.
bool FilledDay::is_break_before(Time at, Time length) const {
    const Time middle = middle_of_day(calendar_, at);
    return !is_morning(at) && (at >= middle || (at + length > middle && middle - at <= at + length - middle));
}

/// A step that can be cut is left for it where both its ends lie far off the middle of the day; a fire has it
/// inside only where they lie farther still.
FilledDay::BreakPlace FilledDay::break_place(Time at, Time length, const Piece& piece) const {
    const Time middle = middle_of_day(calendar_, at);
    if (!is_break_due(at) || at + length <= middle)
        return BreakPlace::none;
    const Time off = piece.has_fire ? far_from_middle * calendar_.working_day : near_middle;
    const bool too_soon = is_morning(at) || middle - at > off;
    const bool too_late = at + length - middle > off;
    if (!piece.has_fire && !piece.can_be_cut)
        return is_break_before(at, length) ? BreakPlace::before : BreakPlace::none;
    if (too_soon && too_late)
        return BreakPlace::inside;
    const bool before = too_soon || too_late ? !too_soon : is_break_before(at, length);
    return before ? BreakPlace::before : BreakPlace::none;
}

void FilledDay::have_break(const std::string& bore) {
    last_break_ = day_of(now());
    put(bore, {steps::pause, calendar_.breaks});
}

void FilledDay::wait_on_site(Time until, const std::string& bore, Step wait) {
    const Time middle = middle_of_day(calendar_, now());
    const Time half = calendar_.breaks / 2.0;
    const Time last = std::max(now(), until - calendar_.breaks);
    const Time at = std::clamp(middle - half, now(), last);
    const bool is_near = at + half >= middle - near_middle && at + half <= middle + near_middle;
    if (is_break_due(now()) && (now() >= middle || is_near)) {
        add_wait(at, bore, wait, wait.phase);
        have_break({});
    }
    add_wait(until, bore, wait, wait.phase);
}

void FilledDay::add_wait(Time until, const std::string& bore, Step wait, Phase phase, bool night) {
    if (!(until > now()))
        return;
    const Time from = now();
    day_.ends = until;
    day_.entries.push_back(
        {.from = from, .to = until, .bore = bore, .step = wait, .night = night, .phase = phase});
}

} // namespace ringfill
