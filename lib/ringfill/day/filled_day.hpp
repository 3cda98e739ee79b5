#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include <ringfill/day/schedule.hpp>

namespace ringfill {

/// Steps from one on that nobody leaves before they are done: all between the first flame and the last, or a
/// single step.
struct Piece {
    std::size_t count = 0;
    Time length = {};
    bool has_fire = false;
    bool can_be_cut = false;
};
Piece piece_from(const std::vector<WorkStep>& steps, std::size_t first);

/// A schedule as it is filled in, one step after the other.
class FilledDay {
  public:
    explicit FilledDay(const Calendar& calendar) : calendar_(calendar) {}

    Time now() const { return day_.ends; }
    Schedule& schedule() { return day_; }

    /// When steps can be gone on with from one of them on, no sooner than `earliest`: where all of them end
    /// with the day, or their first piece does, or is cut in the evening; else in the next morning.
    /// @param lead comes right before them.
    Time begin_of(const std::vector<WorkStep>& steps, std::size_t first, Time earliest, Time lead = {}) const;

    /// Does a step, wherever it ends.
    void put(const std::string& bore, const WorkStep& step);

    /// Likewise, with the break before it where its time has come.
    void put_after_break(const std::string& bore, const WorkStep& step);

    /// Waits until the next piece of some steps can begin, has the break where it comes before it, and says
    /// how much of it is done today: all, or what the evening leaves of a step that can be cut.
    Time make_way(const std::string& bore, const std::vector<WorkStep>& steps, std::size_t first);

    /// The break before a step inside a fire, where it is neither before nor after the whole of it.
    void break_in_fire(const std::string& bore, const WorkStep& step);

    /// Waits until a time; what lies after the working day is night. A wait that goes on to a morning is idle
    /// until then. A break that falls into a wait on site lies in it, and may outlast it.
    void wait_until(Time until, const std::string& bore, Step wait);

  private:
    /// None: it is not due, or comes after.
    enum class BreakPlace { none, before, inside };

    bool is_break_due(Time at) const;
    bool is_break_before(Time at, Time length) const;
    BreakPlace break_place(Time at, Time length, const Piece& piece) const;
    void have_break(const std::string& bore);
    void wait_on_site(Time until, const std::string& bore, Step wait);
    void add_wait(Time until, const std::string& bore, Step wait, Phase phase, bool night = false);

    const Calendar& calendar_;
    Schedule day_ = {};
    int last_break_ = -1;       ///< on this day
    bool break_inside_ = false; ///< the fire that goes on
};

} // namespace ringfill
