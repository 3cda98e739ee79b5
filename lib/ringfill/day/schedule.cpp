#include <ringfill/day/schedule.hpp>

#include <algorithm>
#include <deque>

namespace ringfill {
namespace {

/// One bore's work that is left, and when it may go on.
struct Left {
    std::string bore;
    std::deque<WorkBlock> blocks;
    Time ready = {};
    std::string rest_name = {};
};

/// The day as it is filled in.
class Filling {
  public:
    Filling(const Calendar& calendar, Time change_over) : calendar_(calendar), change_over_(change_over) {}

    Schedule done() {
        schedule_.ends = now_;
        return std::move(schedule_);
    }

    /// Work on the whole job or the line.
    void run(const WorkBlock& block) {
        go_to(begin_at(calendar_, now_, block.length()), {}, "wait for the morning");
        run_over(block);
    }

    /// Work that nobody stays the night for: it ends the day, late if need be.
    void run_over(const WorkBlock& block) {
        for (const WorkStep& step : block.steps)
            put({}, step);
    }

    void run_line(std::vector<Left>& line, Turns turns) {
        last_ = nullptr;
        while (Left* next = turns == Turns::one_by_one ? first_left(line) : soonest(line)) {
            begin(*next);
            WorkBlock block = std::move(next->blocks.front());
            next->blocks.pop_front();
            schedule_.runs_over = schedule_.runs_over || block.length() > calendar_.working_day;
            for (const WorkStep& step : block.steps)
                if (step.waits && block.hot && turns == Turns::alternating)
                    wait_and_fill(*next, step, line);
                else
                    put(next->bore, step);
            next->ready = now_ + block.rest;
            next->rest_name = block.rest_name;
        }
    }

  private:
    static Left* first_left(std::vector<Left>& line) {
        const auto found =
            std::find_if(line.begin(), line.end(), [](const Left& one) { return !one.blocks.empty(); });
        return found == line.end() ? nullptr : &*found;
    }

    Time change_to(const Left& bore) const { return last_ && last_ != &bore ? change_over_ / 2.0 : Time(); }

    Time begins(const Left& bore) const {
        return begin_at(calendar_, std::max(now_, bore.ready),
                        bore.blocks.front().length() + change_to(bore));
    }

    /// The bore whose next block can begin first; of several a hot one, so that it cools early, then the one
    /// that the bar stands in.
    Left* soonest(std::vector<Left>& line) const {
        Left* best = nullptr;
        for (Left& one : line) {
            if (one.blocks.empty())
                continue;
            if (!best || begins(one) < begins(*best) ||
                (begins(one) == begins(*best) && one.blocks.front().hot && !best->blocks.front().hot))
                best = &one;
        }
        return best;
    }

    void begin(Left& bore) {
        const Time change = change_to(bore);
        go_to(begins(bore), bore.bore, bore.rest_name.empty() ? "wait for the morning" : bore.rest_name);
        if (change > Time())
            put(bore.bore, {"change over", change});
        last_ = &bore;
    }

    void put(const std::string& bore, const WorkStep& step) {
        if (!(step.length > Time()))
            return;
        schedule_.entries.push_back({now_, now_ + step.length, bore, step.name, step.waits, false,
                                     step.arc_time, step.welding, step.fire,
                                     step.waits ? Phase::waiting : step.phase});
        now_ += step.length;
    }

    /// Waits until a time; what lies after the working day is night.
    void go_to(Time until, const std::string& bore, const std::string& why) {
        while (now_ < until) {
            const bool in_night = now_ >= working_end(calendar_, now_) && until >= next_morning(now_);
            const bool till_night = until >= next_morning(now_) && !in_night;
            const Time end = in_night     ? next_morning(now_)
                             : till_night ? working_end(calendar_, now_)
                                          : until;
            schedule_.entries.push_back({now_, end, bore, why, true, in_night, {}, false});
            now_ = end;
        }
    }

    /// A wait inside a hot block, filled with hand work on other bores as far as whole steps fit.
    void wait_and_fill(const Left& waiting, const WorkStep& wait, std::vector<Left>& line) {
        const Time ends = now_ + wait.length;
        Left* filled = nullptr;
        for (Left& other : line) {
            if (&other == &waiting || other.blocks.empty() || other.ready > now_)
                continue;
            auto& steps = other.blocks.front().steps;
            while (fills(other.blocks.front()) &&
                   now_ + (filled == &other ? Time() : change_over_ / 2.0) + steps.front().length <=
                       ends - change_over_ / 2.0) {
                if (filled != &other)
                    put(other.bore, {"change over", change_over_ / 2.0});
                filled = &other;
                put(other.bore, steps.front());
                steps.erase(steps.begin());
            }
        }
        if (filled)
            put(waiting.bore, {"change over", change_over_ / 2.0});
        put(waiting.bore, {wait.name, ends - now_, true, false, {}, wait.welding, wait.fire});
    }

    /// Whether the next step of a block is hand work that may be done while the bar is elsewhere. Its last
    /// step stays, so that a block never vanishes.
    static bool fills(const WorkBlock& block) {
        return !block.hot && block.steps.size() > 1 && !block.steps.front().uses_bar &&
               !block.steps.front().waits;
    }

    const Calendar& calendar_;
    Time change_over_;
    Schedule schedule_;
    Time now_ = {};
    const Left* last_ = nullptr;
};

Schedule filled(const WorkBlock& arrive, const std::vector<LineWork>& lines, const WorkBlock& leave,
                const Calendar& calendar, Time change_over, Turns turns) {
    Filling filling(calendar, change_over);
    filling.run(arrive);
    for (const LineWork& line : lines) {
        filling.run(line.set_up);
        std::vector<Left> left;
        for (const BoreWork& bore : line.bores)
            left.push_back({bore.bore, {bore.blocks.begin(), bore.blocks.end()}});
        filling.run_line(left, turns);
        filling.run_over(line.strip);
    }
    filling.run_over(leave);
    return filling.done();
}

} // namespace

Time WorkBlock::length() const {
    Time sum = {};
    for (const WorkStep& step : steps)
        sum += step.length;
    return sum;
}

Schedule lay_out(const WorkBlock& arrive, const std::vector<LineWork>& lines, const WorkBlock& leave,
                 const Calendar& calendar, Time change_over, Turns turns) {
    Schedule one_by_one = filled(arrive, lines, leave, calendar, change_over, Turns::one_by_one);
    if (turns == Turns::one_by_one)
        return one_by_one;
    Schedule alternating = filled(arrive, lines, leave, calendar, change_over, Turns::alternating);
    // Taking turns greedily can cost more changes than it saves; then nobody would do it.
    return alternating.ends < one_by_one.ends ? alternating : one_by_one;
}

} // namespace ringfill
