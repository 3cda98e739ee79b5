#include <ringfill/material/filler.hpp>

#include <numbers>

#include <fmt/format.h>

#include <range/v3/algorithm/sort.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/table/figure.hpp>
#include <ringfill/table/processes.hpp>
#include <ringfill/table/suits.hpp>

namespace ringfill {
namespace {

using namespace metal_spans;

constexpr Span ratio{0, 1, true};
constexpr Span recovery{0, 2.5, true}; // covered electrodes with iron powder give more than their core
constexpr std::string_view forms[] = {"solid", "cored", "stick", "rod"};
constexpr std::string_view advice_words[] = {"soak", "slow_cooling", "interpass", "technique", "post_heat"};
constexpr std::string_view efficiency_words[] = {"core", "electrode"};
constexpr std::string_view covering_words[] = {"iron_powder"};

double grams(Mass mass) {
    return 1e3 * mass.value();
}

constexpr Field advice_fields[] = {
    must<&Advice::kind>("kind", advice_words, R"("technique")"),
    must<&Advice::text>("text", table_words, R"("Lay short beads.")"),
    source_field<&Advice::source>("source", R"("practice")").required(),
};

/// The process each form is welded with unless its row says otherwise; a cored wire without gas is
/// self-shielded.
constexpr std::string_view usual_processes[] = {"gas_metal_arc", "flux_cored_arc", "manual_metal_arc",
                                                "gas_tungsten_arc"};
constexpr std::string_view density_needed[] = {"solid wire needs the density of the wire", "",
                                               "an electrode needs the density of its core",
                                               "a rod needs the density of its metal"};

/// Solid wire, rods and the cores of electrodes have a density; only wire sticks out of a tip; only the metal
/// from a covering makes more than the core.
void check_form(const Filler& filler, const Entry& entry) {
    const bool is_stick = filler.form == FillerForm::stick;
    if (const std::string_view needs = density_needed[static_cast<std::size_t>(filler.form)];
        !needs.empty() && !filler.wire_density)
        entry.refuse_missing("wire_density_kg_m3", std::string(needs));
    if (is_wire(filler.form) && !entry.has("stick_out_mm"))
        entry.refuse_missing("stick_out_mm", R"(write "stick_out_mm": [12, "practice"])");
    if (!is_wire(filler.form) && entry.has("stick_out_mm"))
        entry.refuse("stick_out_mm", "belongs to wire, not to an electrode or rod", "take it out");
    if (!is_stick && filler.efficiency.value > 1)
        entry.refuse("efficiency", "is over 1", "only a covered electrode lays more than its core");
    for (const std::string_view field : {"efficiency_of", "covering"})
        if (!is_stick && entry.has(field))
            entry.refuse(field, "belongs to electrodes", "take it out");
    if (is_stick && !filler.gases.empty())
        entry.refuse("gases", "belong to wires and rods, not to an electrode", R"(write "gases": [])");
    if (const auto& range = filler.efficiency_range; range && (filler.efficiency.value < range->value.first ||
                                                               filler.efficiency.value > range->value.second))
        entry.refuse("efficiency", "lies outside its range", "widen the range or correct the figure");
}

/// An electrode lays no more metal than its core holds, unless its covering brings some. Of the efficiency of
/// the core alone the figure itself says so.
void check_laid(const Filler& filler, const Entry& entry) {
    if (!filler.efficiency_of_covered || filler.iron_powder || !filler.wire_density)
        return;
    for (const WireSize& size : filler.sizes) {
        if (!size.mass)
            continue;
        const Mass core = std::numbers::pi / 4 * size.diameter * size.diameter * filler.wire_density->value *
                          size.length.value;
        const Mass laid = size.mass->value * filler.efficiency.value;
        if (laid > core)
            entry.refuse("diameters_mm",
                         fmt::format("lets {} mm lay {:.1f} g of a core of {:.1f} g",
                                     printable(size.name, 20), grams(laid), grams(core)),
                         R"(weigh the electrode, or write "covering": "iron_powder" if it holds metal)");
    }
}

void read_gases(Filler& filler, const Entry& entry, const Field& field) {
    for (const Spot& gas : entry.elements(field))
        if (const std::string* text = gas.value->text())
            filler.gases.push_back(*text);
        else
            gas.refuse("is not a gas", R"(write its designation, such as "M21")");
}

void read_covering(Filler& filler, const Entry& entry, const Field& field) {
    filler.iron_powder = entry.text(field).has_value();
}

void read_sizes(Filler& filler, const Entry& entry, const Field& field) {
    const std::vector<Entry> sizes = entry.objects(field);
    filler.sizes.reserve(sizes.size());
    for (const Entry& size : sizes)
        filler.sizes.push_back(read_filler_size(size, filler.form));
    ranges::sort(filler.sizes, {}, &WireSize::diameter);
    for (std::size_t i = 1; i < filler.sizes.size(); ++i)
        if (filler.sizes[i].diameter == filler.sizes[i - 1].diameter)
            entry.refuse("diameters_mm",
                         fmt::format("gives {} mm twice", printable(filler.sizes[i].name, 20)),
                         "keep one of the two");
    for (const WireSize& size : filler.sizes)
        if (filler.cored() && !size.linear_mass)
            entry.refuse("diameters_mm",
                         fmt::format("gives no linear_mass_kg_m for {}", printable(size.name, 20)),
                         "cored wire needs its mass per metre");
}

void check_filler(Filler& filler, const Entry& entry) {
    if (filler.process.empty())
        filler.process = filler.cored() && filler.gases.empty()
                             ? "self_shielded_arc"
                             : usual_processes[static_cast<std::size_t>(filler.form)];
    name_practice(filler.practice, fmt::format("what {} asks for itself", filler.name), entry);
    check_form(filler, entry);
    check_laid(filler, entry);
}

constexpr Field filler_fields[] = {
    must<&Filler::standard>("standard", table_words, R"("AWS A5.18")"),
    must<&Filler::form>("form", forms, R"("solid")"),
    field<&Filler::process>("process", process_words, R"("metal_cored_arc")"),
    field<&Filler::group>("group", group_name, R"("carbon_steel")"),
    field<&Filler::wire_density>("wire_density_kg_m3", density, R"([7850, "EN1993-1-2"])"),
    must<&Filler::deposit_density>("deposit_density_kg_m3", density, R"([7850, "EN1993-1-2"])"),
    must<&Filler::efficiency>("efficiency", recovery, R"([0.92, "efficiency-articles"])"),
    field<&Filler::efficiency_of_covered>("efficiency_of", efficiency_words, R"("core")"),
    field<&read_covering>("covering", covering_words, R"("iron_powder")"),
    field<&Filler::efficiency_range>("efficiency_range", recovery, R"([0.90, 0.93, "efficiency-articles"])"),
    field<&Filler::efficiency_by_gas>("efficiency_by_gas", ratio,
                                      R"({ "C1": [0.90, "efficiency-articles"] })"),
    field<&Filler::efficiency_by_transfer>("efficiency_by_transfer", ratio,
                                           R"({ "spray": [0.98, "efficiency-articles"] })"),
    must<&Filler::bead_ratio>("bead_ratio", positive, R"([3.0, "Suryakumar"])"),
    field<&Filler::stick_out>("stick_out_mm", positive, R"([12, "practice"])"),
    must<&read_gases>("gases", list_of(Span{}, 0, 50), R"(["M21"])").holds(Kind::text, Shape::list),
    field<&Filler::hardness_HV>("hardness_HV", positive, R"([390, "EN14700-hardness"])"),
    field<&Filler::composition>("composition_pct", percent, R"({ "C": [0.15, "A5.18"] })"),
    field<&Filler::composition_min>("composition_min_pct", percent, R"({ "Mn": [1.40, "A5.18"] })"),
    field<&Filler::deposit>("deposit_pct", percent, R"({ "C": [0.08, "practice"] })"),
    field<&Filler::typical>("typical_pct", percent,
                            R"({ "C": [0.02, "practice"], "Cr": [23.5, "practice"] })"),
    field<&Filler::hydrogen_ml_100g>("hydrogen_ml_100g", hydrogen, R"([5, "EN1011-2"])"),
    field<&Filler::practice>("practice", preheat_group_record,
                             R"({ "rows": [{ "practice_degC": [100, 250, "EN14700"] }] })"),
    field<&Filler::interpass_max>("interpass_max_degC", degC, R"([150, "practice"])"),
    field<&Filler::advice>("advice", list_of(advice_record, 1, 10)),
    must<&read_sizes>("diameters_mm", filler_size_record, R"({ "1.0": { ... } })")
        .holds(Kind::object, Shape::named)
        .some(),
};

} // namespace

const Record advice_record = record_of<Advice>("an advice", "", advice_fields);
const Record filler_record = record_of<Filler, check_filler>("a filler", "", filler_fields);

} // namespace ringfill
