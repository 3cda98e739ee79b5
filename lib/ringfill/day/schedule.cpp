#include <ringfill/day/schedule.hpp>

#include <algorithm>

#include <range/v3/numeric/accumulate.hpp>

namespace ringfill {
namespace {

/// One bore's work that is left, and when it may go on.
struct Left : BoreWork {
    Time ready = {};
    Step resting = steps::wait_for_morning;
};

/// The day as it is filled in.
class Filling {
  public:
    Filling(const Calendar& calendar, Time change_over, Turns turns)
        : calendar_(calendar), half_change_(change_over / 2.0), turns_(turns) {}

    Schedule filled(const JobWork& work) {
        put({}, work.arrive);
        for (const LineWork& line : work.lines)
            run_line(line);
        put({}, work.leave);
        return std::move(day_);
    }

  private:
    /// Nobody stays the night for taking the bar off: it ends the day, late if need be.
    void run_line(const LineWork& line) {
        go_to(begin_at(calendar_, day_.ends, line.set_up.length()), {}, steps::wait_for_morning);
        for (const WorkStep& step : line.set_up.steps)
            put({}, step);
        std::vector<Left> left;
        for (const BoreWork& bore : line.bores)
            left.push_back({bore});
        last_ = nullptr;
        while (Left* next = next_of(left))
            run_block(*next, left);
        put({}, line.strip);
    }

    void run_block(Left& bore, std::vector<Left>& line) {
        const Time change = change_to(bore);
        go_to(begins(bore), bore.bore, bore.resting);
        put(bore.bore, {steps::change_over, change});
        last_ = &bore;
        const WorkBlock block = std::move(bore.blocks.front());
        bore.blocks.erase(bore.blocks.begin());
        if (block.length() > calendar_.working_day)
            day_.long_bore =
                bore.preheated ? LongBore::with_preheat : std::max(day_.long_bore, LongBore::without_preheat);
        for (const WorkStep& step : block.steps)
            if (step.step == steps::wait_too_hot && turns_ == Turns::alternating)
                wait_and_fill(bore, step, line);
            else
                put(bore.bore, step);
        bore.ready = day_.ends + block.rest;
        bore.resting = block.resting;
    }

    Time change_to(const Left& bore) const { return last_ && last_ != &bore ? half_change_ : Time(); }

    Time begins(const Left& bore) const {
        return begin_at(calendar_, std::max(day_.ends, bore.ready),
                        bore.blocks.front().length() + change_to(bore));
    }

    /// The first bore with work left; where they take turns the one whose next block can begin first, of
    /// several a hot one, for it to cool early.
    Left* next_of(std::vector<Left>& line) const {
        Left* best = nullptr;
        for (Left& bore : line)
            if (!bore.blocks.empty() && (!best || (turns_ == Turns::alternating && is_sooner(bore, *best))))
                best = &bore;
        return best;
    }

    bool is_sooner(const Left& bore, const Left& other) const {
        return begins(bore) < begins(other) ||
               (begins(bore) == begins(other) && bore.blocks.front().hot && !other.blocks.front().hot);
    }

    void put(const std::string& bore, const WorkStep& step) {
        if (!(step.length > Time()))
            return;
        const Time from = day_.ends;
        day_.ends += step.length;
        day_.entries.push_back({from, day_.ends, bore, step.step, step.on, step.arc_time});
    }

    /// Waits until a time; what lies after the working day is night. A wait that goes on to a morning is idle
    /// until then.
    void go_to(Time until, const std::string& bore, Step wait) {
        while (day_.ends < until) {
            const Time from = day_.ends;
            const Time evening = working_end(calendar_, from);
            const Time morning = next_morning(from);
            const bool overnight = evening < morning && until >= morning;
            const bool night = overnight && from >= evening;
            day_.ends = until < morning ? until : night ? morning : evening;
            day_.entries.push_back({.from = from,
                                    .to = day_.ends,
                                    .bore = bore,
                                    .step = wait,
                                    .night = night,
                                    .phase = overnight ? Phase::idle : wait.phase});
        }
    }

    /// A wait inside a hot block, filled with hand work on other bores as far as whole steps fit.
    void wait_and_fill(const Left& waiting, WorkStep wait, std::vector<Left>& line) {
        const Time ends = day_.ends + wait.length;
        const WorkStep change{steps::change_over, half_change_};
        Left* filled = nullptr;
        for (Left& other : line) {
            if (&other == &waiting || other.blocks.empty() || other.ready > day_.ends)
                continue;
            auto& steps = other.blocks.front().steps;
            while (fills(other.blocks.front()) &&
                   day_.ends + (filled == &other ? Time() : half_change_) + steps.front().length <=
                       ends - half_change_) {
                if (filled != &other)
                    put(other.bore, change);
                filled = &other;
                put(other.bore, steps.front());
                steps.erase(steps.begin());
            }
        }
        if (filled)
            put(waiting.bore, change);
        wait.length = ends - day_.ends;
        put(waiting.bore, wait);
    }

    /// Whether the next step of a block is hand work that may be done while the bar is elsewhere. Its last
    /// step stays, for a block never to vanish.
    static bool fills(const WorkBlock& block) {
        return !block.hot && block.steps.size() > 1 && !block.steps.front().step.uses_bar;
    }

    const Calendar& calendar_;
    Time half_change_;
    Turns turns_;
    Schedule day_;
    const Left* last_ = nullptr;
};

} // namespace

Time WorkBlock::length() const {
    return ranges::accumulate(steps, Time(), std::plus<>(), &WorkStep::length);
}

std::vector<Time> stretches_of(const Schedule& schedule, bool (*wanted)(Phase)) {
    std::vector<Time> times;
    for (const DayEntry& entry : schedule.entries)
        if (!entry.night && wanted(entry.phase))
            times.push_back(entry.to - entry.from);
    return times;
}

std::string words_of(const DayEntry& entry) {
    return std::string(entry.step.words) + (entry.on.empty() ? "" : " ") + entry.on;
}

Schedule lay_out(const JobWork& work, const Calendar& calendar, Time change_over, Turns turns) {
    const Schedule day = Filling(calendar, change_over, turns).filled(work);
    if (turns == Turns::one_by_one)
        return day;
    // Taking turns greedily can cost more changes than it saves; then nobody would do it.
    const Schedule one_by_one = lay_out(work, calendar, change_over, Turns::one_by_one);
    return day.ends < one_by_one.ends ? day : one_by_one;
}

} // namespace ringfill
