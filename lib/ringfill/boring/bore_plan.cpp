#include <ringfill/boring/bore_plan.hpp>

#include <fmt/format.h>

namespace ringfill {

std::string piece_name(const BorePlan& bore, int piece) {
    return bore.count > 1 ? fmt::format("{} {}", bore.name, piece) : bore.name;
}

} // namespace ringfill
