#pragma once

#include <string>

namespace ringfill::testing {

// The words of faults that many fields have, for tests of where they stand: each has its wording here alone.

/// @param range of the field: "from 1 to 100".
inline std::string out_of_range(const std::string& range) {
    return " is out of range; write a number " + range;
}

inline const std::string swapped_ends = " has its low end over its high end; swap the two";

/// Of a figure of a table.
inline const std::string no_source =
    " has no source; write a number with its source such as [7850, \"EN1993-1-2\"]";

/// @param kind of the value, "a number". @param record whose fields belong there.
inline std::string no_object(const std::string& kind, const std::string& record) {
    return " is " + kind + ", not an object in braces; write the fields of " + record + " in braces";
}

} // namespace ringfill::testing
