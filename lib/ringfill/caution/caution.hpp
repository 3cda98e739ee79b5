#pragma once

#include <string>
#include <vector>

namespace ringfill {

/// Something that can go wrong or hurt, told before it does.
struct Caution {
    std::string about;                          ///< what it concerns: a bore, a procedure, the job
    std::string when;                           ///< before, during or after the work
    std::string applies;                        ///< yes, or unknown when the job does not say
    std::string text;                           ///< what to do
    std::string because;                        ///< the numbers that make it apply
    std::string source;                         ///< key of the bibliography
    std::string check = {};                     ///< when unknown: what to look for, in a few words
    std::string field = {};                     ///< when unknown: the field of the job that would settle it
    std::vector<std::string> more_sources = {}; ///< of the limits that the text names
};

} // namespace ringfill
