#include <ringfill/plan/too_much.hpp>

#include <fmt/format.h>

namespace ringfill {

std::vector<Fault> too_much(const std::vector<Need>& needs) {
    std::vector<Fault> faults;
    for (const Need& need : needs)
        if (!(need.need + need.reserve < too_much_of_one_thing))
            faults.push_back(fault_at_path("bores", {},
                                           fmt::format("need {:.3g} {} of {}, with the reserve",
                                                       need.need + need.reserve, need.unit, need.item),
                                           "check counts, sizes, speeds, flow and reserve"));
    return faults;
}

} // namespace ringfill
