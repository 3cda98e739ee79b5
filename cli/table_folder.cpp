#include "table_folder.hpp"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <sstream>
#include <string_view>

#include <ringfill/fault/fault.hpp>
#include <ringfill/material/search.hpp>

#include "product_folders.hpp"

namespace ringfill::cli {
namespace {

namespace fs = std::filesystem;

/// A folder or file of an installed product, by its path under the prefix, or else the one of the build; an
/// installed program knows none of a build.
std::string own_place(const fs::path& under_prefix, std::string_view built) {
    std::error_code error;
    const fs::path program = fs::read_symlink("/proc/self/exe", error);
    if (error && built.empty())
        throw Faulty(Origin::file,
                     fault_in_file("/proc/self/exe", "cannot be read, and it tells where the tables are",
                                   "run the program where /proc is mounted"));
    const fs::path installed = program.parent_path().parent_path() / under_prefix;
    const bool stands = !error && fs::exists(installed, error);
    return stands || built.empty() ? installed.string() : std::string(built);
}

/// Those that --plugins and RINGFILL_PLUGINS name.
std::vector<std::string> users_plugin_folders(const std::string& users_folder) {
    std::vector<std::string> folders;
    if (!users_folder.empty())
        folders.push_back(users_folder);
    const char* const listed = std::getenv("RINGFILL_PLUGINS");
    std::istringstream names(listed ? listed : "");
    for (std::string name; std::getline(names, name, ':');)
        if (!name.empty())
            folders.push_back(name);
    return folders;
}

} // namespace

std::string table_folder() {
    return own_place(fs::path("share") / "ringfill" / "tables", built_tables);
}

std::string workbook_part() {
    const std::string file = "ringfill_workbook.part";
    const fs::path families = built_plugins; // of a build, which makes the part beside them
    return own_place(fs::path(parts_under_prefix) / file,
                     families.empty() ? std::string() : (families.parent_path() / file).string());
}

Shelf shelf_for(const std::string& users_folder) {
    Shelf shelf{{table_folder()}};
    if (!users_folder.empty())
        shelf.folders.push_back(users_folder);
    return shelf;
}

std::vector<std::string> plugin_folders(const std::string& users_folder) {
    std::vector<std::string> folders = users_plugin_folders(users_folder);
    std::error_code ignored;
    for (const std::string& folder : folders)
        if (!fs::is_directory(folder, ignored))
            throw Faulty(Origin::file, fault_in_file(folder, "is not a folder of plugins", "check the name"));
    folders.push_back(own_place(plugins_under_prefix, built_plugins));
    return folders;
}

std::vector<std::string> foreign_plugins(const std::string& users_folder) {
    const std::vector<std::string> own = family_names({{table_folder()}});
    std::vector<std::string> foreign = find_plugins(users_plugin_folders(users_folder)).files;
    for (const std::string& file : find_plugins({own_place(plugins_under_prefix, built_plugins)}).files)
        if (std::find(own.begin(), own.end(), fs::path(file).stem()) == own.end())
            foreign.push_back(file);
    return foreign;
}

} // namespace ringfill::cli
