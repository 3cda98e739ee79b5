#include <ringfill/table/processes.hpp>

#include <range/v3/algorithm/max_element.hpp>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr Span dilution_share{0, 0.9, true}; // at 1 no layer is ever the filler's own
constexpr Span recovery{0, 2.5, true};
constexpr std::string_view transfer_words[] = {"short", "pulse", "spray", "globular"};

void check_process(ProcessRow& row, const Entry& entry) {
    if (row.dilution && row.dilution_range && is_outside(*row.dilution, *row.dilution_range))
        entry.refuse("dilution", "lies outside its range", "widen the range or correct the figure");
}

void check_processes(Processes& table, const Entry& file) {
    if (table.base_left.source.empty() && file.reading().faults.empty())
        file.refuse_missing("base_left", R"(write "base_left": [0.05, "practice"])");
}

constexpr auto process_record = table_record<ProcessRow, check_process>(
    "a process", field<&ProcessRow::process>("process", process_words, R"("gas_metal_arc")").required(),
    field<&ProcessRow::transfer>("transfer", transfer_words, R"("short")"),
    field<&ProcessRow::gas>("gas", table_words, R"("C1")"),
    field<&ProcessRow::efficiency>("efficiency_range", recovery, R"([0.90, 0.93, "practice"])"),
    field<&ProcessRow::dilution>("dilution", dilution_share, R"([0.2, "practice"])"),
    field<&ProcessRow::dilution_range>("dilution_range", dilution_share, R"([0.1, 0.3, "practice"])"));

} // namespace

Processes read_processes(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<Processes, R"("ringfill-processes/1")", check_processes>(
        files, sources, "the table of processes",
        field<&Processes::base_left>("base_left", dilution_share, R"([0.05, "practice"])"),
        field<&Processes::rows>("processes", process_record, "{ ... }"));
}

const ProcessRow* closest_row(const Processes& table, std::string_view process, std::string_view transfer,
                              std::string_view gas, bool (*has_figure)(const ProcessRow& row)) {
    const auto fits = [](std::string_view known, std::string_view asked) {
        return known.empty() || known == asked;
    };
    const auto rank = [&](const ProcessRow& row) {
        const bool is_for_it = row.process == process && fits(row.transfer, transfer) && fits(row.gas, gas);
        return !is_for_it || !has_figure(row)
                   ? 0
                   : 1 + (row.gas.empty() ? 0 : 2) + (row.transfer.empty() ? 0 : 1);
    };
    const auto best = ranges::max_element(table.rows, {}, rank);
    return best != table.rows.end() && rank(*best) > 0 ? &*best : nullptr;
}

} // namespace ringfill
