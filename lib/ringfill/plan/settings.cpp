#include <ringfill/plan/settings.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {
namespace {

constexpr std::string_view no_gas = "none";

/// The gases of the table with what they are.
std::string known_gases(const Shop& shop) {
    std::string text = "known here: ";
    for (const Gas& gas : shop.gases)
        text += fmt::format("{}{} ({})", &gas == &shop.gases.front() ? "" : ", ", gas.name, gas.words);
    return text;
}

/// The gas of a procedure; null for none. False after noting that it is not known. The filler may be unknown.
bool find_gas(Settings& found, const Shop& shop, std::vector<Fault>& faults) {
    const std::string& name = found.procedure->gas;
    for (const Gas& gas : shop.gases)
        if (gas.name == name)
            found.gas = &gas;
    if (found.gas || (name == no_gas && (!found.filler || found.filler->gases.empty())))
        return true;
    const auto known = shop.gases | ranges::views::transform(&Gas::name) | ranges::to<std::vector>();
    const bool needs_gas = name == no_gas;
    faults.push_back(fault_at_path(found.procedure->path + ".gas", in_quotes(name),
                                   needs_gas ? fmt::format("does not shield {}", found.procedure->filler)
                                             : std::string("is not a known gas"),
                                   needs_gas
                                       ? fmt::format("use one of {}", fmt::join(found.filler->gases, ", "))
                                   : nearest(name, known) ? suggest(name, known)
                                                          : known_gases(shop)));
    return false;
}

template <class Quantity, class Show>
void note_window(Settings& found, std::string_view what, Quantity value,
                 const std::optional<Sourced<std::pair<Quantity, Quantity>>>& window, Show show_value) {
    if (window && (value < window->value.first || value > window->value.second))
        found.notes.push_back(fmt::format("procedure {}: {} of {} is outside the usual {} to {} for {} [{}].",
                                          found.procedure->name, what, show_value(value),
                                          show_value(window->value.first), show_value(window->value.second),
                                          found.procedure->filler, window->source));
}

void note_settings(Settings& found, UnitSystem units) {
    const Procedure& procedure = *found.procedure;
    const WireSize& size = *found.size;
    if (!is_same_wire(size.diameter, procedure.wire))
        found.notes.push_back(
            fmt::format("procedure {}: {} has no row for {} wire; the limits of {} are used, mass "
                        "and melting scaled by section.",
                        procedure.name, procedure.filler, show_wire(procedure.wire, units),
                        show_wire(size.diameter, units)));
    note_window(found, "a wire feed", found.deposition.wire_feed, size.window.wire_feed,
                [units](Speed s) { return show_feed(s, units); });
    if (found.deposition.current)
        note_window(found, "a current", *found.deposition.current, size.window.current,
                    [](Current c) { return show(c); });
    note_window(found, "a travel", procedure.travel, size.window.travel,
                [units](Speed s) { return show(s, units); });
    if (procedure.travel_max && found.travel_limit < *procedure.travel_max)
        found.notes.push_back(fmt::format(
            "procedure {}: travel_max is taken as {}, the fastest of the window of {} [{}].", procedure.name,
            show(found.travel_limit, units), procedure.filler, size.window.travel->source));
    if (found.pitch_ratio < lowest_usual_pitch_ratio || found.pitch_ratio > highest_usual_pitch_ratio)
        found.notes.push_back(fmt::format(
            "procedure {}: a pitch of {:.3g} of the bead width is outside the usual {} to {}.",
            procedure.name, found.pitch_ratio, lowest_usual_pitch_ratio, highest_usual_pitch_ratio));
    if (found.gas && ranges::find(found.filler->gases, procedure.gas) == found.filler->gases.end())
        found.notes.push_back(
            fmt::format("procedure {}: {} is not a gas that {} is usually welded with ({}).", procedure.name,
                        procedure.gas, procedure.filler, fmt::join(found.filler->gases, ", ")));
}

/// The fastest travel: the procedure's, else v₀/0.75, never over the filler's window, never under v₀ itself.
Speed travel_limit(const Procedure& procedure, const WireSize& size) {
    Speed limit = procedure.travel_max.value_or(procedure.travel / least_heat_share);
    if (size.window.travel)
        limit = std::min(limit, size.window.travel->value.second);
    return std::max(limit, procedure.travel);
}

void assume_filler(Settings& found, UnitSystem units) {
    const Procedure& procedure = *found.procedure;
    const Filler& filler = *found.filler;
    const auto assume = [&](std::string_view field, std::string value, std::string source) {
        found.assumed.push_back(
            {procedure.path + "." + std::string(field), std::move(value), std::move(source)});
    };
    if (!procedure.efficiency) {
        const auto by_gas =
            ranges::find(filler.efficiency_by_gas, procedure.gas, [](const auto& e) { return e.first; });
        assume("efficiency", fmt::format("{:.3g}", found.deposition.efficiency),
               by_gas == filler.efficiency_by_gas.end() ? filler.efficiency.source : by_gas->second.source);
    }
    if (!procedure.bead_ratio)
        assume("bead_ratio", fmt::format("{:.3g}", found.bead_ratio), filler.bead_ratio.source);
    if (!procedure.pitch_ratio)
        assume("pitch_ratio", fmt::format("{:.3f}", found.pitch_ratio), "Suryakumar");
    if (!procedure.stick_out && (!procedure.current || !procedure.wire_feed))
        assume("stick_out", show(found.deposition.stick_out.value, units), filler.stick_out.source);
    if (!procedure.wire_feed)
        assume("wire_feed", show_feed(found.deposition.wire_feed, units) + " from the current",
               found.size->melting ? found.size->melting->a.source : found.size->feed_table.front().source);
    if (!procedure.current && found.deposition.current)
        assume("current", show(*found.deposition.current) + " from the wire feed",
               found.size->melting ? found.size->melting->a.source : found.size->feed_table.front().source);
    if (!procedure.travel_max) {
        const bool clipped = found.travel_limit < procedure.travel / least_heat_share;
        assume("travel_max", show(found.travel_limit, units),
               clipped ? found.size->window.travel->source : "ISO15614-1");
    }
    if (found.gas && !procedure.gas_flow)
        assume("gas_flow", show(found.gas_flow, units),
               filler.cored() ? "practice" : found.gas->flow_L_min_per_mm.source);
}

} // namespace

std::optional<Settings> settings(const Procedure& procedure, const Shop& shop, UnitSystem units,
                                 std::vector<Fault>& faults) {
    Settings found;
    found.procedure = &procedure;
    found.filler = find_filler(shop.registry, procedure.filler, procedure.path + ".filler", faults);
    const bool gas_known = find_gas(found, shop, faults);
    if (!found.filler)
        return std::nullopt;
    const auto laid = deposition(procedure, *found.filler, faults);
    if (!gas_known || !laid)
        return std::nullopt;
    found.size = &nearest_size(*found.filler, procedure.wire);
    found.deposition = *laid;
    found.bead_ratio = procedure.bead_ratio.value_or(found.filler->bead_ratio.value);
    found.pitch_ratio = procedure.pitch_ratio.value_or(usual_pitch_ratio);
    found.unscaled = bead(found.deposition, procedure.travel, found.bead_ratio, found.pitch_ratio);
    found.travel_limit = travel_limit(procedure, *found.size);
    if (found.gas)
        found.gas_flow = gas_flow(procedure, *found.filler, *found.gas);
    assume_filler(found, units);
    note_settings(found, units);
    return found;
}

} // namespace ringfill
