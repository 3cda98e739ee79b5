#include "in_order.hpp"

#include <algorithm>
#include <condition_variable>
#include <cstdint>
#include <exception>
#include <map>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

namespace ringfill::cli {
namespace {

constexpr std::uint64_t lines_ahead = 4; // for each worker: a slow line must not stop the others at once

class Flight {
  public:
    Flight(const LineWork& work, unsigned workers) : work_(work), most_ahead_(lines_ahead * workers) {}

    /// What each worker does until there is nothing left.
    void fly() {
        try {
            std::uint64_t turn = 0;
            while (auto line = take(turn))
                put(turn, work_.answer(std::move(*line)));
        } catch (...) {
            const std::lock_guard hold(putting_);
            if (!thrown_)
                thrown_ = std::current_exception();
            stop_ = true;
            wanted_ = false; // nothing is put behind what could not be
            room_.notify_all();
        }
    }

    void throw_again() const {
        if (thrown_)
            std::rethrow_exception(thrown_);
    }

  private:
    std::optional<Line> take(std::uint64_t& turn) {
        const std::lock_guard one(taking_);
        {
            std::unique_lock hold(putting_);
            room_.wait(hold, [&] { return stop_ || taken_ - next_put_ < most_ahead_; });
            if (stop_)
                return std::nullopt;
        }
        std::optional<Line> line = work_.next(); // may wait for long; answers go out meanwhile
        const std::lock_guard hold(putting_);
        if (line)
            turn = taken_++;
        else
            stop_ = true;
        return line;
    }

    void put(std::uint64_t turn, LineAnswer answer) {
        const std::lock_guard hold(putting_);
        waiting_.emplace(turn, std::move(answer));
        for (auto first = waiting_.begin(); first != waiting_.end() && first->first == next_put_;
             first = waiting_.begin()) {
            LineAnswer ready = std::move(first->second);
            waiting_.erase(first);
            ++next_put_;
            if (wanted_) {
                wanted_ = false; // should it throw
                wanted_ = work_.put(std::move(ready));
                stop_ = stop_ || !wanted_;
            }
        }
        room_.notify_all();
    }

    const LineWork& work_;
    std::uint64_t most_ahead_;
    std::mutex taking_;  // held while a line is taken
    std::mutex putting_; // holds all that follows
    std::condition_variable room_;
    std::map<std::uint64_t, LineAnswer> waiting_;
    std::uint64_t taken_ = 0;
    std::uint64_t next_put_ = 0;
    bool stop_ = false;
    bool wanted_ = true;
    std::exception_ptr thrown_;
};

} // namespace

void answer_in_order(const LineWork& work, unsigned workers) {
    Flight flight(work, workers);
    std::vector<std::thread> others;
    try {
        for (unsigned i = 1; i < workers; ++i)
            others.emplace_back([&flight] { flight.fly(); });
    } catch (const std::system_error&) {
        // the system gives no more threads: those there are do it
    }
    flight.fly();
    for (std::thread& other : others)
        other.join();
    flight.throw_again();
}

} // namespace ringfill::cli
