#include <ringfill/material/family.hpp>

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/describe_family.hpp>
#include <ringfill/table/put_row.hpp>
#include <ringfill/table/signature.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double metre_a_minute = 1 / factor::minute;

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
            range_of<Current>(reader, "current_A", 1),
            range_of<Speed>(reader, "travel_mm_min", 1e-3 * metre_a_minute)};
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

std::optional<Length> read_diameter(const std::string& name) {
    double mm = 0;
    const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), mm);
    if (error != std::errc() || end != name.data() + name.size() || !(mm > 0 && mm <= 10))
        return std::nullopt;
    return millimetres(mm);
}

WireSize read_size(const std::string& name, const Entry& entry, const Bibliography& sources) {
    WireSize size;
    size.name = name;
    if (const auto diameter = read_diameter(name))
        size.diameter = *diameter;
    else
        entry.refuse(entry.value(), entry.path(), "does not stand under a diameter",
                     R"(write the diameter in mm as the name, such as "1.0")");
    size.linear_mass = SourcedReader(entry, sources).quantity<LinearMass>("linear_mass_kg_m", 1);
    if (const auto melting = entry.object("melting")) {
        const SourcedReader reader(*melting, sources);
        size.melting = MeltingCurve{reader.number("a_mm_per_A_s").value_or(Sourced<double>{}),
                                    reader.number("b_per_A2_s").value_or(Sourced<double>{})};
    }
    size.feed_table = read_feed_table(entry, sources);
    if (const auto window = entry.object("window"))
        size.window = read_window(*window, sources);
    return size;
}

/// Solid wire has a density, cored wire a mass per metre for each diameter.
void check_mass(const Filler& filler, const Entry& entry) {
    if (!filler.cored && !filler.wire_density)
        entry.refuse(entry.value(), entry.path_of("wire_density_kg_m3"), "is missing",
                     "solid wire needs the density of the wire");
    for (const WireSize& size : filler.sizes)
        if (filler.cored && !size.linear_mass)
            entry.refuse("diameters_mm",
                         fmt::format("gives no linear_mass_kg_m for {}", printable(size.name, 20)),
                         "cored wire needs its mass per metre");
}

Filler read_filler(const std::string& name, const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    Filler filler;
    filler.name = name;
    filler.standard = entry.text("standard").value_or("");
    filler.cored = entry.word("form") == "cored";
    filler.wire_density = reader.quantity<Density>("wire_density_kg_m3", 1);
    filler.deposit_density =
        reader.quantity<Density>("deposit_density_kg_m3", 1).value_or(Sourced<Density>{});
    filler.efficiency = reader.number("efficiency").value_or(Sourced<double>{});
    filler.efficiency_by_gas = reader.named("efficiency_by_gas");
    filler.bead_ratio = reader.number("bead_ratio").value_or(Sourced<double>{});
    filler.stick_out = reader.quantity<Length>("stick_out_mm", 1e-3).value_or(Sourced<Length>{});
    for (const auto& [path, gas] : entry.elements("gases"))
        if (gas->text())
            filler.gases.push_back(*gas->text());
        else
            entry.refuse(*gas, path, "is not a gas", R"(write its designation, such as "M21")");
    filler.composition = reader.named("composition_pct");
    filler.hydrogen_ml_100g = reader.number("hydrogen_ml_100g");
    for (const auto& [size, row] : entry.named_objects("diameters_mm"))
        filler.sizes.push_back(read_size(size, row, sources));
    std::sort(filler.sizes.begin(), filler.sizes.end(),
              [](const WireSize& a, const WireSize& b) { return a.diameter < b.diameter; });
    for (std::size_t i = 1; i < filler.sizes.size(); ++i)
        if (filler.sizes[i].diameter == filler.sizes[i - 1].diameter)
            entry.refuse("diameters_mm",
                         fmt::format("gives {} mm twice", printable(filler.sizes[i].name, 20)),
                         "keep one of the two");
    check_mass(filler, entry);
    return filler;
}

/// The tables of preheat that list a base metal: of its own family only.
std::vector<std::string> read_group_names(const Entry& entry, const Family& family) {
    const auto known =
        family.preheat_groups | ranges::views::transform(&PreheatGroup::name) | ranges::to<std::vector>();
    std::vector<std::string> names;
    for (const auto& [path, group] : entry.elements("preheat_groups"))
        if (!group->text())
            entry.refuse(*group, path, "is not the name of a table of preheat",
                         "write one of the family's preheat_groups in quotes");
        else if (ranges::find(known, *group->text()) == known.end())
            entry.refuse(*group, path, "is not a table of preheat of this family",
                         suggest(*group->text(), known));
        else
            names.push_back(*group->text());
    return names;
}

std::optional<Sourced<Temperature>> temperature_of(const SourcedReader& reader, std::string_view field) {
    const auto found = reader.number(field);
    return found ? std::optional(Sourced<Temperature>{celsius(found->value), found->source}) : std::nullopt;
}

Base read_base(const std::string& name, const Entry& entry, const Family& family) {
    const SourcedReader reader(entry, family.sources);
    Base base;
    base.name = name;
    base.standard = entry.text("standard").value_or("");
    base.density = reader.quantity<Density>("density_kg_m3", 1).value_or(Sourced<Density>{});
    base.composition = reader.named("composition_pct");
    base.composition_min = reader.named("composition_min_pct");
    base.structure = entry.word("structure").value_or("");
    base.yield_MPa = reader.number("yield_MPa");
    base.tensile_MPa = reader.number("tensile_MPa");
    base.specific_heat = reader.quantity<SpecificHeat>("specific_heat_J_kgK", 1);
    base.conductivity = reader.quantity<Conductivity>("conductivity_W_mK", 1);
    base.expansion_per_K = reader.number("expansion_per_K");
    base.tempering = temperature_of(reader, "tempering_degC");
    base.interpass_max = temperature_of(reader, "interpass_max_degC");
    base.interpass_range_K = reader.number("interpass_range_K");
    if (const auto practice = entry.object("practice"))
        base.practice = read_preheat_group(name == unknown_metal
                                               ? std::string("tabulated practice taken for unknown metal")
                                               : fmt::format("tabulated practice for {}", name),
                                           *practice, family.sources);
    base.preheat_groups = read_group_names(entry, family);
    return base;
}

void read_file(Family& family, const Entry& entry) {
    if (const auto named = entry.text("family"); named && *named != family.name)
        entry.refuse("family", fmt::format("is not the family of this file, {}", family.name),
                     "name the file after its family");
    family.description = entry.text("description").value_or("");
    if (entry.has("sources"))
        add_sources(family.sources, entry);
    family.has_rules = entry.flag("has_rules").value_or(family.has_rules);
    for (const auto& [group, row] : entry.named_objects("preheat_groups"))
        put_row(family.preheat_groups, read_preheat_group(group, row, family.sources));
    for (const auto& [base, row] : entry.named_objects("bases"))
        put_row(family.bases, read_base(base, row, family));
    for (const auto& [filler, row] : entry.named_objects("fillers"))
        put_row(family.fillers, read_filler(filler, row, family.sources));
}

} // namespace

Family read_family(const std::string& name, const std::vector<Document>& files, const Bibliography& sources) {
    Family family;
    family.name = name;
    family.sources = sources;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, family_record, "");
        family.files.push_back(file.file);
        if (has_signature(entry))
            read_file(family, entry);
        refuse_if_any(Origin::table, reading.faults);
    }
    return family;
}

} // namespace ringfill
