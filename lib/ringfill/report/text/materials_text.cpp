#include <ringfill/report/text/materials_text.hpp>

#include <fmt/format.h>

#include <range/v3/view/drop.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/heat/preheat_rows.hpp>
#include <ringfill/report/text/entry_page.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

std::string_view form_words(FillerForm form) {
    // In the order of FillerForm.
    constexpr std::string_view words[] = {"solid wire", "cored wire", "covered electrode", "rod"};
    return words[static_cast<std::size_t>(form)];
}

/// Of an electrode it is said of what: the two measures differ by a third.
std::string efficiency_words(const Filler& filler) {
    if (filler.form != FillerForm::stick)
        return "efficiency";
    return !filler.efficiency_of_covered ? "efficiency, of the core"
           : filler.iron_powder          ? "efficiency, of core and covering with iron powder"
                                         : "efficiency, of core and covering";
}

/// Length, stub, mass and rate of an electrode or rod.
void write_piece(EntryPage& page, const std::string& size, const WireSize& piece) {
    page.row(size + "length", piece.length, metric);
    page.row(size + "stub", piece.stub, metric);
    page.row(size + "mass of one", piece.mass, metric);
    page.row(size + "metal laid", piece.per_A, [](double rate) {
        return fmt::format("{:.3g} kg/h for each 100 A", 100 * rate * factor::hour);
    });
    for (const RatePoint& point : piece.rates)
        page.row(fmt::format("{}at {}", size, show(point.current.value)), point.rate, metric);
    page.row(size + "metal laid", piece.range, range_by(metric));
}

void write_window(EntryPage& page, const std::string& size, const Window& window) {
    page.row(size + "wire feed", window.wire_feed,
             range_by([](Speed feed) { return show_feed(feed, UnitSystem::metric); }));
    page.row(size + "current", window.current, range_by(as_current));
    page.row(size + "voltage", window.voltage, range_by(by("{:.3g} V")));
    page.row(size + "travel", window.travel, range_by(metric));
    page.row(size + "from", window.spray_from, as_current);
}

void write_size(EntryPage& page, const WireSize& size) {
    const std::string wire = size.name + " mm: ";
    page.row(wire + "mass", size.linear_mass, by("{:.4g} g/m", 1e3));
    if (size.melting) {
        page.row(wire + "melting a", size.melting->a, by("{:.4g} mm/(A s)"));
        page.row(wire + "melting b", size.melting->b, by("{:.4g} 1/(A² s)"));
    }
    if (!size.length.source.empty())
        write_piece(page, wire, size);
    write_window(page, wire, size.window);
    for (const auto& [transfer, window] : size.windows)
        write_window(page, fmt::format("{}{}, ", wire, transfer), window);
}

/// "up to 25 mm, C up to 0.3 %" or "all", and what is asked there.
void write_rows(EntryPage& page, const std::optional<PreheatGroup>& group, bool of_filler = false) {
    if (!group)
        return;
    for (const PreheatRow& row : group->rows) {
        std::vector<std::string> limits;
        if (row.up_to)
            limits.push_back("up to " + metric(row.up_to->value));
        if (row.carbon_up_to_pct)
            limits.push_back(fmt::format("C up to {:.4g} %", row.carbon_up_to_pct->value));
        if (row.tensile_up_to_MPa)
            limits.push_back(fmt::format("up to {:.4g} MPa", row.tensile_up_to_MPa->value));
        const std::string least = metric(row.minimum.value);
        std::string figures = of_filler && hotter_than_counts(row)
                                  ? fmt::format("{} to {}, counted {}", metric(*row.range_from), least,
                                                metric(counted_of_filler(row)))
                                  : "at least " + least;
        if (row.maximum)
            figures += fmt::format(", at most {}", metric(row.maximum->value));
        page.row(limits.empty() ? "preheat, else" : fmt::format("preheat, {}", listed(limits, ", ")), figures,
                 row.minimum.source);
    }
    if (!group->taken_from.empty())
        page.say(fmt::format("Its rows of preheat: {}.", group->name), group->rows.front().minimum.source);
}

/// What metals of its kind bear between rings.
void write_group(EntryPage& page, const Family& family, const Base& base) {
    for (const HeatGroup& group : family.heat_groups)
        for (const ThicknessRow& row : group.interpass_max_degC)
            if (group.name == base.heat_group)
                page.row(fmt::format("interpass maximum{}{}",
                                     row.up_to_mm ? fmt::format(", up to {:.4g} mm", *row.up_to_mm) : "",
                                     row.document.empty() ? "" : " under " + row.document),
                         fmt::format("{:.4g} °C", row.value), row.source);
}

/// Where a family comes from: its plugin and the tables that add to it, or tables alone.
std::string origin_of(const Family& family) {
    if (!family.plugin)
        return fmt::format("a table without rules, {}", listed(family.files, ", "));
    const auto added = family.files | ranges::views::drop(1); // the first is the table the plugin carries
    return fmt::format("version {}, {}{}{}", printable(family.plugin->version, 40), family.plugin->file,
                       family.plugin->answer ? "" : ", without rules",
                       listed(added, "", [](const std::string& file) { return ", with " + file; }));
}

} // namespace

std::string families_text(const Registry& registry) {
    std::string text;
    for (const Family& family : registry.families())
        text +=
            family.name + "\n" + wrapped("from " + origin_of(family)) +
            (family.bases.empty() ? "" : wrapped("base metals: " + listed(family.bases, ", ", &Base::name))) +
            wrapped("fillers: " + listed(family.fillers, ", ", &Filler::name));
    if (!registry.missing().empty())
        text += "NOT LOADED\n";
    for (const MissingFamily& missing : registry.missing())
        text += wrapped(to_string(missing.why), "! ");
    return text;
}

std::string family_text(const Family& family) {
    const std::string text = family.name + "\n" + wrapped(family.description);
    Rows rows;
    for (const Base& base : family.bases)
        rows.push_back({family.name + "/" + base.name, "base metal", base.standard});
    for (const Filler& filler : family.fillers)
        rows.push_back(
            {family.name + "/" + filler.name, std::string(form_words(filler.form)), filler.standard});
    return text + table(rows, {false, false, false});
}

std::string base_text(const Family& family, const Base& base) {
    EntryPage page;
    page.row("density", base.density, by("{:.6g} kg/m³"));
    page.composition(base.composition);
    page.composition(base.composition_min, {}, "at least ");
    page.row("specific heat", base.specific_heat, by("{:.4g} J/(kg K)"));
    page.row("conductivity", base.conductivity, by("{:.4g} W/(m K)"));
    page.row("expansion", base.expansion_per_K, by("{:.4g} µm/(m K)", 1e6));
    page.row("yield strength", base.yield_MPa, by("{:.4g} MPa"));
    page.row("tensile strength", base.tensile_MPa, by("{:.4g} MPa"));
    page.row("tempered at", base.tempering, metric);
    page.row("softens over", base.softens_over, metric);
    page.row("interpass maximum", base.interpass_max, metric);
    if (!base.interpass_max || base.interpass_max->source == "practice")
        write_group(page, family, base);
    write_rows(page, base.practice);
    page.say(base.advice);
    std::string text = fmt::format("{}/{}, base metal, {}\n  structure: {}\n", family.name, base.name,
                                   base.standard, base.structure);
    if (!base.preheat_groups.empty())
        text += wrapped(fmt::format("tables that list it: {}", listed(base.preheat_groups, ", ")));
    return text + page.text(family.sources);
}

std::string filler_text(const Family& family, const Filler& filler) {
    EntryPage page;
    page.row("wire density", filler.wire_density, by("{:.6g} kg/m³"));
    page.row("deposit density", filler.deposit_density, by("{:.6g} kg/m³"));
    page.row(efficiency_words(filler), filler.efficiency, by("{:.3g}"));
    for (const auto& [gas, efficiency] : filler.efficiency_by_gas)
        page.row("efficiency in " + gas, efficiency, by("{:.3g}"));
    for (const auto& [transfer, efficiency] : filler.efficiency_by_transfer)
        page.row("efficiency, " + transfer, efficiency, by("{:.3g}"));
    page.row("efficiency, range", filler.efficiency_range, range_by(by("{:.3g}")));
    page.row("bead width over crown", filler.bead_ratio, by("{:.3g}"));
    if (is_wire(filler.form))
        page.row("stick-out", filler.stick_out, metric);
    page.composition(filler.composition);
    page.composition(filler.typical, "usual ");
    page.row("hydrogen, at most", filler.hydrogen_ml_100g, by("{:.3g} ml/100 g"));
    write_rows(page, filler.practice, true);
    page.row("interpass maximum", filler.interpass_max, metric);
    page.say(filler.advice);
    for (const WireSize& size : filler.sizes)
        write_size(page, size);
    return fmt::format("{}/{}, {}, {}\n  gases: {}\n", family.name, filler.name, form_words(filler.form),
                       filler.standard, filler.gases.empty() ? "none" : listed(filler.gases, ", ")) +
           page.text(family.sources);
}

} // namespace ringfill
