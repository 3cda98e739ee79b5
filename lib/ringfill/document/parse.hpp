#pragma once

#include <cstddef>
#include <string>

#include <ringfill/document/document.hpp>

namespace ringfill {

/// How large a document may be before it is refused.
struct DocumentLimits {
    std::size_t bytes = 4'000'000;
    std::size_t depth = 24;
    std::size_t values = 200'000;
};

/// Reads a text as JSON (UTF-8; comments and trailing commas allowed) and remembers where every key and value
/// stands. Throws Faulty of the given origin: one fault for broken JSON, which ends the reading, and one for
/// each duplicate key and each number that is not finite.
Document parse(std::string file, std::string text, Origin origin, const DocumentLimits& limits = {});

} // namespace ringfill
