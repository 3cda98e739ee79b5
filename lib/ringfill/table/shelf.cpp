#include <ringfill/table/shelf.hpp>

#include <algorithm>
#include <filesystem>
#include <set>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/fault/listed.hpp>

namespace ringfill {

namespace fs = std::filesystem;

std::vector<Document> table_texts(const Shelf& shelf, const std::string& name) {
    std::vector<Document> texts;
    for (const std::string& folder : shelf.folders) {
        const std::string path = (fs::path(folder) / name).string();
        std::error_code ignored;
        if (fs::exists(path, ignored))
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
