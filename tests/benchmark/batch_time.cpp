// Throughput and memory of `ringfill batch` on simple jobs without a heat curve, as ratios of one run:
// against only parsing and printing the same bytes with Boost.JSON, many lines against few, all cores against
// one. Runs of what is compared take turns, so that whatever else the machine does weighs on both. Not a
// test: it prints figures.
//   batch_time RINGFILL JSON_FLOOR [LINES]
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "one_run.hpp"
#include "simple_job.hpp"

namespace {

namespace fs = std::filesystem;
using ringfill::testing::Run;
using ringfill::testing::run_once;

constexpr int rounds = 5;
constexpr long few = 1'000;

/// Jobs that differ in how far the bore is worn.
void write_jobs(const fs::path& file, long count) {
    std::ofstream out(file);
    const std::string before = "\"92.4 mm\"";
    for (long i = 0; i < count; ++i) {
        std::string job = ringfill::testing::simple_job;
        job.replace(job.find(before), before.size(), "\"92." + std::to_string(100 + i % 800) + " mm\"");
        out << job << '\n';
    }
}

double median(std::vector<double> figures) {
    std::nth_element(figures.begin(), figures.begin() + static_cast<std::ptrdiff_t>(figures.size() / 2),
                     figures.end());
    return figures[figures.size() / 2];
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::fprintf(stderr, "batch_time RINGFILL JSON_FLOOR [LINES]\n");
        return 2;
    }
    const std::string program = argv[1];
    const std::string floor = argv[2];
    const long many = argc > 3 ? std::atol(argv[3]) : 100'000;
    const fs::path folder = fs::temp_directory_path() / "ringfill-batch-time";
    fs::create_directories(folder);
    const std::string few_jobs = folder / "few.jsonl";
    const std::string many_jobs = folder / "many.jsonl";
    const std::string plans = folder / "plans.jsonl";
    write_jobs(few_jobs, few);
    write_jobs(many_jobs, many);
    run_once({program, "batch", few_jobs, "-o", plans});
    std::printf("a job has %.2f kB, its plan %.1f kB\n",
                static_cast<double>(fs::file_size(few_jobs)) / few / 1e3,
                static_cast<double>(fs::file_size(plans)) / few / 1e3);

    std::vector<double> of_floor;
    std::vector<double> speed_up;
    for (int i = 0; i < rounds; ++i) {
        const Run least = run_once({floor, few_jobs, plans, std::to_string(few)}, true);
        const Run one = run_once({program, "batch", few_jobs}, true);
        const Run all = run_once({program, "batch", few_jobs});
        of_floor.push_back(least.processor_milliseconds / one.processor_milliseconds);
        speed_up.push_back(one.milliseconds / all.milliseconds);
        std::printf("round %d: floor %.0f ms, batch %.0f ms of processor; one core %.0f ms, all cores %.0f "
                    "ms of clock\n",
                    i + 1, least.processor_milliseconds, one.processor_milliseconds, one.milliseconds,
                    all.milliseconds);
    }
    std::printf("median of %d rounds of %ld lines: %.2f of the floor's throughput per core; all cores %.2f "
                "times one\n",
                rounds, few, median(of_floor), median(speed_up));
    const Run small = run_once({program, "batch", few_jobs});
    const Run large = run_once({program, "batch", many_jobs});
    std::printf("memory: %.1f MB for %ld lines, %.1f MB for %ld, ratio %.3f; %.2f ms of processor a line\n",
                static_cast<double>(small.kilobytes) / 1024, few, static_cast<double>(large.kilobytes) / 1024,
                many, static_cast<double>(large.kilobytes) / static_cast<double>(small.kilobytes),
                large.processor_milliseconds / static_cast<double>(many));
    fs::remove_all(folder);
    return 0;
}
