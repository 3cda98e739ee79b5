// Only parses and prints with Boost.JSON: each job of one file and its plan of another, and prints the plan,
// over and over until as many lines are done as asked for. What batch cannot be faster than.
//   json_floor JOBS PLANS LINES
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>
#include <vector>

#include <boost/json/parse.hpp>
#include <boost/json/serialize.hpp>

namespace {

std::vector<std::string> lines_of(const char* file) {
    std::ifstream in(file);
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 4)
        return 2;
    const auto jobs = lines_of(argv[1]);
    const auto plans = lines_of(argv[2]);
    if (jobs.empty() || jobs.size() != plans.size())
        return 1;
    const long count = std::atol(argv[3]);
    for (long i = 0; i < count; ++i) {
        const std::size_t at = static_cast<std::size_t>(i) % jobs.size();
        if (!boost::json::parse(jobs[at]).is_object())
            return 1;
        const std::string printed = boost::json::serialize(boost::json::parse(plans[at]));
        std::fwrite(printed.data(), 1, printed.size(), stdout);
        std::fputc('\n', stdout);
    }
    return 0;
}
