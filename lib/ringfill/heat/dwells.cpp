#include <ringfill/heat/dwells.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace ringfill {
namespace {

constexpr double rounded_up_to_s = 5;
/// Costs within this are equal [s].
constexpr double same_cost_s = 1e-6;

using Pauses = std::vector<std::optional<Time>>;

/// What a run of pauses costs that grows at its end.
class GrowingRun {
  public:
    explicit GrowingRun(Time step_over) : longest_(step_over), step_over_(step_over) {}

    void add(const std::optional<Time>& pause) {
        if (!pause)
            return;
        longest_ = std::max(longest_, *pause);
        own_ += *pause;
        ++count_;
    }
    Time told() const { return told_dwell(longest_, step_over_); }
    Time longest() const { return longest_; }
    double cost() const { return (count_ * told() - own_).value(); }

  private:
    Time longest_;
    Time step_over_;
    Time own_;
    double count_ = 0;
};

} // namespace

Time told_dwell(Time longest, Time step_over) {
    // A pause of the step-over is none that is set.
    if (longest.value() <= step_over.value() + same_cost_s)
        return step_over;
    return in_si<Time>(rounded_up_to_s * std::ceil(longest.value() / rounded_up_to_s - same_cost_s));
}

std::vector<DwellStretch> dwell_stretches(const Pauses& pauses, Time step_over) {
    const std::size_t count = pauses.size();
    if (count == 0)
        return {};
    // Least cost of the first `end` pauses in 0, 1, 2 or 3 runs, and where the last run begins.
    struct Best {
        double cost = std::numeric_limits<double>::infinity();
        std::size_t begin = 0;
    };
    std::vector<std::vector<Best>> best(most_stretches + 1, std::vector<Best>(count + 1));
    best[0][0].cost = 0;
    for (std::size_t begin = 0; begin < count; ++begin) {
        GrowingRun run(step_over);
        for (std::size_t end = begin + 1; end <= count; ++end) {
            run.add(pauses[end - 1]);
            for (std::size_t runs = 1; runs <= most_stretches; ++runs)
                if (const double cost = best[runs - 1][begin].cost + run.cost();
                    cost < best[runs][end].cost - same_cost_s)
                    best[runs][end] = {cost, begin};
        }
    }
    std::size_t runs = 1;
    for (std::size_t more = 2; more <= most_stretches; ++more)
        if (best[more][count].cost < best[runs][count].cost - same_cost_s)
            runs = more;
    std::vector<DwellStretch> stretches;
    for (std::size_t end = count; runs > 0; --runs) {
        const std::size_t begin = best[runs][end].begin;
        GrowingRun run(step_over);
        for (std::size_t i = begin; i < end; ++i)
            run.add(pauses[i]);
        stretches.insert(stretches.begin(), {begin, end - 1, run.longest(), run.told()});
        end = begin;
    }
    return stretches;
}

} // namespace ringfill
