#pragma once

#include <string>

#include <ringfill/document/field.hpp>

namespace ringfill {

/// What a field takes, in words: how many, kind, words, range, whether it is required, what it falls back to.
std::string field_facts(const Field& field);

/// Every field of the job file with its kind, range, default and meaning, made from the description of the
/// format.
std::string field_guide();

} // namespace ringfill
