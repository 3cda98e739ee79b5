#include <ringfill/material/filler.hpp>

#include <algorithm>
#include <numbers>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/material/filler_size.hpp>
#include <ringfill/table/figure.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

double grams(Mass mass) {
    return 1e3 * mass.value();
}

FillerForm form_of(std::string_view word) {
    return word == "cored"   ? FillerForm::cored
           : word == "stick" ? FillerForm::stick
           : word == "rod"   ? FillerForm::rod
                             : FillerForm::solid;
}

/// The process a form is welded with unless its row says otherwise.
std::string usual_process(const Filler& filler) {
    switch (filler.form) {
    case FillerForm::stick:
        return "manual_metal_arc";
    case FillerForm::rod:
        return "gas_tungsten_arc";
    case FillerForm::cored:
        return filler.gases.empty() ? "self_shielded_arc" : "flux_cored_arc";
    case FillerForm::solid:
        break;
    }
    return "gas_metal_arc";
}

void missing(const Entry& entry, std::string_view field, std::string remedy) {
    entry.refuse(entry.value(), entry.path_of(field), "is missing", std::move(remedy));
}

/// Solid wire, rods and the cores of electrodes have a density; only wire sticks out of a tip; only the metal
/// from a covering makes more than the core.
void check_form(const Filler& filler, const Entry& entry) {
    if (filler.form == FillerForm::solid && !filler.wire_density)
        missing(entry, "wire_density_kg_m3", "solid wire needs the density of the wire");
    if (filler.form == FillerForm::rod && !filler.wire_density)
        missing(entry, "wire_density_kg_m3", "a rod needs the density of its metal");
    if (filler.form == FillerForm::stick && !filler.wire_density)
        missing(entry, "wire_density_kg_m3", "an electrode needs the density of its core");
    if (is_wire(filler.form) && !entry.has("stick_out_mm"))
        missing(entry, "stick_out_mm", R"(write "stick_out_mm": [12, "practice"])");
    if (!is_wire(filler.form) && entry.has("stick_out_mm"))
        entry.refuse("stick_out_mm", "belongs to wire, not to an electrode or rod", "take it out");
    if (filler.form != FillerForm::stick && filler.efficiency.value > 1)
        entry.refuse("efficiency", "is over 1", "only a covered electrode lays more than its core");
    if (filler.form != FillerForm::stick && entry.has("efficiency_of"))
        entry.refuse("efficiency_of", "belongs to electrodes", "take it out");
    if (filler.form != FillerForm::stick && entry.has("covering"))
        entry.refuse("covering", "belongs to electrodes", "take it out");
    if (filler.form == FillerForm::stick && !filler.gases.empty())
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
        if (!size.piece || !size.piece->mass)
            continue;
        const Mass core = std::numbers::pi / 4 * size.diameter * size.diameter * filler.wire_density->value *
                          size.piece->length.value;
        const Mass laid = size.piece->mass->value * filler.efficiency.value;
        if (laid > core)
            entry.refuse("diameters_mm",
                         fmt::format("lets {} mm lay {:.1f} g of a core of {:.1f} g",
                                     printable(size.name, 20), grams(laid), grams(core)),
                         R"(weigh the electrode, or write "covering": "iron_powder" if it holds metal)");
    }
}

std::vector<std::string> read_gases(const Entry& entry) {
    std::vector<std::string> gases;
    for (const auto& [path, gas] : entry.elements("gases"))
        if (gas->text())
            gases.push_back(*gas->text());
        else
            entry.refuse(*gas, path, "is not a gas", R"(write its designation, such as "M21")");
    return gases;
}

void read_sizes(Filler& filler, const Entry& entry, const Bibliography& sources) {
    for (const auto& [size, row] : entry.named_objects("diameters_mm"))
        filler.sizes.push_back(read_filler_size(size, row, filler.form, sources));
    std::sort(filler.sizes.begin(), filler.sizes.end(),
              [](const WireSize& a, const WireSize& b) { return a.diameter < b.diameter; });
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

} // namespace

std::vector<TableAdvice> read_advice(const Entry& entry, const Bibliography& sources) {
    std::vector<TableAdvice> advice;
    for (const Entry& one : entry.objects("advice"))
        advice.push_back({one.word("kind").value_or(""), one.text("text").value_or(""),
                          SourcedReader(one, sources).source_key("source")});
    return advice;
}

Filler read_filler(const std::string& name, const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    Filler filler;
    filler.name = name;
    filler.standard = entry.text("standard").value_or("");
    filler.form = form_of(entry.word("form").value_or(""));
    filler.group = entry.text("group").value_or("");
    filler.wire_density = reader.quantity<Density>("wire_density_kg_m3", 1);
    filler.deposit_density =
        reader.quantity<Density>("deposit_density_kg_m3", 1).value_or(Sourced<Density>{});
    filler.efficiency = reader.number("efficiency").value_or(Sourced<double>{});
    filler.efficiency_of_covered = entry.word("efficiency_of") == "electrode";
    filler.iron_powder = entry.word("covering").has_value();
    filler.efficiency_range = reader.range("efficiency_range");
    filler.efficiency_by_gas = reader.named("efficiency_by_gas");
    filler.efficiency_by_transfer = reader.named("efficiency_by_transfer");
    filler.bead_ratio = reader.number("bead_ratio").value_or(Sourced<double>{});
    filler.stick_out = reader.quantity<Length>("stick_out_mm", 1e-3).value_or(Sourced<Length>{});
    filler.gases = read_gases(entry);
    filler.process = entry.word("process").value_or(usual_process(filler));
    filler.composition = reader.named("composition_pct");
    filler.typical = reader.named("typical_pct");
    filler.hydrogen_ml_100g = reader.number("hydrogen_ml_100g");
    if (const auto practice = entry.object("practice"))
        filler.practice = read_practice(fmt::format("what {} asks for itself", name), *practice, sources);
    if (const auto most = reader.number("interpass_max_degC"))
        filler.interpass_max = Sourced<Temperature>{celsius(most->value), most->source};
    filler.advice = read_advice(entry, sources);
    read_sizes(filler, entry, sources);
    check_form(filler, entry);
    check_laid(filler, entry);
    return filler;
}

} // namespace ringfill
