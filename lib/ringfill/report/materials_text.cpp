#include <ringfill/report/materials_text.hpp>

#include <set>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/report/columns.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

/// An entry being written: rows of name, value and source key, and the keys met on the way.
class EntryPage {
  public:
    void row(std::string name, std::string value, const std::string& source) {
        rows_.push_back({std::move(name), std::move(value), "[" + source + "]"});
        keys_.insert(source);
    }

    void composition(const Composition& composition) {
        for (const auto& [element, percent] : composition)
            row(element, fmt::format("{:.4g} %", percent.value), percent.source);
    }

    template <class Quantity, class Show>
    void range(std::string name, const std::optional<Sourced<std::pair<Quantity, Quantity>>>& range,
               Show show_value) {
        if (range)
            row(std::move(name),
                fmt::format("{} to {}", show_value(range->value.first), show_value(range->value.second)),
                range->source);
    }

    /// The rows, then each source that they name.
    std::string text(const Bibliography& sources) const {
        std::string text;
        for (const std::string& line : columns(rows_, {false, false, false}))
            text += fmt::format("  {}\n", line);
        text += "\nSOURCES\n";
        for (const std::string& key : keys_)
            if (const auto found = sources.find(key); found != sources.end())
                text += wrapped(fmt::format("[{}] {}; edition {}; {}; kind: {}; known by: {}.", key,
                                            found->second.title, found->second.edition, found->second.place,
                                            found->second.kind, found->second.seen),
                                "- ");
        return text;
    }

  private:
    std::vector<std::vector<std::string>> rows_;
    std::set<std::string> keys_;
};

template <class Row>
std::string names_of(const std::vector<Row>& rows) {
    return fmt::format(
        "{}", fmt::join(rows | ranges::views::transform(&Row::name) | ranges::to<std::vector>(), ", "));
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
    page.range(wire + "wire feed", size.window.wire_feed,
               [](Speed s) { return show_feed(s, UnitSystem::metric); });
    page.range(wire + "current", size.window.current, [](Current c) { return show(c); });
    page.range(wire + "travel", size.window.travel, [](Speed s) { return show(s, UnitSystem::metric); });
}

} // namespace

std::string families_text(const Registry& registry) {
    std::string text;
    for (const Family& family : registry.families) {
        text += family.name + "\n";
        text += wrapped(fmt::format("from {}", fmt::join(family.files, ", ")), "  ");
        text += wrapped(fmt::format("base metals: {}", names_of(family.bases)), "  ");
        text += wrapped(fmt::format("fillers: {}", names_of(family.fillers)), "  ");
    }
    return text;
}

std::string family_text(const Family& family) {
    std::string text = family.name + "\n" + wrapped(family.description, "  ");
    std::vector<std::vector<std::string>> rows;
    for (const Base& base : family.bases)
        rows.push_back({fmt::format("{}/{}", family.name, base.name), "base metal", base.standard});
    for (const Filler& filler : family.fillers)
        rows.push_back({fmt::format("{}/{}", family.name, filler.name),
                        filler.cored ? "cored wire" : "solid wire", filler.standard});
    for (const std::string& line : columns(rows, {false, false, false}))
        text += fmt::format("  {}\n", line);
    return text;
}

std::string base_text(const Family& family, const Base& base) {
    EntryPage page;
    page.row("density", fmt::format("{:.6g} kg/m³", base.density.value.value()), base.density.source);
    page.composition(base.composition);
    return fmt::format("{}/{}, base metal, {}\n", family.name, base.name, base.standard) +
           page.text(family.sources);
}

std::string filler_text(const Family& family, const Filler& filler) {
    EntryPage page;
    if (filler.wire_density)
        page.row("wire density", fmt::format("{:.6g} kg/m³", filler.wire_density->value.value()),
                 filler.wire_density->source);
    page.row("deposit density", fmt::format("{:.6g} kg/m³", filler.deposit_density.value.value()),
             filler.deposit_density.source);
    page.row("efficiency", fmt::format("{:.3g}", filler.efficiency.value), filler.efficiency.source);
    for (const auto& [gas, efficiency] : filler.efficiency_by_gas)
        page.row("efficiency in " + gas, fmt::format("{:.3g}", efficiency.value), efficiency.source);
    page.row("bead width over crown", fmt::format("{:.3g}", filler.bead_ratio.value),
             filler.bead_ratio.source);
    page.row("stick-out", show(filler.stick_out.value, UnitSystem::metric), filler.stick_out.source);
    page.composition(filler.composition);
    for (const WireSize& size : filler.sizes)
        write_size(page, size);
    return fmt::format("{}/{}, {} wire, {}\n  gases: {}\n", family.name, filler.name,
                       filler.cored ? "cored" : "solid", filler.standard,
                       filler.gases.empty() ? "none" : fmt::format("{}", fmt::join(filler.gases, ", "))) +
           page.text(family.sources);
}

} // namespace ringfill
