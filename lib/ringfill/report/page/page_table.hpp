#pragma once

#include <string>
#include <vector>

#include <ringfill/report/draw/markup.hpp>

namespace ringfill {

/// A column of a table on a page.
struct PageColumn {
    std::string head;
    bool is_number = false; ///< set to the right
};

/// A table with a caption and a head that repeats on every sheet of paper. The cell `row_head` of a row names
/// the row. On a narrow screen a `wide` table shows each row as a block, its cells under their heads.
struct PageTable {
    std::string caption;
    std::vector<PageColumn> columns;
    std::vector<std::vector<Markup>> rows = {};
    bool wide = false;
    std::size_t row_head = 0;
    std::string kind = {}; ///< a class of the style, may be empty
};

Markup written(const PageTable& table);

} // namespace ringfill
