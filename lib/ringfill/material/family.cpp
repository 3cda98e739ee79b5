#include <ringfill/material/family.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/material/describe_family.hpp>
#include <ringfill/material/usual.hpp>
#include <ringfill/document/described.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

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

/// The fillers that a table of preheat is for: of its own family only, so that a name that is not one cannot
/// drop the table unseen.
std::vector<std::string> read_group_fillers(const Entry& entry, const Family& family) {
    const auto known = family.fillers | ranges::views::transform(&Filler::name) | ranges::to<std::vector>();
    std::vector<std::string> names;
    for (const auto& [path, filler] : entry.elements("fillers"))
        if (!filler->text() || ranges::find(known, *filler->text()) == known.end())
            entry.refuse(*filler, path, "is not a filler of this family",
                         suggest(filler->text() ? *filler->text() : "", known));
        else
            names.push_back(fmt::format("{}/{}", family.name, *filler->text()));
    return names;
}

std::optional<Sourced<Temperature>> temperature_of(const SourcedReader& reader, std::string_view field) {
    const auto found = reader.number(field);
    return found ? std::optional(Sourced<Temperature>{celsius(found->value), found->source}) : std::nullopt;
}

/// The rows of another grade that a grade is treated as, told as such. That grade stands before it.
std::optional<PreheatGroup> practice_of(const Entry& entry, const std::string& name, const Family& family) {
    const auto other = entry.text("practice_of");
    if (!other)
        return std::nullopt;
    const auto found = ranges::find(family.bases, *other, &Base::name);
    if (found == family.bases.end() || !found->practice) {
        entry.refuse("practice_of", "is no grade with a practice above this one",
                     "name one that stands before it in the table, or write the rows under practice");
        return std::nullopt;
    }
    PreheatGroup practice = *found->practice;
    practice.name = fmt::format("tabulated practice for {}, taken for {}", *other, name);
    return practice;
}

Base read_base(const std::string& name, const Entry& entry, const Family& family) {
    const SourcedReader reader(entry, family.sources);
    Base base;
    base.name = name;
    base.standard = entry.text("standard").value_or("");
    base.group = entry.text("group").value_or("");
    base.density = reader.quantity<Density>("density_kg_m3", 1).value_or(Sourced<Density>{});
    base.composition = reader.named("composition_pct");
    base.typical = reader.named("typical_pct");
    base.composition_min = reader.named("composition_min_pct");
    base.structure = entry.word("structure").value_or("");
    base.yield_MPa = reader.number("yield_MPa");
    base.tensile_MPa = reader.number("tensile_MPa");
    base.specific_heat = reader.quantity<SpecificHeat>("specific_heat_J_kgK", 1);
    base.conductivity = reader.quantity<Conductivity>("conductivity_W_mK", 1);
    base.expansion_per_K = reader.number("expansion_per_K");
    base.never_quenched = entry.flag("never_quenched").value_or(false);
    base.tempering = temperature_of(reader, "tempering_degC");
    base.softens_over = temperature_of(reader, "softens_over_degC");
    base.interpass_max = temperature_of(reader, "interpass_max_degC");
    base.interpass_range_K = reader.number("interpass_range_K");
    if (const auto practice = entry.object("practice"))
        base.practice =
            read_practice(name == unknown_metal ? std::string("tabulated practice taken for unknown metal")
                                                : fmt::format("tabulated practice for {}", name),
                          *practice, family.sources);
    else
        base.practice = practice_of(entry, name, family);
    base.preheat_groups = read_group_names(entry, family);
    base.advice = read_advice(entry, family.sources);
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
    entry.object("usual"); // its rows have taken it over; this checks its names
    for (const auto& [filler, row] : entry.named_objects("fillers"))
        put_row(family.fillers, read_filler(filler, row, family.sources));
    for (const auto& [name, row] : entry.named_objects("preheat_groups")) {
        PreheatGroup group = read_preheat_group(name, row, family.sources);
        group.fillers = read_group_fillers(row, family);
        put_row(family.preheat_groups, std::move(group));
    }
    for (const auto& [base, row] : entry.named_objects("bases"))
        put_row(family.bases, read_base(base, row, family));
    for (const auto& [suit, row] : entry.named_objects("suits"))
        put_row(family.suits, read_suit(suit, row, family.sources));
}

} // namespace

Family read_family(const std::string& name, std::vector<Document> files, const Bibliography& sources) {
    Family family;
    family.name = name;
    family.sources = sources;
    for (Document& read : files) {
        const Document file = with_usual(std::move(read));
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
