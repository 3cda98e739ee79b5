#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// The processes that fillers are welded with, as the tables name them.
inline constexpr std::array<std::string_view, 7> process_words = {
    "gas_metal_arc",    "metal_cored_arc",  "flux_cored_arc", "self_shielded_arc",
    "manual_metal_arc", "gas_tungsten_arc", "torch_brazing"};

/// What is usual of a process, or of it with one transfer or one gas.
struct ProcessRow {
    std::string name;
    std::string process;                            ///< one of process_words
    std::string transfer;                           ///< empty: any
    std::string gas;                                ///< empty: any
    std::optional<SourcedRange<double>> efficiency; ///< deposited share of the filler, its range
    std::optional<Sourced<double>> dilution;        ///< share of what lies under in the metal of a bead
    std::optional<SourcedRange<double>> dilution_range;
};

/// Processes by their usual figures, and when a weld counts as the filler's own metal.
struct Processes {
    std::vector<ProcessRow> rows;
    /// A layer with no more of the base metal than this share counts as the filler's own.
    Sourced<double> base_left;
};

/// Reads processes.json, file after file; a later file corrects or adds entry by entry. Throws Faulty
/// (Origin::table).
Processes read_processes(const std::vector<Document>& files, const Bibliography& sources);

/// The row that says most of a process with a transfer and a gas and has the figure asked for: one for its
/// gas before one for its transfer before one for all of it. Null: none.
const ProcessRow* closest_row(const Processes& table, std::string_view process, std::string_view transfer,
                              std::string_view gas, bool (*has_figure)(const ProcessRow& row));

} // namespace ringfill
