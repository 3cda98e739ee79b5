#pragma once

#include <utility>
#include <vector>

namespace ringfill {

/// Puts a row into a table: in the place of the row of the same name, or at the end.
template <class Row>
void put_row(std::vector<Row>& rows, Row row) {
    for (Row& known : rows)
        if (known.name == row.name) {
            known = std::move(row);
            return;
        }
    rows.push_back(std::move(row));
}

} // namespace ringfill
