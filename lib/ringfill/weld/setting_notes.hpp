#pragma once

#include <string>
#include <vector>

#include <ringfill/weld/settings.hpp>

namespace ringfill {

/// What the filler adds to a procedure that the job leaves out, each with its source.
std::vector<Assumed> assumed_settings(const Settings& found, UnitSystem units);

/// Takes out what the job leaves to common practice and its filler has no use for: the times of a gas that an
/// electrode does not have.
void leave_out_unfit(std::vector<Assumed>& assumed, const Settings& found);

/// What is out of the usual in a procedure: settings outside the filler's window or the range of its process,
/// a diameter without a row, an odd pitch or gas.
std::vector<std::string> setting_notes(const Settings& found, UnitSystem units);

} // namespace ringfill
