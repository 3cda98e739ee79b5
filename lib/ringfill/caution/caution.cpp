#include <ringfill/caution/caution.hpp>

namespace ringfill {

std::string names_of(const std::vector<Subject>& about) {
    std::string names;
    for (const Subject& one : about)
        names += (names.empty() ? "" : ", ") + one.name;
    return about.empty() ? "the job" : names;
}

std::string_view name_of(Applies applies) {
    return applies == Applies::yes ? "yes" : "unknown";
}

bool is_about_bore(const Caution& caution, std::string_view bore) {
    return caution.about == std::vector<Subject>{{Concern::bore, std::string(bore)}};
}

} // namespace ringfill
