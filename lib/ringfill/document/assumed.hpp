#pragma once

#include <string>

namespace ringfill {

/// A value that the file did not give and that was filled in.
struct Assumed {
    std::string path;   ///< of the field
    std::string value;  ///< as a person would write it
    std::string source; ///< key of the bibliography
};

} // namespace ringfill
