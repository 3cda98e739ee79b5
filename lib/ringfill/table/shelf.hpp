#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/document.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// The folders tables stand in: the product's own first, then those of the user, whose entries add to or
/// correct it.
struct Shelf {
    std::vector<std::string> folders;
};

/// The files of one table, such as "packs.json", in the order of the folders that have it.
/// Throws Faulty: Origin::table for broken JSON or when no folder has the file, Origin::file when it cannot
/// be read.
std::vector<Document> table_files(const Shelf& shelf, const std::string& name);

/// Reads the bibliography of the tables, file after file. Throws Faulty (Origin::table).
Bibliography read_sources(const std::vector<Document>& files);

/// The texts of one table, not yet read as JSON, in the order of the folders that have it; none when no
/// folder has. Throws Faulty (Origin::file) for a file that cannot be read, a link to nothing, and what is no
/// file, such as a pipe, without waiting for it.
std::vector<Document> table_texts(const Shelf& shelf, const std::string& name);

/// Throws Faulty (Origin::file) for every folder of the shelf that is not there.
void refuse_missing_folders(const Shelf& shelf);

/// Throws Faulty (Origin::table) for every table in a folder of the user that nothing reads, with the nearest
/// name that is read: "pack.json" beside "packs.json", a family that does not stand under families/.
void refuse_unread_files(const Shelf& shelf);

/// Whether a name is one a family may have: [a-z][a-z0-9_]{0,39}.
bool is_family_name(std::string_view name);

/// The names of the material families on the shelf (families/NAME.json), in alphabetical order.
/// A name that is not [a-z][a-z0-9_]{0,39} is skipped.
std::vector<std::string> family_names(const Shelf& shelf);

} // namespace ringfill
