#pragma once

#include <string>

#include <ringfill/document/entry.hpp>
#include <ringfill/job/procedure.hpp>

namespace ringfill {

/// One procedure; its name is the key it stands under.
Procedure read_procedure(const std::string& name, const Entry& entry);

} // namespace ringfill
