#include <ringfill/table/read_table.hpp>

#include <optional>

#include <ringfill/table/shelf.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array kinds = {"standard"sv, "textbook"sv, "paper"sv, "regulation"sv,
                              "handbook"sv, "practice"sv, "own"sv};
constexpr std::array ways = {"read"sv, "restated"sv, "memory"sv};

constexpr Field source_fields[] = {
    field<&Source::title>("title", table_words, R"("EN 1993-1-2")").required(),
    field<&Source::edition>("edition", table_words, R"("2005")").required(),
    field<&Source::place>("place", table_words, R"("3.2.2")").required(),
    field<&Source::kind>("kind", kinds, R"("standard")").required(),
    field<&Source::seen>("seen", ways, R"("read")").required(),
};

constexpr auto sources_fields = [] {
    auto fields = table_fields<"sources">();
    fields.back().required = true;
    fields.back().sample = "{ ... }";
    return fields;
}();
constexpr Record sources_record{"the bibliography", "", sources_fields};

bool same(const Source& a, const Source& b) {
    return a.title == b.title && a.edition == b.edition && a.place == b.place && a.kind == b.kind &&
           a.seen == b.seen;
}

} // namespace

constinit const Record source_record =
    record_of<Source>("a source", "where a figure comes from", source_fields);

void add_sources(Bibliography& sources, const Entry& table) {
    for (const Entry& entry : table.objects(table.field("sources"))) {
        Source source = read_record<Source>(entry);
        const auto [known, is_new] = sources.emplace(entry.name(), source);
        if (!is_new && !same(known->second, source))
            entry.refuse("is already the key of another source", "choose another key");
    }
}

Bibliography read_sources(const std::vector<Document>& files) {
    Bibliography sources;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, sources_record);
        if (has_signature(entry))
            add_sources(sources, entry);
        refuse_if_any(Origin::table, reading.faults);
    }
    return sources;
}

bool has_signature(const Entry& table) {
    return table.value().object() && table.text(table.field("format")) &&
           table.text(table.field("description"));
}

void refuse_without_source(const Entry& last,
                           std::initializer_list<std::pair<std::string_view, const std::string*>> figures) {
    for (const auto& [path, source] : figures)
        if (source->empty())
            last.refuse_missing(path, "write it with its source");
}

void fill_table(void* table, const void* row, const std::vector<Document>& files, const Bibliography& sources,
                Bibliography* kept, const Record& record, CheckWhole whole) {
    for (const Document& file : files) {
        Reading reading{.document = file, .sources = kept ? kept : &sources};
        const Entry entry(reading, file.root, record);
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
