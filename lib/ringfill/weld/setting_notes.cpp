#include <ringfill/weld/setting_notes.hpp>

#include <functional>
#include <tuple>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/wire.hpp>

namespace ringfill {
namespace {

/// Takes the note of a procedure, without its name.
using Note = std::function<void(const std::string&)>;

std::string in_transfer(const Procedure& procedure) {
    if (procedure.transfer.empty())
        return {};
    return procedure.transfer == "short"   ? " in short-circuit transfer"
           : procedure.transfer == "pulse" ? " in pulsed transfer"
                                           : fmt::format(" in {} transfer", procedure.transfer);
}

/// Spray that the job names and that the gas or the current does not give, or may not.
void note_spray(const Note& note, const Settings& found, UnitSystem units) {
    const Procedure& procedure = *found.procedure;
    if (procedure.transfer != "spray")
        return;
    const std::string where = found.gas ? " in " + found.gas->name : std::string();
    if (found.gas && !found.gas->sprays) {
        note(fmt::format("{} does not spray{}: {}; the share that spray deposits is not taken.",
                         procedure.filler, where, found.gas->spray_note));
        return;
    }
    const auto from = spray_from(*found.size, found.gas);
    const auto& current = found.deposition.current;
    if (!from)
        note(fmt::format("from which current {} of {} sprays{} is not known here; its maker tells.",
                         procedure.filler, show_wire(procedure.wire, units), where));
    else if (current && *current < from->does)
        note(
            fmt::format("a current of {} is {} {} from which {} sprays{} [{}]; the share that spray deposits "
                        "is not taken.",
                        show(*current), *current < from->may ? "under the" : "inside the",
                        from->may < from->does ? fmt::format("{} to {}", show(from->may), show(from->does))
                                               : show(from->does),
                        procedure.filler, where, from->source));
    if (found.gas && !found.gas->spray_note.empty())
        note(fmt::format("spray{}: {}.", where, found.gas->spray_note));
}

void note_windows(const Note& note, const Settings& found, UnitSystem units) {
    const Procedure& procedure = *found.procedure;
    const Deposition& laid = found.deposition;
    const auto in_units = [units](auto quantity) { return show(quantity, units); };
    const auto in_window = [&](std::string_view what, const auto& given, const auto& window, auto shown) {
        const auto value = std::optional(given);
        if (value && window && (*value < window->value.first || *value > window->value.second))
            note(fmt::format("{} of {} is outside the usual {} to {} for {}{} [{}].", what, shown(*value),
                             shown(window->value.first), shown(window->value.second), procedure.filler,
                             in_transfer(procedure), window->source));
    };
    if (!laid.piece)
        in_window("a wire feed", laid.wire_feed, found.window.wire_feed,
                  [units](Speed feed) { return show_feed(feed, units); });
    in_window("a current", laid.current, found.window.current, [](Current amps) { return show(amps); });
    if (!found.window.current && !found.window.wire_feed && laid.current)
        note(fmt::format(
            "no usual current is known here for {} of {}, so {} is not judged; see what its maker "
            "prints.",
            procedure.filler, show_wire(found.size->diameter, units), show(*laid.current)));
    in_window("a voltage", procedure.voltage, found.window.voltage,
              [](Voltage volts) { return fmt::format("{:.3g} V", volts.value()); });
    note_spray(note, found, units);
    in_window("a travel", procedure.travel, found.window.travel, in_units);
    if (found.filler->form == FillerForm::rod)
        in_window("a deposition rate", laid.rate, found.size->range, in_units);
    // A share of the wire that the job gives itself is held against what its process usually deposits.
    in_window("an efficiency", procedure.efficiency, found.efficiency_range,
              [](double share) { return fmt::format("{:.3g}", share); });
}

} // namespace

std::vector<std::string> setting_notes(const Settings& found, UnitSystem units) {
    const Procedure& procedure = *found.procedure;
    const WireSize& size = *found.size;
    std::vector<std::string> notes;
    const Note note = [&](const std::string& text) {
        notes.push_back(fmt::format("procedure {}: {}", procedure.name, text));
    };
    if (!is_same_wire(size.diameter, procedure.wire))
        note(fmt::format(
            "{} has no row for {}{}; the limits of {} are used, mass and melting scaled by section.",
            procedure.filler, show_wire(procedure.wire, units), found.deposition.piece ? "" : " wire",
            show_wire(size.diameter, units)));
    note_windows(note, found, units);
    if (procedure.travel_max && found.travel_limit < *procedure.travel_max)
        note(fmt::format("travel_max is taken as {}, the fastest of the window of {} [{}].",
                         show(found.travel_limit, units), procedure.filler, found.window.travel->source));
    if (found.pitch_ratio < lowest_usual_pitch_ratio || found.pitch_ratio > highest_usual_pitch_ratio)
        note(fmt::format("a pitch of {:.3g} of the bead width is outside the usual {} to {}.",
                         found.pitch_ratio, lowest_usual_pitch_ratio, highest_usual_pitch_ratio));
    if (found.gas && !ranges::contains(found.filler->gases, procedure.gas))
        note(fmt::format("{} is not a gas that {} is usually welded with ({}).", procedure.gas,
                         procedure.filler, listed(found.filler->gases, ", ")));
    if (found.filler->form == FillerForm::rod)
        note("the rod is added by hand: how fast is what the job says, or the low end of its range; tungsten "
             "electrodes, cups and flux are not counted.");
    return notes;
}

std::vector<Assumed> assumed_settings(const Settings& found, UnitSystem units) {
    const Procedure& procedure = *found.procedure;
    const Filler& filler = *found.filler;
    const Deposition& laid = found.deposition;
    std::vector<Assumed> assumed;
    const bool is_wire = !laid.piece;
    const auto assume = [&](bool is_left_out, std::string_view field, std::string value, std::string source) {
        if (is_left_out)
            assumed.push_back(
                {fmt::format("{}.{}", procedure.path, field), std::move(value), std::move(source)});
    };
    const auto& [melting, feed_table] = std::tie(found.size->melting, found.size->feed_table);
    const std::string from_table = melting              ? melting->a.source
                                   : feed_table.empty() ? ""
                                                        : feed_table.front().feed.source;
    assume(!procedure.efficiency, "efficiency", fmt::format("{:.3g}", laid.efficiency),
           efficiency_of(procedure, filler, laid.as_transferred).source);
    assume(!procedure.bead_ratio, "bead_ratio", fmt::format("{:.3g}", found.bead_ratio),
           filler.bead_ratio.source);
    assume(!procedure.pitch_ratio, "pitch_ratio", fmt::format("{:.3f}", found.pitch_ratio), "Suryakumar");
    assume(laid.piece && !procedure.deposition_rate, "deposition_rate",
           show(laid.rate, units) +
               (filler.form == FillerForm::stick ? " from the current" : " the low end of its range"),
           laid.piece ? laid.piece->rate.source : "");
    assume(is_wire && !procedure.stick_out && (!procedure.current || !procedure.wire_feed), "stick_out",
           show(laid.stick_out.value, units), filler.stick_out.source);
    assume(is_wire && !procedure.wire_feed, "wire_feed",
           show_feed(laid.wire_feed, units) + " from the current", from_table);
    assume(is_wire && !procedure.current && laid.current, "current",
           show(laid.current.value_or(Current())) + " from the wire feed", from_table);
    const bool clipped = !procedure.travel_max && found.travel_limit < procedure.travel / least_heat_share;
    assume(!procedure.travel_max, "travel_max", show(found.travel_limit, units),
           clipped ? found.window.travel->source : "ISO15614-1");
    assume(found.gas && !procedure.gas_flow, "gas_flow", show(found.gas_flow, units),
           filler.form == FillerForm::solid && found.gas ? found.gas->flow_L_min_per_mm.source : "practice");
    return assumed;
}

void leave_out_unfit(std::vector<Assumed>& assumed, const Settings& found) {
    if (found.filler->form != FillerForm::stick)
        return;
    const std::string path = found.procedure->path + ".";
    std::erase_if(assumed, [&](const Assumed& one) {
        return one.path == path + "gas_before" || one.path == path + "gas_after";
    });
}

} // namespace ringfill
