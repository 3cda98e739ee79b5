#pragma once

#include <string>

#include <ringfill/table/shelf.hpp>

namespace ringfill::cli {

/// The folder of the product's own tables: ../share/ringfill/tables beside an installed program, else the
/// folder it was built from.
std::string table_folder();

/// The product's own tables, and the user's folder if one is named.
Shelf shelf_for(const std::string& users_folder);

} // namespace ringfill::cli
