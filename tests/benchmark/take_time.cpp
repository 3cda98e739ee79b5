// Wall time, processor time and memory of `ringfill take` on a job, against a program that only links the
// same libraries and exits. Runs of the two take turns, so that whatever else the machine does weighs on
// both. Not a test: it prints figures.
//   take_time RINGFILL JOB EMPTY_PROGRAM [RUNS]
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "one_run.hpp"

namespace {

using ringfill::testing::Run;
using ringfill::testing::run_once;

double median(std::vector<Run> runs, double Run::*figure = &Run::milliseconds) {
    std::nth_element(runs.begin(), runs.begin() + static_cast<std::ptrdiff_t>(runs.size() / 2), runs.end(),
                     [figure](const Run& a, const Run& b) { return a.*figure < b.*figure; });
    return runs[runs.size() / 2].*figure;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 4) {
        std::fprintf(stderr, "take_time RINGFILL JOB EMPTY_PROGRAM [RUNS]\n");
        return 2;
    }
    const int count = argc > 4 ? std::atoi(argv[4]) : 300;
    std::vector<Run> take;
    std::vector<Run> empty;
    for (int i = 0; i < count; ++i) {
        take.push_back(run_once({argv[1], "take", argv[2]}));
        empty.push_back(run_once({argv[3]}));
    }
    const long memory = std::max_element(take.begin(), take.end(), [](const Run& a, const Run& b) {
                            return a.kilobytes < b.kilobytes;
                        })->kilobytes;
    std::printf("median of %d runs: take %.2f ms (%.2f ms of processor), empty program %.2f ms, ratio %.2f; "
                "take uses "
                "%.1f MB at most\n",
                count, median(take), median(take, &Run::processor_milliseconds), median(empty),
                median(take) / median(empty), static_cast<double>(memory) / 1024);
    return 0;
}
