#include <ringfill/weld/settings.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/weld/gas.hpp>
#include <ringfill/weld/settings_told.hpp>

namespace ringfill {
namespace {

constexpr std::string_view no_gas = "none";

/// The gases of the table with what they are.
std::string known_gases(const WeldTables& tables) {
    std::string text = "known here: ";
    for (const Gas& gas : tables.gases)
        text += fmt::format("{}{} ({})", &gas == &tables.gases.front() ? "" : ", ", gas.name, gas.words);
    return text;
}

/// Refuses a procedure that leaves out the gas of a filler that needs one, or gives gas to an electrode.
bool gas_fits_form(const Settings& found, std::vector<Fault>& faults) {
    if (!found.filler)
        return true;
    const std::string& name = found.procedure->gas;
    const std::string path = found.procedure->path + ".gas";
    const std::vector<std::string>& gases = found.filler->gases;
    if (name.empty() && !gases.empty())
        faults.push_back(
            fault_at_path(path, {}, "is missing", fmt::format("write \"gas\": \"{}\"", gases.front())));
    else if (found.filler->form == FillerForm::stick && !name.empty() && name != no_gas)
        faults.push_back(fault_at_path(path, in_quotes(name),
                                       "does not go with an electrode, which shields itself", "take it out"));
    else
        return true;
    return false;
}

/// The gas of a procedure; null for none. False after noting that it is not known. The filler may be unknown.
bool find_gas(Settings& found, const WeldTables& tables, std::vector<Fault>& faults) {
    if (!gas_fits_form(found, faults))
        return false;
    if (found.procedure->gas.empty())
        return true;
    const std::string& name = found.procedure->gas;
    for (const Gas& gas : tables.gases)
        if (gas.name == name)
            found.gas = &gas;
    if (found.gas || (name == no_gas && (!found.filler || found.filler->gases.empty())))
        return true;
    const auto known = tables.gases | ranges::views::transform(&Gas::name) | ranges::to<std::vector>();
    const bool needs_gas = name == no_gas;
    faults.push_back(fault_at_path(found.procedure->path + ".gas", in_quotes(name),
                                   needs_gas ? fmt::format("does not shield {}", found.procedure->filler)
                                             : std::string("is not a known gas"),
                                   needs_gas ? fmt::format("use one of {}", listed(found.filler->gases, ", "))
                                   : nearest(name, known) ? suggest(name, known)
                                                          : known_gases(tables)));
    return false;
}

/// The fastest travel: the procedure's, else v₀/0.75, never over the filler's window, never under v₀ itself.
Speed travel_limit(const Procedure& procedure, const Window& window) {
    Speed limit = procedure.travel_max.value_or(procedure.travel / least_heat_share);
    if (window.travel)
        limit = std::min(limit, window.travel->value.second);
    return std::max(limit, procedure.travel);
}

/// The window of a diameter, for the transfer where the job names it.
Window window_for(const Procedure& procedure, const WireSize& size) {
    Window window = size.window;
    if (!procedure.transfer_given)
        return window;
    const auto put = [](auto& to, const auto& from) {
        if (from)
            to = from;
    };
    for (const auto& [transfer, own] : size.windows)
        if (transfer == procedure.transfer) {
            put(window.wire_feed, own.wire_feed);
            put(window.current, own.current);
            put(window.voltage, own.voltage);
            put(window.travel, own.travel);
            put(window.spray_from, own.spray_from);
        }
    return window;
}

} // namespace

std::string transfer_held(const Settings& settings) {
    const bool named = settings.procedure->transfer_given && settings.deposition.as_transferred;
    return named ? settings.procedure->transfer : std::string();
}

std::optional<Settings> settings(const Procedure& procedure, const WeldTables& tables, UnitSystem units,
                                 std::vector<Fault>& faults) {
    Settings found;
    found.procedure = &procedure;
    found.filler = find_filler(tables.registry, procedure.filler, procedure.path + ".filler", faults);
    const bool gas_known = find_gas(found, tables, faults);
    if (!found.filler)
        return std::nullopt;
    const auto laid = deposition(procedure, *found.filler, faults, found.gas);
    if (!gas_known || !laid)
        return std::nullopt;
    found.size = &nearest_size(*found.filler, procedure.wire);
    found.deposition = *laid;
    found.bead_ratio = procedure.bead_ratio.value_or(found.filler->bead_ratio.value);
    found.pitch_ratio = procedure.pitch_ratio.value_or(usual_pitch_ratio);
    found.unscaled = bead(found.deposition, procedure.travel, found.bead_ratio, found.pitch_ratio);
    found.window = window_for(procedure, *found.size);
    found.travel_limit = travel_limit(procedure, found.window);
    if (found.gas)
        found.gas_flow = gas_flow(procedure, *found.filler, *found.gas);
    found.assumed = assumed_settings(found, units);
    found.notes = setting_notes(found, tables.processes, units);
    return found;
}

} // namespace ringfill
