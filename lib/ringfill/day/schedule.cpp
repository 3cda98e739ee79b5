#include <ringfill/day/schedule.hpp>

#include <algorithm>

#include <ringfill/day/filled_day.hpp>

namespace ringfill {
namespace {

/// One bore's work that is left, and when it may go on.
struct Left : BoreWork {
    Time ready = {};
    Step resting = steps::wait_for_morning;
};

/// The work of the lines as it goes into the day.
class Filling {
  public:
    Filling(const Calendar& calendar, Time change_over, Turns turns)
        : calendar_(calendar), half_change_(change_over / 2.0), turns_(turns), day_(calendar) {}

    Schedule filled(const JobWork& work) {
        day_.put({}, work.arrive);
        for (const LineWork& line : work.lines)
            run_line(line);
        day_.put_after_break({}, work.leave);
        return std::move(day_.schedule());
    }

  private:
    /// Nobody stays the night for taking the bar off: it ends the day, late if need be.
    void run_line(const LineWork& line) {
        std::vector<Left> left;
        for (const BoreWork& bore : line.bores)
            left.push_back({bore});
        run_steps({}, line.set_up.steps, left);
        last_ = nullptr;
        while (Left* next = next_of(left))
            run_block(*next, left);
        day_.put_after_break({}, line.strip);
    }

    void run_block(Left& bore, std::vector<Left>& line) {
        const Time change = change_to(bore);
        for (Time at = begins(bore); at > day_.now(); at = begins(bore))
            day_.wait_until(at, bore.bore, bore.resting);
        day_.put_after_break(bore.bore, {steps::change_over, change});
        last_ = &bore;
        WorkBlock block = std::move(bore.blocks.front());
        bore.blocks.erase(bore.blocks.begin());
        if (longest_fire(block.steps) > calendar_.working_day) {
            LongBore& long_bore = day_.schedule().long_bore;
            long_bore =
                bore.preheated ? LongBore::with_preheat : std::max(long_bore, LongBore::without_preheat);
        }
        run_steps(bore.bore, std::move(block.steps), line, &bore);
        bore.ready = day_.now() + block.rest;
        bore.resting = block.resting;
    }

    /// Does steps, each piece of them when it can begin. @param waiting the bore that they are of, for its
    /// waits to be filled with work on the others of the line.
    void run_steps(const std::string& bore, std::vector<WorkStep> steps, std::vector<Left>& line,
                   const Left* waiting = nullptr) {
        std::erase_if(steps, takes_no_time);
        for (std::size_t i = 0; i < steps.size();) {
            const Time part = day_.make_way(bore, steps, i);
            const Piece piece = piece_from(steps, i);
            if (part < piece.length) {
                WorkStep begun = steps[i];
                begun.length = part;
                begun.arc_time = (part / steps[i].length).value() * steps[i].arc_time;
                steps[i].length -= part;
                steps[i].arc_time -= begun.arc_time;
                day_.put(bore, begun);
                continue;
            }
            for (const std::size_t end = i + piece.count; i < end; ++i) {
                if (piece.has_fire)
                    day_.break_in_fire(bore, steps[i]);
                if (waiting && steps[i].step == steps::wait_too_hot && turns_ == Turns::alternating)
                    wait_and_fill(*waiting, steps[i], line);
                else
                    day_.put(bore, steps[i]);
            }
        }
    }

    static bool takes_no_time(const WorkStep& step) { return !(step.length > Time()); }

    static Time longest_fire(const std::vector<WorkStep>& steps) {
        for (std::size_t i = 0; i < steps.size(); ++i)
            if (const Piece piece = piece_from(steps, i); piece.has_fire)
                return piece.length;
        return {};
    }

    Time change_to(const Left& bore) const { return last_ && last_ != &bore ? half_change_ : Time(); }

    Time begins(const Left& bore) const {
        return day_.begin_of(bore.blocks.front().steps, 0, std::max(day_.now(), bore.ready), change_to(bore));
    }

    /// When its fire can be lit so that it burns to its end, less what comes before it; without one when it
    /// begins.
    Time goes(const Left& bore) const {
        const std::vector<WorkStep>& steps = bore.blocks.front().steps;
        Time lead = change_to(bore);
        std::size_t fire = 0;
        for (; fire < steps.size() && !steps[fire].step.has_fire; ++fire)
            lead += steps[fire].length;
        if (fire == steps.size())
            return begins(bore);
        return day_.begin_of(steps, fire, std::max(day_.now(), bore.ready), lead);
    }

    /// The first bore with work left; where they take turns the one whose next block can go first, of several
    /// a hot one, for it to cool early.
    Left* next_of(std::vector<Left>& line) const {
        Left* best = nullptr;
        for (Left& bore : line)
            if (!bore.blocks.empty() && (!best || (turns_ == Turns::alternating && is_sooner(bore, *best))))
                best = &bore;
        return best;
    }

    bool is_sooner(const Left& bore, const Left& other) const {
        return goes(bore) < goes(other) ||
               (goes(bore) == goes(other) && bore.blocks.front().hot && !other.blocks.front().hot);
    }

    /// A wait inside a hot block, filled with hand work on other bores as far as whole steps fit.
    void wait_and_fill(const Left& waiting, WorkStep wait, std::vector<Left>& line) {
        const Time ends = day_.now() + wait.length;
        const WorkStep change{steps::change_over, half_change_};
        Left* filled = nullptr;
        for (Left& other : line) {
            if (&other == &waiting || other.blocks.empty() || other.ready > day_.now())
                continue;
            auto& steps = other.blocks.front().steps;
            while (fills(other.blocks.front()) &&
                   day_.now() + (filled == &other ? Time() : half_change_) + steps.front().length <=
                       ends - half_change_) {
                if (filled != &other)
                    day_.put(other.bore, change);
                filled = &other;
                day_.put(other.bore, steps.front());
                steps.erase(steps.begin());
            }
        }
        if (filled)
            day_.put(waiting.bore, change);
        wait.length = ends - day_.now();
        day_.put(waiting.bore, wait);
    }

    /// Whether the next step of a block is hand work that may be done while the bar is elsewhere. Its last
    /// step stays, for a block never to vanish.
    static bool fills(const WorkBlock& block) {
        return !block.hot && block.steps.size() > 1 && !block.steps.front().step.uses_bar;
    }

    const Calendar& calendar_;
    Time half_change_;
    Turns turns_;
    FilledDay day_;
    const Left* last_ = nullptr;
};

} // namespace

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
