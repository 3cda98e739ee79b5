#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/document.hpp>
#include <ringfill/document/entry.hpp>

namespace ringfill {

/// Where a figure comes from, and how it is known.
struct Source {
    std::string title;
    std::string edition;
    std::string place;
    std::string kind; ///< standard, textbook, paper, regulation, handbook, practice or own
    std::string seen; ///< read, restated or memory
};

/// The sources by their keys.
using Bibliography = std::map<std::string, Source, std::less<>>;

/// The description of a block of sources, for every table that has one.
extern const Record source_record;

/// Adds a table's own block of sources (field "sources") to the bibliography; noted: a key that is there
/// already with another meaning, and a second meaning for the reserved keys practice and own.
void add_sources(Bibliography& sources, const Entry& table);

/// Reads the bibliography of the tables, file after file. Throws Faulty (Origin::table).
Bibliography read_sources(const std::vector<Document>& files);

} // namespace ringfill
