#include "source_tree.hpp"

#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace ringfill::testing {
namespace {

namespace fs = std::filesystem;

SourceFile read(const fs::path& path) {
    SourceFile file{fs::relative(path, RINGFILL_ROOT).generic_string(), {}};
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);)
        file.lines.push_back(line);
    return file;
}

} // namespace

std::vector<SourceFile> sources_under(const std::vector<std::string>& folders) {
    std::vector<SourceFile> files;
    for (const std::string& folder : folders)
        for (const auto& entry : fs::recursive_directory_iterator(fs::path(RINGFILL_ROOT) / folder))
            if (const auto ending = entry.path().extension();
                entry.is_regular_file() && (ending == ".cpp" || ending == ".hpp" || ending == ".h"))
                files.push_back(read(entry.path()));
    if (files.empty())
        throw std::runtime_error("no source file was found to judge");
    return files;
}

} // namespace ringfill::testing
