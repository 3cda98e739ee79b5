#include <ringfill/material/family.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

using namespace metal_spans;

constexpr std::string_view structures[] = {"ferritic",  "martensitic", "austenitic",
                                           "cast_iron", "nickel",      "copper"};

void check_base(Base& base, const Entry& entry) {
    name_practice(base.practice,
                  base.name == unknown_metal ? "tabulated practice taken for unknown metal"
                                             : "tabulated practice for " + base.name,
                  entry);
}

constexpr auto base_record = table_record<Base, check_base>(
    "a base metal", must<&Base::standard>("standard", table_words, R"("EN ISO 683-1")"),
    field<&Base::group>("group", group_name, R"("carbon_steel")"),
    must<&Base::density>("density_kg_m3", density, R"([7850, "EN1993-1-2"])"),
    field<&Base::composition>("composition_pct", percent, R"({ "C": [0.46, "ISO683-1"] })"),
    field<&Base::typical>("typical_pct", percent, R"({ "C": [0.20, "practice"] })"),
    field<&Base::composition_min>("composition_min_pct", percent, R"({ "Cr": [17.5, "A240"] })"),
    must<&Base::structure>("structure", structures, R"("ferritic")"),
    field<&Base::yield_MPa>("yield_MPa", strength, R"([690, "EN10025-6"])"),
    field<&Base::tensile_MPa>("tensile_MPa", strength, R"([470, "EN10025-2"])"),
    field<&Base::specific_heat>("specific_heat_J_kgK", Span{50, 5'000}, R"([500, "EN10088-1"])"),
    field<&Base::conductivity>("conductivity_W_mK", Span{1, 500}, R"([15, "EN10088-1"])"),
    field<&Base::expansion_per_K>("expansion_per_K", Span{0, 1e-3}, R"([16e-6, "EN10088-1"])"),
    field<&Base::never_quenched>("never_quenched", "true"),
    field<&Base::tempering>("tempering_degC", degC, R"([540, "practice"])"),
    field<&Base::softens_over>("softens_over_degC", degC, R"([225, "practice"])"),
    field<&Base::interpass_max>("interpass_max_degC", degC, R"([350, "EN10293"])"),
    field<&Base::practice>("practice", preheat_group_record,
                           R"({ "rows": [{ "practice_degC": [150, 200, "practice"] }] })"),
    // Both name what else the family holds: read_rows() knows it.
    bare_field("practice_of", table_words, R"("4140")"),
    names_of_family("preheat_groups", 20, R"(["D1.1 B"])"),
    bare_field("listed_in", list_of(Span{}, 0, 20), R"([["D1.1 B", "D1.1"]])").holds(Kind::text, Shape::list),
    field<&Base::heat_group>("heat_group", group_name, R"("low_carbon_steel")"),
    field<&Base::by_thickness>("composition_by_thickness", list_of(ladle_row_record, 1, 10)),
    field<&Base::cev_max>("cev_max", list_of(thickness_row_record, 1, 20)),
    field<&Base::cev_since>("cev_since", Span{1900, 2100}, R"([2004, "EN10025-2"])"),
    field<&Base::cev_by_name>("cev_by_name", "true"),
    field<&Base::typical_cet>("typical_cet", list_of(thickness_row_record, 1, 20)),
    field<&Base::t85_s>("t85_s", Span{0, 10'000}, R"([5, 20, "practice"])"),
    field<&Base::heat_treatment>("heat_treatment", list_of(heat_treatment_record, 1, 10)),
    field<&Base::cool_to>("cool_to_degC", degC, R"([100, 150, "practice"])"),
    field<&Base::hold_is_ruled>("hold_is_ruled", "true"),
    field<&Base::advice>("advice", list_of(advice_record, 1, 10)));

/// The names in a list that are among the rows of the family; of its own family only, so that a name that is
/// not one cannot drop a row unseen.
template <class Row>
std::vector<std::string> names_among(const std::vector<Row>& rows, const Entry& entry, std::string_view field,
                                     std::string_view what) {
    const auto known = rows | ranges::views::transform(&Row::name) | ranges::to<std::vector>();
    std::vector<std::string> names;
    for (const Spot& spot : entry.elements(entry.field(field)))
        if (const std::string* name = spot.value->text(); name && ranges::contains(known, *name))
            names.push_back(*name);
        else if (!name && field == "preheat_groups")
            spot.refuse("is not the name of a table of preheat",
                        "write one of the family's preheat_groups in quotes");
        else
            spot.refuse(fmt::format("is not a {} of this family", what), suggest(name ? *name : "", known));
    return names;
}

/// The tables whose own list names a grade: pairs of a name of this family's tables and a source.
std::optional<ListedIn> listed_in(const Entry& entry, const Family& family) {
    if (!entry.has("listed_in"))
        return std::nullopt;
    ListedIn listed;
    for (const Spot& spot : entry.elements(entry.field("listed_in"))) {
        const auto* pair = spot.value->list();
        const std::string* name = pair && pair->size() == 2 ? pair->front().text() : nullptr;
        const std::string* source = name ? pair->back().text() : nullptr;
        if (!source || !ranges::contains(family.preheat_groups, *name, &PreheatGroup::name))
            spot.refuse("is no table of preheat of this family with a source",
                        R"(write ["the name of the table", "the source of the list"])");
        else if (!family.sources.contains(*source))
            spot.refuse("has a source that is not in the bibliography", "add it to the sources");
        else
            listed.emplace_back(*name, *source);
    }
    return listed;
}

/// The rows of another grade that a grade is treated as, told as such. That grade stands before it.
std::optional<PreheatGroup> practice_of(const Entry& entry, const std::string& name, const Family& family) {
    const auto other = entry.text(entry.field("practice_of"));
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
    practice.taken_from = *other;
    return practice;
}

/// The fillers are read by now; the tables of preheat, which name some, and the grades above stand before the
/// grades that name them.
void read_rows(Family& family, const Entry& entry) {
    for (const Entry& one : entry.objects(entry.field("preheat_groups"))) {
        auto group = read_record<PreheatGroup>(one);
        for (const std::string& filler : names_among(family.fillers, one, "fillers", "filler"))
            group.fillers.push_back(fmt::format("{}/{}", family.name, filler));
        put_row(family.preheat_groups, std::move(group));
    }
    for (const Entry& one : entry.objects(entry.field("bases"))) {
        auto base = read_record<Base>(one);
        if (!one.has("practice"))
            base.practice = practice_of(one, base.name, family);
        base.preheat_groups = names_among(family.preheat_groups, one, "preheat_groups", "table of preheat");
        base.listed_in = listed_in(one, family);
        if (base.heat_group.empty())
            base.heat_group = base.group;
        put_row(family.bases, std::move(base));
    }
    for (const Entry& one : entry.objects(entry.field("suits")))
        put_row(family.suits, read_record<Suit>(one));
}

void read_name(Family& family, const Entry& entry, const Field& field) {
    if (const auto named = entry.text(field); named && *named != family.name)
        entry.refuse("family", fmt::format("is not the family of this file, {}", family.name),
                     "name the file after its family");
}

constexpr Field usual_of(std::string_view kind) {
    return bare_field(kind, Span{}, "{ ... }").holds(Kind::object);
}
constexpr Field usual_fields[] = {usual_of("bases"), usual_of("solid"), usual_of("cored"), usual_of("stick"),
                                  usual_of("rod")};
constexpr Record usual_record{"what is usual of a family", "", usual_fields};

void check_usual(Family&, const Entry& entry, const Field& field) {
    entry.object(field); // the rows have taken it over; this checks its names
}

/// Rows that read_rows() puts into the family.
constexpr Field rows_of(std::string_view name, const Record& record) {
    return bare_field(name, record, "{ ... }").holds(Kind::object, Shape::named);
}

constexpr auto family_record = table_record<Family, read_rows>(
    "a material family", format_field<R"("ringfill-family/1")">(),
    must<&read_name>("family", table_words, R"("steel")"),
    must<&Family::description>("description", table_words, R"("what it holds")"), sources_field,
    field<&Family::has_rules>("has_rules", "true"), field<&check_usual>("usual", usual_record, "{ ... }"),
    rows_of("preheat_groups", preheat_group_record),
    field<&Family::heat_groups>("heat_groups", heat_group_record, "{ ... }"), rows_of("bases", base_record),
    field<&Family::fillers>("fillers", filler_record, "{ ... }"), rows_of("suits", suit_record));

} // namespace

Family read_family(const std::string& name, std::vector<Document> files, const Bibliography& sources) {
    Family family;
    family.name = name;
    family.sources = sources;
    for (Document& file : files) {
        if (&file != &files.front())
            refuse_idle_usual(file);
        file = with_usual(std::move(file));
        family.files.push_back(file.file);
    }
    fill_table(&family, &row_tag<Family>, files, sources, &family.sources, family_record, nullptr);
    family.replaced = replaced_rows(files, name);
    return family;
}

} // namespace ringfill
