#include <ringfill/caution/caution.hpp>

#include <ringfill/fault/listed.hpp>

namespace ringfill {

std::string names_of(const std::vector<Subject>& about) {
    return about.empty() ? "the job" : listed(about, ", ", &Subject::name);
}

bool is_about_bore(const Caution& caution, std::string_view bore) {
    return caution.about == std::vector<Subject>{{Concern::bore, std::string(bore)}};
}

} // namespace ringfill
