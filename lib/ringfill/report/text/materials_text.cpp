#include <ringfill/report/text/materials_text.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/heat/preheat_rows.hpp>
#include <ringfill/report/text/columns.hpp>
#include <ringfill/report/text/entry_page.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

std::string_view form_words(FillerForm form) {
    switch (form) {
    case FillerForm::solid:
        return "solid wire";
    case FillerForm::cored:
        return "cored wire";
    case FillerForm::stick:
        return "covered electrode";
    case FillerForm::rod:
        break;
    }
    return "rod";
}

/// Of an electrode it is said of what: the two measures differ by a third.
std::string efficiency_words(const Filler& filler) {
    if (filler.form != FillerForm::stick)
        return "efficiency";
    return !filler.efficiency_of_covered ? "efficiency, of the core"
           : filler.iron_powder          ? "efficiency, of core and covering with iron powder"
                                         : "efficiency, of core and covering";
}

template <class Row>
std::string names_of(const std::vector<Row>& rows) {
    return fmt::format(
        "{}", fmt::join(rows | ranges::views::transform(&Row::name) | ranges::to<std::vector>(), ", "));
}

/// Length, stub, mass and rate of an electrode or rod.
void write_piece(EntryPage& page, const std::string& size, const Piece& piece) {
    page.row(size + "length", show(piece.length.value, UnitSystem::metric), piece.length.source);
    page.row(size + "stub", show(piece.stub.value, UnitSystem::metric), piece.stub.source);
    if (piece.mass)
        page.row(size + "mass of one", show(piece.mass->value, UnitSystem::metric), piece.mass->source);
    if (piece.per_A)
        page.row(size + "metal laid",
                 fmt::format("{:.3g} kg/h for each 100 A", 100 * piece.per_A->value * factor::hour),
                 piece.per_A->source);
    for (const RatePoint& point : piece.rates)
        page.row(fmt::format("{}at {}", size, show(point.current)), show(point.rate, UnitSystem::metric),
                 point.source);
    page.range(size + "metal laid", piece.range,
               [](MassFlow rate) { return show(rate, UnitSystem::metric); });
}

void write_window(EntryPage& page, const std::string& size, const Window& window) {
    page.range(size + "wire feed", window.wire_feed,
               [](Speed s) { return show_feed(s, UnitSystem::metric); });
    page.range(size + "current", window.current, [](Current c) { return show(c); });
    page.range(size + "voltage", window.voltage,
               [](Voltage v) { return fmt::format("{:.3g} V", v.value()); });
    page.range(size + "travel", window.travel, [](Speed s) { return show(s, UnitSystem::metric); });
    if (window.spray_from)
        page.row(size + "from", show(window.spray_from->value), window.spray_from->source);
}

void write_size(EntryPage& page, const WireSize& size) {
    const std::string wire = size.name + " mm: ";
    if (size.linear_mass)
        page.row(wire + "mass", fmt::format("{:.4g} g/m", size.linear_mass->value.value() * 1e3),
                 size.linear_mass->source);
    if (size.melting) {
        page.row(wire + "melting a", fmt::format("{:.4g} mm/(A s)", size.melting->a.value),
                 size.melting->a.source);
        page.row(wire + "melting b", fmt::format("{:.4g} 1/(A² s)", size.melting->b.value),
                 size.melting->b.source);
    }
    if (size.piece)
        write_piece(page, wire, *size.piece);
    write_window(page, wire, size.window);
    for (const auto& [transfer, window] : size.windows)
        write_window(page, fmt::format("{}{}, ", wire, transfer), window);
}

std::string temperature(Temperature value) {
    return show(value, UnitSystem::metric);
}

/// "up to 25 mm, C up to 0.3 %" or "all", and what is asked there.
void write_rows(EntryPage& page, const PreheatGroup& group, bool of_filler = false) {
    for (const PreheatRow& row : group.rows) {
        std::string limits;
        const auto add = [&](const std::string& limit) { limits += (limits.empty() ? "" : ", ") + limit; };
        if (row.up_to)
            add("up to " + show(row.up_to->value, UnitSystem::metric));
        if (row.carbon_up_to_pct)
            add(fmt::format("C up to {:.4g} %", row.carbon_up_to_pct->value));
        if (row.tensile_up_to_MPa)
            add(fmt::format("up to {:.4g} MPa", row.tensile_up_to_MPa->value));
        std::string figures = fmt::format("at least {}", temperature(row.minimum.value));
        if (of_filler && hotter_than_counts(row))
            figures = fmt::format("{} to {}, counted {}", temperature(*row.range_from),
                                  temperature(row.minimum.value), temperature(counted_of_filler(row)));
        if (row.maximum)
            figures += fmt::format(", at most {}", temperature(row.maximum->value));
        page.row(fmt::format("preheat, {}", limits.empty() ? "else" : limits), figures, row.minimum.source);
    }
}

/// What a metal does with heat, where it is not what carbon steel does.
void write_thermal(EntryPage& page, const Base& base) {
    if (base.specific_heat)
        page.row("specific heat", fmt::format("{:.4g} J/(kg K)", base.specific_heat->value.value()),
                 base.specific_heat->source);
    if (base.conductivity)
        page.row("conductivity", fmt::format("{:.4g} W/(m K)", base.conductivity->value.value()),
                 base.conductivity->source);
    if (base.expansion_per_K)
        page.row("expansion", fmt::format("{:.4g} µm/(m K)", base.expansion_per_K->value * 1e6),
                 base.expansion_per_K->source);
}

/// Where a family comes from: its plugin and the tables that add to it, or tables alone.
std::string origin_of(const Family& family) {
    if (!family.plugin)
        return fmt::format("a table without rules, {}", fmt::join(family.files, ", "));
    std::string text = fmt::format("version {}, {}{}", printable(family.plugin->version, 40),
                                   family.plugin->file, family.plugin->answer ? "" : ", without rules");
    for (std::size_t i = 1; i < family.files.size(); ++i) // the first is the table the plugin carries
        text += fmt::format(", with {}", family.files[i]);
    return text;
}

} // namespace

std::string families_text(const Registry& registry) {
    std::string text;
    for (const Family& family : registry.families()) {
        text += family.name + "\n";
        text += wrapped(fmt::format("from {}", origin_of(family)), "  ");
        if (!family.bases.empty())
            text += wrapped(fmt::format("base metals: {}", names_of(family.bases)), "  ");
        text += wrapped(fmt::format("fillers: {}", names_of(family.fillers)), "  ");
    }
    if (!registry.missing().empty())
        text += "NOT LOADED\n";
    for (const MissingFamily& missing : registry.missing())
        text += wrapped(to_string(missing.why), "! ");
    return text;
}

std::string family_text(const Family& family) {
    std::string text = family.name + "\n" + wrapped(family.description, "  ");
    std::vector<std::vector<std::string>> rows;
    for (const Base& base : family.bases)
        rows.push_back({fmt::format("{}/{}", family.name, base.name), "base metal", base.standard});
    for (const Filler& filler : family.fillers)
        rows.push_back({fmt::format("{}/{}", family.name, filler.name), std::string(form_words(filler.form)),
                        filler.standard});
    for (const std::string& line : columns(rows, {false, false, false}))
        text += fmt::format("  {}\n", line);
    return text;
}

std::string base_text(const Family& family, const Base& base) {
    EntryPage page;
    page.row("density", fmt::format("{:.6g} kg/m³", base.density.value.value()), base.density.source);
    page.composition(base.composition);
    page.composition(base.composition_min, {}, "at least ");
    write_thermal(page, base);
    if (base.yield_MPa)
        page.row("yield strength", fmt::format("{:.4g} MPa", base.yield_MPa->value), base.yield_MPa->source);
    if (base.tensile_MPa)
        page.row("tensile strength", fmt::format("{:.4g} MPa", base.tensile_MPa->value),
                 base.tensile_MPa->source);
    if (base.tempering)
        page.row("tempered at", temperature(base.tempering->value), base.tempering->source);
    if (base.softens_over)
        page.row("softens over", temperature(base.softens_over->value), base.softens_over->source);
    if (base.interpass_max)
        page.row("interpass maximum", temperature(base.interpass_max->value), base.interpass_max->source);
    if (base.practice)
        write_rows(page, *base.practice);
    if (base.practice && base.practice->name.find(", taken for ") != std::string::npos)
        page.say(fmt::format("Its rows of preheat: {}.", base.practice->name),
                 base.practice->rows.front().minimum.source);
    for (const TableAdvice& advice : base.advice)
        page.say(advice.text, advice.source);
    std::string text = fmt::format("{}/{}, base metal, {}\n", family.name, base.name, base.standard);
    text += fmt::format("  structure: {}\n", base.structure);
    if (!base.preheat_groups.empty())
        text += wrapped(fmt::format("tables that list it: {}", fmt::join(base.preheat_groups, ", ")), "  ");
    return text + page.text(family.sources);
}

std::string filler_text(const Family& family, const Filler& filler) {
    EntryPage page;
    if (filler.wire_density)
        page.row("wire density", fmt::format("{:.6g} kg/m³", filler.wire_density->value.value()),
                 filler.wire_density->source);
    page.row("deposit density", fmt::format("{:.6g} kg/m³", filler.deposit_density.value.value()),
             filler.deposit_density.source);
    page.row(efficiency_words(filler), fmt::format("{:.3g}", filler.efficiency.value),
             filler.efficiency.source);
    for (const auto& [gas, efficiency] : filler.efficiency_by_gas)
        page.row("efficiency in " + gas, fmt::format("{:.3g}", efficiency.value), efficiency.source);
    for (const auto& [transfer, efficiency] : filler.efficiency_by_transfer)
        page.row("efficiency, " + transfer, fmt::format("{:.3g}", efficiency.value), efficiency.source);
    if (filler.efficiency_range)
        page.row("efficiency, range",
                 fmt::format("{:.3g} to {:.3g}", filler.efficiency_range->value.first,
                             filler.efficiency_range->value.second),
                 filler.efficiency_range->source);
    page.row("bead width over crown", fmt::format("{:.3g}", filler.bead_ratio.value),
             filler.bead_ratio.source);
    if (is_wire(filler.form))
        page.row("stick-out", show(filler.stick_out.value, UnitSystem::metric), filler.stick_out.source);
    page.composition(filler.composition);
    page.composition(filler.typical, "usual ");
    if (filler.hydrogen_ml_100g)
        page.row("hydrogen, at most", fmt::format("{:.3g} ml/100 g", filler.hydrogen_ml_100g->value),
                 filler.hydrogen_ml_100g->source);
    if (filler.practice)
        write_rows(page, *filler.practice, true);
    if (filler.interpass_max)
        page.row("interpass maximum", temperature(filler.interpass_max->value), filler.interpass_max->source);
    for (const TableAdvice& advice : filler.advice)
        page.say(advice.text, advice.source);
    for (const WireSize& size : filler.sizes)
        write_size(page, size);
    return fmt::format("{}/{}, {}, {}\n  gases: {}\n", family.name, filler.name, form_words(filler.form),
                       filler.standard,
                       filler.gases.empty() ? "none" : fmt::format("{}", fmt::join(filler.gases, ", "))) +
           page.text(family.sources);
}

} // namespace ringfill
