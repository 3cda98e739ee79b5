// Prints jobs on one line each, to be planned by `ringfill batch`: random ones that can be planned, in
// millimetres and in inches by turns, then such as stand at the edges of what a job may say. The same numbers
// give the same jobs. Arguments: how many random ones, how many at the edges, the files of the sample jobs.

#include <cstdlib>
#include <exception>
#include <string>
#include <vector>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/job/read_job.hpp>

#include "identity/edge_job.hpp"
#include "identity/random_job.hpp"
#include "shop_for_tests.hpp"

namespace {

using namespace ringfill;

/// A job on one line, unless it is longer than a job may be.
void print(const std::string& job) {
    if (job.size() <= job_file_limit)
        fmt::print("{}", write_json_line(parse("job.json", job, Origin::job).root));
}

} // namespace

int main(int argc, char** argv) try {
    const std::vector<std::string> words(argv + 1, argv + argc);
    std::vector<std::string> samples;
    for (std::size_t i = 2; i < words.size(); ++i)
        samples.push_back(read_whole(words[i], job_file_limit));
    for (std::uint64_t seed = 0; seed < std::stoull(words.at(0)); ++seed)
        print(testing::text_of(testing::random_sketch(seed),
                               seed % 2 == 0 ? UnitSystem::metric : UnitSystem::inch));
    for (std::uint64_t seed = 0; seed < std::stoull(words.at(1)); ++seed)
        print(testing::edge_job(seed, testing::shop(), samples));
    return EXIT_SUCCESS;
} catch (const std::exception& error) {
    fmt::print(stderr, "random_jobs: {}\n", error.what());
    return EXIT_FAILURE;
}
