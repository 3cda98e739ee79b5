#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/style.hpp>

namespace ringfill {

/// The cautions of a plan as every view prints them: those that apply by the time of the work, then what the
/// job leaves open as one compact list to check.
/// @param with_sources the keys of their sources stand behind them.
std::string caution_list(const Plan& plan, const Style& style, bool with_sources = false);

/// A field that the job leaves open, and the cautions that hang on it, one for each thing to look for.
struct OpenField {
    std::string field;
    std::vector<const Caution*> cautions;
};
std::vector<OpenField> open_fields(const std::vector<Caution>& cautions);

/// The keys of the sources of a caution, each in brackets.
std::string source_keys(const Caution& caution);

/// What to look for, named with its bores or procedures.
std::string to_check(const Caution& caution);

/// What the job leaves open, a sentence for each of its fields.
std::vector<std::string> not_stated(const std::vector<Caution>& cautions);

/// A bore's or pack's name is cut to this many characters where it stands in a line.
inline constexpr std::size_t longest_name_shown = 22;

} // namespace ringfill
