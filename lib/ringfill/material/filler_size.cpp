#include <ringfill/material/filler_size.hpp>

#include <charconv>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/table/figure.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double metre_a_minute = 1 / factor::minute;
constexpr double kilogram_an_hour = 1 / factor::hour;

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

Window read_window(const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    return {range_of<Speed>(reader, "wire_feed_m_min", metre_a_minute),
            range_of<Current>(reader, "current_A", 1), range_of<Voltage>(reader, "voltage_V", 1),
            range_of<Speed>(reader, "travel_mm_min", 1e-3 * metre_a_minute),
            reader.quantity<Current>("spray_from_A", 1)};
}

std::vector<std::pair<std::string, Window>> read_windows(const Entry& size, const Bibliography& sources) {
    std::vector<std::pair<std::string, Window>> windows;
    if (const auto by_transfer = size.object("windows"))
        for (const std::string_view transfer : {"short", "pulse", "spray", "globular"})
            if (const auto window = by_transfer->object(transfer))
                windows.emplace_back(transfer, read_window(*window, sources));
    return windows;
}

std::vector<FeedPoint> read_feed_table(const Entry& size, const Bibliography& sources) {
    std::vector<FeedPoint> points;
    for (const Entry& entry : size.objects("feed_table")) {
        const SourcedReader reader(entry, sources);
        const auto feed = reader.quantity<Speed>("wire_feed_m_min", metre_a_minute);
        const auto current = reader.quantity<Current>("current_A", 1);
        if (!feed || !current)
            continue;
        if (!points.empty() && (feed->value <= points.back().feed || current->value <= points.back().current))
            entry.refuse(entry.value(), entry.path(), "does not rise over the point before it",
                         "list the points with feed and current rising");
        points.push_back({feed->value, current->value, feed->source});
    }
    return points;
}

std::vector<RatePoint> read_rates(const Entry& size, const Bibliography& sources) {
    std::vector<RatePoint> points;
    for (const Entry& entry : size.objects("rate_table")) {
        const SourcedReader reader(entry, sources);
        const auto current = reader.quantity<Current>("current_A", 1);
        const auto rate = reader.quantity<MassFlow>("rate_kg_h", kilogram_an_hour);
        if (!current || !rate)
            continue;
        if (!points.empty() && (current->value <= points.back().current || rate->value <= points.back().rate))
            entry.refuse(entry.value(), entry.path(), "does not rise over the point before it",
                         "list the points with current and rate rising");
        points.push_back({current->value, rate->value, rate->source});
    }
    return points;
}

Piece read_piece(const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    Piece piece;
    piece.length = reader.quantity<Length>("length_mm", 1e-3).value_or(Sourced<Length>{});
    piece.stub = reader.quantity<Length>("stub_mm", 1e-3).value_or(Sourced<Length>{});
    piece.mass = reader.quantity<Mass>("mass_g", 1e-3);
    piece.per_A = reader.number("rate_kg_h_A");
    if (piece.per_A)
        piece.per_A->value *= kilogram_an_hour;
    piece.rates = read_rates(entry, sources);
    piece.range = range_of<MassFlow>(reader, "rate_kg_h", kilogram_an_hour);
    return piece;
}

void refuse_fields(const Entry& entry, std::initializer_list<std::string_view> fields, std::string_view of) {
    for (const std::string_view field : fields)
        if (entry.has(field))
            entry.refuse(field, fmt::format("does not go with {}", of), "take it out");
}

/// A wire has a melting curve, an electrode a length, a stub, a mass and a rate, a rod a length and a stub.
void check_fields(const Entry& entry, FillerForm form) {
    const auto need = [&](std::string_view field, std::string_view of) {
        if (!entry.has(field))
            entry.refuse(entry.value(), entry.path_of(field), "is missing", fmt::format("{} needs it", of));
    };
    if (is_wire(form)) {
        refuse_fields(entry, {"length_mm", "stub_mm", "mass_g", "rate_kg_h_A", "rate_table", "rate_kg_h"},
                      "wire off a spool");
        return;
    }
    const std::string_view of = form == FillerForm::stick ? "an electrode" : "a rod";
    refuse_fields(entry, {"linear_mass_kg_m", "melting", "feed_table", "windows"}, of);
    need("length_mm", of);
    need("stub_mm", of);
    if (form == FillerForm::rod) {
        refuse_fields(entry, {"rate_kg_h_A", "rate_table"}, of);
        return;
    }
    need("mass_g", of);
    refuse_fields(entry, {"rate_kg_h"}, of);
    if (entry.has("rate_kg_h_A") == entry.has("rate_table"))
        entry.refuse(entry.value(), entry.path(),
                     entry.has("rate_table") ? "gives its rate twice" : "gives no rate",
                     R"(write either "rate_kg_h_A" or "rate_table")");
}

std::optional<Length> read_diameter(const std::string& name) {
    double mm = 0;
    const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), mm);
    if (error != std::errc() || end != name.data() + name.size() || !(mm > 0 && mm <= 10))
        return std::nullopt;
    return millimetres(mm);
}

} // namespace

WireSize read_filler_size(const std::string& name, const Entry& entry, FillerForm form,
                          const Bibliography& sources) {
    WireSize size;
    size.name = name;
    if (const auto diameter = read_diameter(name))
        size.diameter = *diameter;
    else
        entry.refuse(entry.value(), entry.path(), "does not stand under a diameter",
                     R"(write the diameter in mm as the name, such as "1.0")");
    check_fields(entry, form);
    size.linear_mass = SourcedReader(entry, sources).quantity<LinearMass>("linear_mass_kg_m", 1);
    if (const auto melting = entry.object("melting")) {
        const SourcedReader reader(*melting, sources);
        size.melting = MeltingCurve{reader.number("a_mm_per_A_s").value_or(Sourced<double>{}),
                                    reader.number("b_per_A2_s").value_or(Sourced<double>{})};
    }
    size.feed_table = read_feed_table(entry, sources);
    if (!is_wire(form)) {
        size.piece = read_piece(entry, sources);
        if (size.piece->stub.value >= size.piece->length.value && entry.has("length_mm"))
            entry.refuse("stub_mm", "is as long as the whole", "write the piece that is thrown away");
    }
    if (const auto window = entry.object("window"))
        size.window = read_window(*window, sources);
    size.windows = read_windows(entry, sources);
    return size;
}

} // namespace ringfill
