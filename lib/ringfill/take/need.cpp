#include <ringfill/take/need.hpp>

namespace ringfill {

void work_supply(Need& line, std::vector<double> counts, std::vector<double> contents) {
    line.working.push_back({"supplied",
                            "sum(n*c)",
                            {{"n", std::move(counts)}, {"c", std::move(contents), line.unit}},
                            line.supplied,
                            line.unit,
                            "own"});
    line.working.push_back({"spare",
                            "supplied - need - reserve",
                            {{"supplied", line.supplied, line.unit},
                             {"need", line.need, line.unit},
                             {"reserve", line.reserve, line.unit}},
                            line.spare,
                            line.unit,
                            "own"});
}

} // namespace ringfill
