#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/value.hpp>
#include <ringfill/fault/fault.hpp>

namespace ringfill {

/// A text that was read as JSON, with the text kept so that every fault can show its place.
struct Document {
    std::string file; ///< as the user named it
    std::string text;
    Value root;
};

/// A fault at a byte offset of the document, with line, column and excerpt.
Fault fault_at(const Document& document, std::size_t offset, std::string path, std::string value,
               std::string reason, std::string remedy);

/// What stands in the text for a value: a text quoted, a number as typed, "a list", "an object".
std::string as_written(const Document& document, const Value& value);

/// The value at a path such as bores[1].worn.diameter, or the nearest one on the way to it that exists.
const Value& value_at(const Document& document, std::string_view path);

/// Gives each fault that has a path but no line the file, line, column and excerpt of that path.
std::vector<Fault> locate(const Document& document, std::vector<Fault> faults);

} // namespace ringfill
