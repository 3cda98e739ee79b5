#pragma once

#include <string>

#include <ringfill/document/field.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What a field takes, in words: how many, kind, words, range, whether it is required, what it falls back to.
std::string field_facts(const Field& field);

/// Every field of the job file with its kind, range, default and meaning, made from the description of the
/// format.
std::string field_guide();

/// A job file to begin from, made from the description of the format: one bore, every required field with a
/// value and every optional one shown once in a comment. It plans as it stands.
std::string starter_job(UnitSystem units);

/// The job format as a JSON Schema (draft 2020-12), made from the description that the reader works from:
/// names, kinds, words, how many, the ranges of plain numbers, and the form of each quantity with the units
/// that are read. What takes arithmetic or a table (the range of a quantity, sizes that must fit together,
/// the name of a filler) it leaves to the reader, so a job that the schema accepts can still be refused.
std::string job_schema();

} // namespace ringfill
