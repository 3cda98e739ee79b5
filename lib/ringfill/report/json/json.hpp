#pragma once

#include <string>

#include <ringfill/document/value.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// The plan as a ringfill-plan/1 document: names with their unit, numbers in SI or the trade's metric units,
/// members in a fixed order. What was not worked out is absent; the notes say why.
Value plan_document(const Plan& plan);

/// The same document as one line of text, its line break included. The workings, most of it, are printed one
/// by one, so that no tree of them all is made.
std::string plan_line(const Plan& plan);

} // namespace ringfill
