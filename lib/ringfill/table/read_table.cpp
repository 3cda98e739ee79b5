#include <ringfill/table/read_table.hpp>

#include <optional>

namespace ringfill {

bool has_signature(const Entry& table) {
    return table.value().object() && table.word("format") && table.text("description");
}

void fill_table(void* table, const void* row, const std::vector<Document>& files, const Bibliography& sources,
                Bibliography* kept, const Record& record, CheckWhole whole) {
    for (const Document& file : files) {
        Reading reading{.document = file, .sources = kept ? kept : &sources};
        const Entry entry(reading, file.root, record, "");
        std::optional<Bibliography> with_own;
        if (has_signature(entry)) {
            if (entry.has("sources"))
                add_sources(kept ? *kept : with_own.emplace(sources), entry);
            if (with_own)
                reading.sources = &*with_own;
            expect_rows(entry, row);
            entry.fill(table);
        }
        if (whole && &file == &files.back() && reading.faults.empty())
            whole(entry, table);
        refuse_if_any(Origin::table, reading.faults);
    }
}

} // namespace ringfill
