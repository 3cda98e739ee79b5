#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/rules.hpp>

namespace ringfill::testing {

/// A caution on one line, every part of it.
inline std::string told(const Caution& caution) {
    return names_of(caution.about) + " | " + std::string(word_of(caution.when)) + " | " +
           std::string(word_of(caution.applies)) + " | " + caution.text + " | " + caution.because + " | " +
           caution.source;
}

using Lines = std::vector<std::string>;

inline Lines told(const std::vector<Caution>& cautions) {
    Lines lines;
    for (const Caution& caution : cautions)
        lines.push_back(told(caution));
    return lines;
}

/// What a rule says of a bore and its plan.
inline Lines told_by(void (*rule)(CautionList&, const RuledBore&), const WornBore& bore, const BorePlan& plan,
                     UnitSystem units = UnitSystem::metric, const Procedure& procedure = {}) {
    Settings settings;
    settings.procedure = &procedure;
    CautionList cautions{units, Matter::quality, {{Concern::bore, bore.name}}};
    rule(cautions, {bore, settings, plan, units});
    return told(cautions.found);
}

} // namespace ringfill::testing
