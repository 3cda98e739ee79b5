#pragma once

#include <string>
#include <string_view>

namespace ringfill {

/// The style of the sheet: black on white, line weights only; for a telephone, a screen and paper of any
/// size at least 186 mm wide inside its margins. @param footer printed at the foot of every page of paper.
std::string sheet_style(std::string_view footer);

} // namespace ringfill
