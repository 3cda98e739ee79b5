#include <ringfill/table/suits.hpp>

#include <array>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/document/described.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array verdict_words = {"recommended"sv, "with_buffer"sv, "not_advised"sv};

constexpr std::array suit_fields = {
    Field{.name = "fillers",
          .kind = Kind::text,
          .shape = Shape::list,
          .required = true,
          .sample = R"(["carbon_steel"])",
          .least = 1,
          .most = 100},
    Field{.name = "bases",
          .kind = Kind::text,
          .shape = Shape::list,
          .required = true,
          .sample = R"(["low_carbon_steel"])",
          .least = 1,
          .most = 100},
    Field{.name = "verdict",
          .kind = Kind::word,
          .required = true,
          .sample = R"("recommended")",
          .words = verdict_words},
    Field{.name = "buffer",
          .kind = Kind::text,
          .shape = Shape::list,
          .sample = R"(["stainless/ER309L"])",
          .least = 1,
          .most = 20},
    Field{.name = "why", .required = true, .span = table_words, .sample = R"("it is of the same kind")"},
    Field{.name = "source", .required = true, .span = table_words, .sample = R"("practice")"},
};

constexpr std::array format = {"ringfill-suits/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-suits/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "suits",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &suit_record},
};
constexpr Record file_record{"the table of what suits", "", file_fields};

std::vector<std::string> read_names(const Entry& entry, std::string_view field) {
    std::vector<std::string> names;
    for (const auto& [path, value] : entry.elements(field))
        if (value->text() && !value->text()->empty())
            names.push_back(*value->text());
        else
            entry.refuse(*value, path, "is not a name", R"(write a group, or a name such as "steel/C45")");
    return names;
}

Verdict verdict_of(std::string_view word) {
    return word == "recommended"   ? Verdict::recommended
           : word == "with_buffer" ? Verdict::with_buffer
                                   : Verdict::not_advised;
}

/// 2 for its own name, 1 for its group, 0 when a rule does not know it.
int closeness(const std::vector<std::string>& known, const SuitName& one) {
    if (ranges::find(known, one.name) != known.end())
        return 2;
    return !one.group.empty() && ranges::find(known, one.group) != known.end() ? 1 : 0;
}

} // namespace

constinit const Record suit_record{"what suits", "", suit_fields};

Suit read_suit(const std::string& name, const Entry& entry, const Bibliography& sources) {
    Suit suit;
    suit.name = name;
    suit.fillers = read_names(entry, "fillers");
    suit.bases = read_names(entry, "bases");
    suit.verdict = verdict_of(entry.word("verdict").value_or(""));
    suit.buffer = read_names(entry, "buffer");
    suit.why = entry.text("why").value_or("");
    suit.source = SourcedReader(entry, sources).source_key("source");
    if (suit.verdict == Verdict::with_buffer && !entry.has("buffer"))
        entry.refuse(entry.value(), entry.path_of("buffer"), "is missing",
                     R"(name the fillers of the buffer, such as ["stainless/ER309L"])");
    if (suit.verdict != Verdict::with_buffer && entry.has("buffer"))
        entry.refuse("buffer", "stands beside a verdict without one",
                     R"(write the verdict "with_buffer" or take it out)");
    return suit;
}

std::vector<Suit> read_suits(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<Suit> suits;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("suits"))
                put_row(suits, read_suit(name, row, known));
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    return suits;
}

const Suit* find_suit(const std::vector<Suit>& rules, const SuitName& filler, const SuitName& base) {
    const Suit* best = nullptr;
    int best_rank = 0;
    for (const Suit& rule : rules) {
        const int of_filler = closeness(rule.fillers, filler);
        const int of_base = closeness(rule.bases, base);
        if (of_filler == 0 || of_base == 0)
            continue;
        const int rank = of_filler + of_base;
        if (!best || rank > best_rank || (rank == best_rank && rule.verdict > best->verdict)) {
            best = &rule;
            best_rank = rank;
        }
    }
    return best;
}

} // namespace ringfill
