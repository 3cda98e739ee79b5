// Prints the benchmarks of each test case as ratios to its first one, in one run: a time alone says more
// about the machine than about the program.
#define CATCH_CONFIG_MAIN
#define CATCH_CONFIG_ENABLE_BENCHMARKING
#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

namespace {

class RatioListener : public Catch::TestEventListenerBase {
  public:
    using TestEventListenerBase::TestEventListenerBase;

    void benchmarkEnded(const Catch::BenchmarkStats<>& stats) override {
        means_.emplace_back(stats.info.name, stats.mean.point.count());
    }

    void testCaseEnded(const Catch::TestCaseStats& stats) override {
        if (means_.empty())
            return;
        fmt::print("\n{}\n", stats.testInfo.name);
        for (const auto& [name, nanoseconds] : means_)
            fmt::print("  {:<64} {:>10.1f} us  {:>7.3f}\n", name, nanoseconds / 1e3,
                       nanoseconds / means_.front().second);
        means_.clear();
    }

  private:
    std::vector<std::pair<std::string, double>> means_;
};

} // namespace

CATCH_REGISTER_LISTENER(RatioListener)
