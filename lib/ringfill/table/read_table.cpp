#include <ringfill/table/read_table.hpp>

#include <optional>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

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

constexpr auto sources_record = table_record<Source>(
    "the bibliography", format_field<R"("ringfill-sources/1")">(), description_field,
    MadeField{sources_field}.required().with(&Field::sample, std::string_view("{ ... }")));

using Parts = std::vector<const Value*>;

/// What some objects hold under a name.
Parts members_of(const Parts& objects, std::string_view name) {
    Parts found;
    for (const Value* object : objects)
        if (const Value* member = object->find(name))
            found.push_back(member);
    return found;
}

/// Notes each figure that stands in none of the objects of a path: of those that fill the table itself, one
/// from each file. What has a row of its own is whole or missing.
void refuse_missing_figures(const Entry& last, const std::string& path, const Record& record,
                            const Parts& objects) {
    const auto stands = [](const Parts& in) {
        return [&in](const Field& figure) { return !members_of(in, figure.name).empty(); };
    };
    for (const Field& field : record.fields) {
        const std::string at = member_path(path, field.name);
        const Parts found = members_of(objects, field.name);
        if (field.record && field.record->row == record.row)
            refuse_missing_figures(last, at, *field.record, found);
        else if (!path.empty() && field.fill &&
                 (found.empty() || (field.record && !ranges::all_of(field.record->fields, stands(found)))))
            last.refuse_missing(at, "write it with its source");
    }
}

/// Whether a table has its signature and says what it holds; what is missing is noted.
bool has_signature(const Entry& table) {
    return table.value().object() && table.text(table.field("format")) &&
           table.text(table.field("description"));
}

/// Adds a table's own block of sources to the bibliography.
void add_sources(Bibliography& sources, const Entry& table) {
    for (const Entry& entry : table.objects(table.field("sources"))) {
        Source source = read_record<Source>(entry);
        const auto [known, is_new] = sources.emplace(entry.name(), source);
        if (!is_new && known->second != source)
            entry.refuse("is already the key of another source", "choose another key");
    }
}

} // namespace

constinit const Record source_record =
    record_of<Source>("a source", "where a figure comes from", source_fields);

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
            entry.fill(table, row);
        }
        if (&file == &files.back() && reading.faults.empty()) {
            const auto roots =
                files | ranges::views::transform([](const Document& one) { return &one.root; });
            refuse_missing_figures(entry, {}, record, roots | ranges::to<Parts>());
            if (whole)
                whole(entry, table);
        }
        refuse_if_any(Origin::table, reading.faults);
    }
}

} // namespace ringfill
