#include <ringfill/caution/caution.hpp>

#include <ringfill/fault/listed.hpp>

namespace ringfill {

std::string names_of(const std::vector<Subject>& about) {
    return about.empty() ? "the job" : listed(about, ", ", &Subject::name);
}

} // namespace ringfill
