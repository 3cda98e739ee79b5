#include <ringfill/table/cutting.hpp>

#include <array>
#include <optional>

#include <ringfill/fault/place.hpp>
#include <ringfill/table/describe_cutting.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double a_minute = 1 / factor::minute;

/// Where one figure of a file goes: its field, and how many SI units its unit is.
template <class Quantity>
struct Figure {
    std::string_view field;
    Sourced<Quantity> Cutting::*place;
    double factor;
};

template <class Quantity>
struct Range {
    std::string_view field;
    Sourced<std::pair<Quantity, Quantity>> Cutting::*place;
    double factor;
};

constexpr std::array speeds = {Figure<Speed>{"cutting_speed_m_min", &Cutting::cutting_speed, a_minute}};
constexpr std::array lengths = {
    Figure<Length>{"feed_mm", &Cutting::feed, 1e-3},
    Figure<Length>{"facing_feed_mm", &Cutting::facing_feed, 1e-3},
    Figure<Length>{"rough_cut_mm", &Cutting::rough_cut, 1e-3},
    Figure<Length>{"semi_finish_cut_mm", &Cutting::semi_finish_cut, 1e-3},
    Figure<Length>{"finish_cut_mm", &Cutting::finish_cut, 1e-3},
    Figure<Length>{"nose_radius_mm", &Cutting::nose_radius, 1e-3},
};
constexpr std::array times = {Figure<Time>{"edge_life_min", &Cutting::edge_life, factor::minute}};
constexpr std::array temperatures = {Figure<Temperature>{"rough_below_degC", &Cutting::rough_below, 1},
                                     Figure<Temperature>{"finish_below_degC", &Cutting::finish_below, 1}};
constexpr std::array steps = {Figure<Length>{"bit_step_mm", &Cutting::bit_step, 1e-3}};
constexpr std::array drives = {Figure<Power>{"drive_kW", &Cutting::bar_drive, 1e3}};
constexpr std::array turnings = {Range<Turning>{"small_bar_rpm", &Cutting::small_bar, a_minute},
                                 Range<Turning>{"large_bar_rpm", &Cutting::large_bar, a_minute}};
constexpr std::array feeds = {Range<Speed>{"axial_feed_mm_min", &Cutting::axial_feed, 1e-3 * a_minute}};
constexpr std::array bores = {Range<Length>{"bores_mm", &Cutting::bores, 1e-3}};

constexpr std::array hands = {
    std::pair{std::string_view("tool_set"), &Cutting::tool_set},
    std::pair{std::string_view("trim"), &Cutting::trim},
    std::pair{std::string_view("facing_head"), &Cutting::facing_head},
    std::pair{std::string_view("groove"), &Cutting::groove},
    std::pair{std::string_view("hole"), &Cutting::hole},
    std::pair{std::string_view("chamfer"), &Cutting::chamfer},
    std::pair{std::string_view("bar_move"), &Cutting::bar_move},
};

template <class Rows>
void read_figures(Cutting& cutting, const Rows& rows, const SourcedReader& reader) {
    for (const auto& row : rows)
        if (auto found = reader.quantity<decltype((cutting.*row.place).value)>(row.field, row.factor))
            cutting.*row.place = std::move(*found);
}

template <class Quantity>
std::optional<Sourced<std::pair<Quantity, Quantity>>> range_of(const SourcedReader& reader,
                                                               std::string_view field, double factor) {
    const auto found = reader.range(field);
    if (!found)
        return std::nullopt;
    return Sourced<std::pair<Quantity, Quantity>>{
        {in_si<Quantity>(found->value.first * factor), in_si<Quantity>(found->value.second * factor)},
        found->source};
}

template <class Rows>
void read_ranges(Cutting& cutting, const Rows& rows, const SourcedReader& reader) {
    for (const auto& row : rows)
        if (auto found = range_of<decltype((cutting.*row.place).value.first)>(reader, row.field, row.factor))
            cutting.*row.place = std::move(*found);
}

void read_cutting_block(Cutting& cutting, const SourcedReader& reader) {
    read_figures(cutting, speeds, reader);
    read_figures(cutting, lengths, reader);
    read_figures(cutting, times, reader);
    if (auto expansion = reader.number("expansion_per_K"))
        cutting.expansion = std::move(*expansion);
    for (const auto& row : temperatures)
        if (const auto found = reader.number(row.field))
            cutting.*row.place = {celsius(found->value), found->source};
}

void read_standing(Cutting& cutting, const Entry& standing, const Bibliography& sources) {
    for (const auto& [name, place] : hands) {
        const auto entry = standing.object(name);
        if (!entry)
            continue;
        const SourcedReader reader(*entry, sources);
        if (auto usual = reader.quantity<Time>("minutes", factor::minute))
            (cutting.*place).usual = std::move(*usual);
        if (auto range = range_of<Time>(reader, "range_minutes", factor::minute))
            (cutting.*place).range = std::move(*range);
        const StandingTime& read = cutting.*place;
        if (!read.usual.source.empty() && !read.range.source.empty() &&
            (read.usual.value < read.range.value.first || read.usual.value > read.range.value.second))
            entry->refuse("minutes", "lies outside its range", "write both as your shop finds them");
    }
}

template <class Rows>
void list_missing(std::vector<std::string>& missing, const Cutting& cutting, const Rows& rows,
                  std::string_view block) {
    for (const auto& row : rows)
        if ((cutting.*row.place).source.empty())
            missing.push_back(member_path(block, row.field));
}

void refuse_missing(const Cutting& cutting, Reading& reading, const Entry& entry) {
    if (!reading.faults.empty())
        return;
    std::vector<std::string> missing;
    list_missing(missing, cutting, speeds, "cutting");
    list_missing(missing, cutting, lengths, "cutting");
    list_missing(missing, cutting, times, "cutting");
    if (cutting.expansion.source.empty())
        missing.push_back("cutting.expansion_per_K");
    list_missing(missing, cutting, temperatures, "cutting");
    list_missing(missing, cutting, turnings, "bars");
    list_missing(missing, cutting, feeds, "bars");
    list_missing(missing, cutting, bores, "bars");
    list_missing(missing, cutting, steps, "bars");
    list_missing(missing, cutting, drives, "bars");
    for (const auto& [name, place] : hands)
        if ((cutting.*place).usual.source.empty() || (cutting.*place).range.source.empty())
            missing.push_back(member_path("standing", name));
    for (const std::string& path : missing)
        entry.refuse(entry.value(), path, "is missing", "write it with its source");
}

} // namespace

Cutting read_cutting(const std::vector<Document>& files, const Bibliography& sources) {
    Cutting cutting;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, cutting_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            if (const auto block = entry.object("cutting"))
                read_cutting_block(cutting, SourcedReader(*block, known));
            if (const auto block = entry.object("bars")) {
                const SourcedReader reader(*block, known);
                read_ranges(cutting, turnings, reader);
                read_ranges(cutting, feeds, reader);
                read_ranges(cutting, bores, reader);
                read_figures(cutting, steps, reader);
                read_figures(cutting, drives, reader);
            }
            if (const auto block = entry.object("standing"))
                read_standing(cutting, *block, known);
        }
        if (&file == &files.back())
            refuse_missing(cutting, reading, entry);
        refuse_if_any(Origin::table, reading.faults);
    }
    return cutting;
}

} // namespace ringfill
