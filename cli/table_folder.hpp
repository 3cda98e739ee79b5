#pragma once

#include <string>

namespace ringfill::cli {

/// The folder of the product's own tables: ../share/ringfill/tables beside an installed program, else the
/// folder it was built from.
std::string table_folder();

} // namespace ringfill::cli
