#pragma once

#include <string>
#include <vector>

#include <ringfill/table/shelf.hpp>

namespace ringfill::cli {

/// The folder of the product's own tables: ../share/ringfill/tables beside an installed program, else the
/// folder it was built from. Throws Faulty (Origin::file) when an installed program cannot tell where it
/// stands.
std::string table_folder();

/// The part of the product that writes workbooks, found likewise:
/// ../lib/ringfill/parts/ringfill_workbook.part, or the one beside the program as it was built.
std::string workbook_part();

/// The product's own tables, and the user's folder if one is named.
Shelf shelf_for(const std::string& users_folder);

/// Where plugins are looked for: the folder of --plugins if one is named, those of RINGFILL_PLUGINS (parted
/// by colons), and the product's own: ../lib/ringfill/plugins beside an installed program, else the one it
/// was built into (an installed program knows no such). Never the current folder, never a path from a job.
/// Throws Faulty (Origin::file) when a folder that the user names is not there.
std::vector<std::string> plugin_folders(const std::string& users_folder);

/// The files of plugins of others in those folders. Among the product's own, those count whose name is no
/// family of its tables. A folder that is not there holds none.
std::vector<std::string> foreign_plugins(const std::string& users_folder);

} // namespace ringfill::cli
