#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/markup.hpp>

namespace ringfill {

/// Lines to write on.
Markup sheet_blank_lines();

/// The sources whose keys stand in brackets in what is printed, with how each is known.
Markup sheet_sources(const Bibliography& sources, const std::string& printed);

/// What is out of the usual, and the values that the job left out.
Markup sheet_notes(const Plan& plan);

/// How every figure was reached, as a compact table.
Markup sheet_working(const Plan& plan);

} // namespace ringfill
