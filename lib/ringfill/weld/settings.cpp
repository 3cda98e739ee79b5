#include <ringfill/weld/settings.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/decimal.hpp>
#include <ringfill/weld/gas.hpp>

namespace ringfill {
namespace {

/// The designation of argon with carbon dioxide by its trade name, "75/25" or "82/18" [EN ISO 14175]; empty:
/// it is none.
std::string trade_mixture(std::string_view name) {
    const std::size_t between = name.find('/');
    if (between == std::string_view::npos)
        return {};
    const auto first = decimal_of(name.substr(0, between));
    const auto second = decimal_of(name.substr(between + 1));
    if (!first || !second || as_double(*first) + as_double(*second) != 100)
        return {};
    const double dioxide = std::min(as_double(*first), as_double(*second));
    return dioxide < 0.5 ? "" : dioxide <= 5 ? "M12" : dioxide <= 15 ? "M20" : dioxide <= 25 ? "M21" : "";
}

constexpr std::string_view no_gas = "none";

/// The gas of a procedure; null for none. False after noting that it is not known, left out where the filler
/// needs one, or given to an electrode. The filler may be unknown.
bool find_gas(Settings& found, const Shop& shop, std::vector<Fault>& faults) {
    const std::string& name = found.procedure->gas;
    const auto gases = found.filler ? found.filler->gases : std::vector<std::string>();
    const auto refuse = [&](std::string reason, std::string remedy) {
        faults.push_back(fault_at_path(found.procedure->path + ".gas",
                                       name.empty() ? std::string() : in_quotes(name), std::move(reason),
                                       std::move(remedy)));
        return false;
    };
    if (name.empty())
        return gases.empty() || refuse("is missing", fmt::format("write \"gas\": \"{}\"", gases.front()));
    if (found.filler && found.filler->form == FillerForm::stick && name != no_gas)
        return refuse("does not go with an electrode, which shields itself", "take it out");
    const auto known = ranges::find(shop.gases, name, &Gas::name);
    found.gas = known == shop.gases.end() ? nullptr : &*known;
    if (found.gas || (name == no_gas && gases.empty()))
        return true;
    if (name == no_gas)
        return refuse(fmt::format("does not shield {}", found.procedure->filler),
                      fmt::format("use one of {}", listed(gases, ", ")));
    if (const std::string meant = trade_mixture(name); ranges::contains(shop.gases, meant, &Gas::name))
        return refuse("is not a known gas", fmt::format("did you mean \"{}\"?", meant));
    const auto names = shop.gases | ranges::views::transform(&Gas::name) | ranges::to<std::vector>();
    const auto with_words = [](const Gas& gas) { return fmt::format("{} ({})", gas.name, gas.words); };
    return refuse("is not a known gas", nearest(name, names)
                                            ? suggest(name, names)
                                            : "known here: " + listed(shop.gases, ", ", with_words));
}

/// What a filler or its process usually deposits of the wire, in the transfer that the job names where it is
/// the one there is. The ranges of processes are of core and covering.
std::optional<SourcedRange<double>> usual_efficiency(const Settings& found, const Processes& processes) {
    const Filler& filler = *found.filler;
    if (filler.efficiency_range || (filler.form == FillerForm::stick && !filler.efficiency_of_covered))
        return filler.efficiency_range;
    const Procedure& procedure = *found.procedure;
    const bool holds = found.deposition.as_transferred;
    const ProcessRow* row =
        closest_row(processes, filler.process, holds ? procedure.transfer : std::string(), procedure.gas,
                    [](const ProcessRow& known) { return known.efficiency.has_value(); });
    return row ? row->efficiency : std::nullopt;
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
    const Window& any = size.window;
    const Window* own = value_named(size.windows, procedure.transfer);
    if (!own)
        return any;
    const auto first_of = [](const auto& one, const auto& other) { return one ? one : other; };
    return {first_of(own->wire_feed, any.wire_feed), first_of(own->current, any.current),
            first_of(own->voltage, any.voltage), first_of(own->travel, any.travel),
            first_of(own->spray_from, any.spray_from)};
}

} // namespace

std::optional<Settings> settings(const Procedure& procedure, const Shop& shop, std::vector<Fault>& faults) {
    Settings found{.procedure = &procedure,
                   .filler =
                       find_filler(shop.registry, procedure.filler, procedure.path + ".filler", faults)};
    const bool gas_known = find_gas(found, shop, faults);
    if (!found.filler)
        return std::nullopt;
    const auto laid = deposition(procedure, *found.filler, faults, found.gas);
    if (!gas_known || !laid)
        return std::nullopt;
    found.size = &nearest_size(*found.filler, procedure.wire);
    found.deposition = *laid;
    found.bead_ratio = procedure.bead_ratio.value_or(found.filler->bead_ratio.value);
    found.pitch_ratio = procedure.pitch_ratio.value_or(usual_pitch_ratio);
    found.unscaled_bead = bead(found.deposition, procedure.travel, found.bead_ratio, found.pitch_ratio);
    found.window = window_for(procedure, *found.size);
    found.travel_limit = travel_limit(procedure, found.window);
    if (found.gas)
        found.gas_flow = gas_flow(procedure, *found.filler, *found.gas);
    found.efficiency_range = usual_efficiency(found, shop.processes);
    return found;
}

} // namespace ringfill
