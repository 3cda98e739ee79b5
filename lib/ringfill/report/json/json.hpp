#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/value.hpp>
#include <ringfill/fault/fault.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// The plan as a ringfill-plan/1 document: names with their unit, numbers in SI or the trade's metric units,
/// members in a fixed order. What was not worked out is absent; the notes say why.
Value plan_document(const Plan& plan);

/// JSON Schema (draft 2020-12) of that document, made from the types that it is written from: every member,
/// its kind, unit and words, and whether it is always there.
std::string plan_schema();

/// The same document as one line of text, its line break included. The workings, most of it, are printed one
/// by one, so that no tree of them all is made.
std::string plan_line(const Plan& plan);

/// What stands in place of the plan of a job that was one line of many (ringfill-fault/1): the line, who can
/// put it right (job, table or file; program: nothing of the user's is wrong), and each fault with its path,
/// column, value, reason and remedy, where known, and the whole of it as a sentence.
Value fault_document(std::size_t line, std::optional<Origin> origin, const std::vector<Fault>& faults);

} // namespace ringfill
