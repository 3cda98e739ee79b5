#pragma once

#include <string>

namespace ringfill {

/// The job format as a JSON Schema (draft 2020-12), made from the description that the reader works from:
/// names, kinds, words, how many, the ranges of plain numbers, and the form of each quantity with the units
/// that are read. What takes arithmetic or a table (the range of a quantity, sizes that must fit together,
/// the name of a filler) it leaves to the reader, so a job that the schema accepts can still be refused.
std::string job_schema();

} // namespace ringfill
