#include <ringfill/table/source.hpp>

#include <array>

#include <ringfill/table/signature.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array kinds = {"standard"sv, "textbook"sv, "paper"sv, "regulation"sv,
                              "handbook"sv, "practice"sv, "own"sv};
constexpr std::array ways = {"read"sv, "restated"sv, "memory"sv};

constexpr std::array source_fields = {
    Field{.name = "title", .required = true, .span = table_words, .sample = R"("EN 1993-1-2")"},
    Field{.name = "edition", .required = true, .span = table_words, .sample = R"("2005")"},
    Field{.name = "place", .required = true, .span = table_words, .sample = R"("3.2.2")"},
    Field{.name = "kind", .kind = Kind::word, .required = true, .sample = R"("standard")", .words = kinds},
    Field{.name = "seen", .kind = Kind::word, .required = true, .sample = R"("read")", .words = ways},
};

constexpr std::array format = {"ringfill-sources/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-sources/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = "{ ... }",
          .record = &source_record},
};
constexpr Record file_record{"the bibliography", "", file_fields};

bool same(const Source& a, const Source& b) {
    return a.title == b.title && a.edition == b.edition && a.place == b.place && a.kind == b.kind &&
           a.seen == b.seen;
}

} // namespace

constinit const Record source_record{"a source", "where a figure comes from", source_fields};

void add_sources(Bibliography& sources, const Entry& table) {
    for (const auto& [key, entry] : table.named_objects("sources")) {
        Source source;
        source.title = entry.text("title").value_or("");
        source.edition = entry.text("edition").value_or("");
        source.place = entry.text("place").value_or("");
        source.kind = entry.word("kind").value_or("");
        source.seen = entry.word("seen").value_or("");
        const auto [known, is_new] = sources.emplace(key, source);
        if (!is_new && !same(known->second, source))
            entry.refuse(entry.value(), entry.path(), "is already the key of another source",
                         "choose another key");
    }
}

Bibliography read_sources(const std::vector<Document>& files) {
    Bibliography sources;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry))
            add_sources(sources, entry);
        refuse_if_any(Origin::table, reading.faults);
    }
    return sources;
}

} // namespace ringfill
