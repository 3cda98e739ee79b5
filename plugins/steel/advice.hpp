#pragma once

#include <string>
#include <vector>

#include "question.hpp"

namespace ringfill::steel {

/// One piece of advice: kind and source as abi.h says, text in whole sentences.
struct Advice {
    std::string kind;
    std::string text;
    std::string source;
};

/// Advice with the values that go with it.
struct Advised {
    std::vector<Advice> advice;
    std::vector<Figure> values;
};

/// How to read the preheat, by ISO 13916 (memory): on the far side, or on the heated face after 2 min for
/// every 25 mm of wall.
Advised soak(const Asked& asked);

/// Least time from cold to the crack test: 48 h for a yield strength over 460 MPa or a carbon equivalent
/// over 0.60 % (AWS D10.10:2021 5.3: cracks come up to 48 h later, read; the limits memory), 24 h from
/// 0.40 % on (common practice, no source). The higher of CE(IIW) and CEN counts.
Advised crack_test(const Asked& asked);

/// All of the above, in this order. What is not known is taken for the worst, and said.
Advised advice(const Asked& asked);

} // namespace ringfill::steel
