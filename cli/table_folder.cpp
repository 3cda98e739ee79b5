#include "table_folder.hpp"

#include <filesystem>

namespace ringfill::cli {

std::string table_folder() {
    namespace fs = std::filesystem;
    std::error_code error;
    const fs::path program = fs::read_symlink("/proc/self/exe", error);
    const fs::path installed = program.parent_path().parent_path() / "share" / "ringfill" / "tables";
    if (!error && fs::is_directory(installed, error))
        return installed.string();
    return RINGFILL_TABLES;
}

Shelf shelf_for(const std::string& users_folder) {
    Shelf shelf{{table_folder()}};
    if (!users_folder.empty())
        shelf.folders.push_back(users_folder);
    return shelf;
}

} // namespace ringfill::cli
