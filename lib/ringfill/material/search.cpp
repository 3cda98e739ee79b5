#include <ringfill/material/search.hpp>

#include <algorithm>
#include <filesystem>
#include <system_error>

#include <sys/stat.h>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

namespace ringfill {
namespace {

namespace fs = std::filesystem;

/// A file of a canonical folder by the name that leads to it, so that two links to one are found to be one.
/// What leads nowhere keeps its own name and is refused when it is loaded.
std::string file_behind(const fs::path& name) {
    std::error_code error;
    const fs::path found = fs::is_symlink(name, error) ? fs::canonical(name, error) : name;
    return error ? name.string() : found.string();
}

void look_into(const std::string& folder, PluginSearch& search) {
    const auto refuse = [&](std::string reason, std::string remedy) {
        search.refused.push_back(fault_in_file(folder, std::move(reason), std::move(remedy)));
    };
    std::vector<fs::path> names;
    try {
        const fs::path place = fs::canonical(folder);
        if (everyone_may_write(place.string()))
            return refuse("may be written to by everyone, so no plugin is taken from it",
                          "take that right away (chmod o-w), or name a folder of your own");
        for (const fs::directory_entry& entry : fs::directory_iterator(place))
            names.push_back(entry.path());
    } catch (const fs::filesystem_error& error) {
        return refuse(fmt::format("cannot be searched for plugins: {}", error.code().message()),
                      "check the name of the folder");
    }
    std::sort(names.begin(), names.end());
    for (const fs::path& name : names)
        if (name.extension() == ".family" && !name.filename().string().starts_with('.'))
            if (std::string file = file_behind(name); !ranges::contains(search.files, file))
                search.files.push_back(std::move(file));
}

} // namespace

bool everyone_may_write(const std::string& path) {
    struct stat status = {};
    return ::stat(path.c_str(), &status) == 0 && (status.st_mode & S_IWOTH) != 0;
}

PluginSearch find_plugins(const std::vector<std::string>& folders) {
    PluginSearch search;
    for (const std::string& folder : folders)
        look_into(folder, search);
    return search;
}

} // namespace ringfill
