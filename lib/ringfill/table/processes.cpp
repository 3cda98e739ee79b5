#include <ringfill/table/processes.hpp>

#include <ringfill/document/described.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span share{0, 0.9, true}; // at 1 no layer is ever the filler's own
constexpr Span recovery{0, 2.5, true};
constexpr std::array transfer_words = {"short"sv, "pulse"sv, "spray"sv, "globular"sv};

constexpr std::array row_fields = {
    Field{.name = "process",
          .kind = Kind::word,
          .required = true,
          .sample = R"("gas_metal_arc")",
          .words = process_words},
    Field{.name = "transfer", .kind = Kind::word, .sample = R"("short")", .words = transfer_words},
    Field{.name = "gas", .span = table_words, .sample = R"("C1")"},
    Field{.name = "efficiency_range",
          .kind = Kind::sourced_range,
          .span = recovery,
          .sample = R"([0.90, 0.93, "practice"])"},
    Field{.name = "dilution", .kind = Kind::sourced, .span = share, .sample = R"([0.2, "practice"])"},
    Field{.name = "dilution_range",
          .kind = Kind::sourced_range,
          .span = share,
          .sample = R"([0.1, 0.3, "practice"])"},
};
constexpr Record row_record{"a process", "", row_fields};

constexpr std::array format = {"ringfill-processes/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-processes/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "base_left", .kind = Kind::sourced, .span = share, .sample = R"([0.05, "practice"])"},
    Field{.name = "processes",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &row_record},
};
constexpr Record file_record{"the table of processes", "", file_fields};

ProcessRow read_row(const std::string& name, const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    ProcessRow row;
    row.name = name;
    row.process = entry.word("process").value_or("");
    row.transfer = entry.word("transfer").value_or("");
    row.gas = entry.text("gas").value_or("");
    row.efficiency = reader.range("efficiency_range");
    row.dilution = reader.number("dilution");
    row.dilution_range = reader.range("dilution_range");
    if (row.dilution && row.dilution_range &&
        (row.dilution->value < row.dilution_range->value.first ||
         row.dilution->value > row.dilution_range->value.second))
        entry.refuse("dilution", "lies outside its range", "widen the range or correct the figure");
    return row;
}

/// The row that fits closest among those that have a figure.
template <class Has>
const ProcessRow* closest(const Processes& table, std::string_view process, std::string_view transfer,
                          std::string_view gas, Has has) {
    const ProcessRow* best = nullptr;
    int best_rank = -1;
    for (const ProcessRow& row : table.rows) {
        if (row.process != process || (!row.transfer.empty() && row.transfer != transfer) ||
            (!row.gas.empty() && row.gas != gas) || !has(row))
            continue;
        const int rank = (row.gas.empty() ? 0 : 2) + (row.transfer.empty() ? 0 : 1);
        if (rank > best_rank) {
            best = &row;
            best_rank = rank;
        }
    }
    return best;
}

} // namespace

Processes read_processes(const std::vector<Document>& files, const Bibliography& sources) {
    Processes processes;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            if (const auto left = SourcedReader(entry, known).number("base_left"))
                processes.base_left = *left;
            for (const auto& [name, row] : entry.named_objects("processes"))
                put_row(processes.rows, read_row(name, row, known));
            if (processes.base_left.source.empty() && reading.faults.empty())
                entry.refuse(entry.value(), "base_left", "is missing",
                             R"(write "base_left": [0.05, "practice"])");
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    return processes;
}

const ProcessRow* efficiency_row(const Processes& table, std::string_view process, std::string_view transfer,
                                 std::string_view gas) {
    return closest(table, process, transfer, gas,
                   [](const ProcessRow& row) { return row.efficiency.has_value(); });
}

const ProcessRow* dilution_row(const Processes& table, std::string_view process, std::string_view transfer,
                               std::string_view gas) {
    return closest(table, process, transfer, gas,
                   [](const ProcessRow& row) { return row.dilution.has_value(); });
}

} // namespace ringfill
