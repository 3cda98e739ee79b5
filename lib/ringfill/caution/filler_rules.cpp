#include <ringfill/caution/filler_rules.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

std::string family_of(const std::string& name) {
    return name.substr(0, name.find('/'));
}

} // namespace

std::vector<Caution> filler_cautions(const WornBore& bore, const Procedure& procedure) {
    if (family_of(bore.base) == family_of(procedure.filler))
        return {};
    return {{bore.name, "before", "yes",
             "Have the approved procedure name this filler for this metal before you load it.",
             fmt::format("{} is to be welded with {}, of another family", bore.base, procedure.filler),
             "practice"}};
}

} // namespace ringfill
