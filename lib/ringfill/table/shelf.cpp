#include <ringfill/table/shelf.hpp>

#include <algorithm>
#include <filesystem>
#include <set>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/nearest.hpp>

namespace ringfill {

namespace fs = std::filesystem;

namespace {

const std::vector<std::string> table_names = {
    "cautions.json", "currencies.json", "cutting.json",     "fuels.json",   "gases.json",
    "packs.json",    "processes.json",  "size_limits.json", "sources.json", "standing_times.json",
    "sticks.json",   "suits.json",      "wear_parts.json"};

/// Throws for what a table cannot be read from: a link to nothing, a pipe, a device. A folder is told by
/// reading it.
void refuse_no_file(const std::string& path, const fs::file_status& status) {
    if (status.type() == fs::file_type::not_found)
        throw Faulty(Origin::file, fault_in_file(path, "is a link to a file that is not there",
                                                 "put the table there or take the link away"));
    if (!fs::is_regular_file(status) && !fs::is_directory(status))
        throw Faulty(Origin::file, fault_in_file(path, "is a pipe or a device, not a file of a table",
                                                 "put a plain file in its place"));
}

bool is_table(const fs::path& file) {
    std::string ending = file.extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return ending == ".json";
}

/// What is in a folder, by name; nothing where it is none.
std::vector<fs::path> files_in(const fs::path& folder) {
    std::set<fs::path> files;
    std::error_code error;
    for (const fs::directory_entry& file : fs::directory_iterator(folder, error))
        files.insert(file.path());
    return {files.begin(), files.end()};
}

} // namespace

std::vector<Document> table_texts(const Shelf& shelf, const std::string& name) {
    std::vector<Document> texts;
    for (const std::string& folder : shelf.folders) {
        const std::string path = (fs::path(folder) / name).string();
        std::error_code ignored;
        if (fs::symlink_status(path, ignored).type() == fs::file_type::not_found)
            continue;
        refuse_no_file(path, fs::status(path, ignored));
        texts.push_back({path, read_whole(path, DocumentLimits{}.bytes), {}});
    }
    return texts;
}

std::vector<Document> table_files(const Shelf& shelf, const std::string& name) {
    std::vector<Document> files = table_texts(shelf, name);
    for (Document& file : files)
        file = parse(file.file, std::move(file.text), Origin::table);
    if (files.empty())
        throw Faulty(
            Origin::table,
            fault_in_file(name,
                          fmt::format("is in none of the table folders ({})", listed(shelf.folders, ", ")),
                          "install the tables again or name their folder with --tables"));
    return files;
}

void refuse_missing_folders(const Shelf& shelf) {
    std::vector<Fault> faults;
    std::error_code error;
    for (const std::string& folder : shelf.folders)
        if (!fs::is_directory(folder, error))
            faults.push_back(fault_in_file(folder, "is not a folder of tables", "check the name"));
    refuse_if_any(Origin::file, faults);
}

void refuse_unread_files(const Shelf& shelf) {
    if (shelf.folders.size() < 2)
        return;
    const std::vector<std::string> families = family_names({{shelf.folders.front()}});
    std::vector<Fault> faults;
    const auto refuse = [&](const fs::path& file, std::string_view what, std::string remedy) {
        faults.push_back(fault_in_file(file.string(), std::string(what), std::move(remedy)));
    };
    for (auto folder = shelf.folders.begin() + 1; folder != shelf.folders.end(); ++folder) {
        for (const fs::path& file : files_in(*folder)) {
            const std::string name = file.filename().string();
            std::error_code ignored;
            if (fs::is_directory(file, ignored)) {
                if (name != "families" && nearest(name, {"families", "family"}))
                    refuse(file, "is no folder that is read", R"(did you mean "families"?)");
            } else if (is_table(file) && !ranges::contains(table_names, name)) {
                const bool is_family = ranges::contains(families, file.stem().string());
                refuse(file, "is no table that is read",
                       is_family ? fmt::format("put it into the folder families: families/{}", name)
                                 : suggest(name, table_names));
            }
        }
        for (const fs::path& file : files_in(fs::path(*folder) / "families"))
            if (is_table(file) && (file.extension() != ".json" || !is_family_name(file.stem().string())))
                refuse(file, "is no name of a family, so it is not read",
                       "name it after its family in small letters, digits and _: steel.json");
    }
    refuse_if_any(Origin::table, faults);
}

bool is_family_name(std::string_view name) {
    const auto lower = [](char c) { return c >= 'a' && c <= 'z'; };
    return !name.empty() && name.size() <= 40 && lower(name.front()) &&
           std::all_of(name.begin(), name.end(),
                       [&](char c) { return lower(c) || (c >= '0' && c <= '9') || c == '_'; });
}

std::vector<std::string> family_names(const Shelf& shelf) {
    std::set<std::string> names;
    for (const std::string& folder : shelf.folders) {
        std::error_code error;
        for (const fs::directory_entry& file : fs::directory_iterator(fs::path(folder) / "families", error))
            if (file.path().extension() == ".json" && is_family_name(file.path().stem().string()))
                names.insert(file.path().stem().string());
    }
    return {names.begin(), names.end()};
}

} // namespace ringfill
