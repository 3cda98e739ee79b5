#include <ringfill/weld/settings_told.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/wire.hpp>

namespace ringfill {
namespace {

std::string in_transfer(const Procedure& procedure) {
    if (!procedure.transfer_given)
        return {};
    return procedure.transfer == "short"   ? " in short-circuit transfer"
           : procedure.transfer == "pulse" ? " in pulsed transfer"
                                           : fmt::format(" in {} transfer", procedure.transfer);
}

/// Notes go into a list of their own, so that the settings stay as they are.
struct Noting {
    const Settings& found;
    UnitSystem units;
    std::vector<std::string> notes = {};

    const Procedure& procedure() const { return *found.procedure; }
};

template <class Quantity, class Show>
void note_window(Noting& noting, std::string_view what, Quantity value,
                 const std::optional<Sourced<std::pair<Quantity, Quantity>>>& window, Show show_value) {
    if (window && (value < window->value.first || value > window->value.second))
        noting.notes.push_back(fmt::format(
            "procedure {}: {} of {} is outside the usual {} to {} for {}{} [{}].", noting.procedure().name,
            what, show_value(value), show_value(window->value.first), show_value(window->value.second),
            noting.procedure().filler, in_transfer(noting.procedure()), window->source));
}

/// Spray that the job names and that the gas or the current does not give, or may not.
void note_spray(Noting& noting) {
    const Settings& found = noting.found;
    const Procedure& procedure = noting.procedure();
    if (!procedure.transfer_given || procedure.transfer != "spray")
        return;
    const auto note = [&](const std::string& text) {
        noting.notes.push_back(fmt::format("procedure {}: {}.", procedure.name, text));
    };
    const std::string where = found.gas ? " in " + found.gas->name : std::string();
    if (found.gas && !found.gas->sprays) {
        note(fmt::format("{} does not spray{}: {}; the share that spray deposits is not taken",
                         procedure.filler, where, found.gas->spray_note));
        return;
    }
    const auto from = spray_from(*found.size, found.gas);
    if (!from)
        note(fmt::format("from which current {} of {} sprays{} is not known here; its maker tells",
                         procedure.filler, show_wire(procedure.wire, noting.units), where));
    else if (found.deposition.current && *found.deposition.current < from->does)
        note(
            fmt::format("a current of {} is {} {} from which {} sprays{} [{}]; the share that spray deposits "
                        "is not taken",
                        show(*found.deposition.current),
                        *found.deposition.current < from->may ? "under the" : "inside the",
                        from->may < from->does ? fmt::format("{} to {}", show(from->may), show(from->does))
                                               : show(from->does),
                        procedure.filler, where, from->source));
    if (found.gas && !found.gas->spray_note.empty())
        note(fmt::format("spray{}: {}", where, found.gas->spray_note));
}

/// Current and feed of a diameter for which no window is known cannot be judged, and that is told.
void note_no_window(Noting& noting) {
    const Settings& found = noting.found;
    if (found.window.current || found.window.wire_feed || !found.deposition.current)
        return;
    noting.notes.push_back(fmt::format(
        "procedure {}: no usual current is known here for {} of {}, so {} is not judged; see what its maker "
        "prints.",
        noting.procedure().name, noting.procedure().filler, show_wire(found.size->diameter, noting.units),
        show(*found.deposition.current)));
}

void note_windows(Noting& noting) {
    const Settings& found = noting.found;
    const UnitSystem units = noting.units;
    if (!found.deposition.piece)
        note_window(noting, "a wire feed", found.deposition.wire_feed, found.window.wire_feed,
                    [units](Speed s) { return show_feed(s, units); });
    if (found.deposition.current)
        note_window(noting, "a current", *found.deposition.current, found.window.current,
                    [](Current c) { return show(c); });
    note_no_window(noting);
    if (noting.procedure().voltage)
        note_window(noting, "a voltage", *noting.procedure().voltage, found.window.voltage,
                    [](Voltage v) { return fmt::format("{:.3g} V", v.value()); });
    note_spray(noting);
    note_window(noting, "a travel", noting.procedure().travel, found.window.travel,
                [units](Speed s) { return show(s, units); });
    if (found.deposition.piece && found.deposition.piece->form == FillerForm::rod)
        note_window(noting, "a deposition rate", found.deposition.rate, found.size->piece->range,
                    [units](MassFlow rate) { return show(rate, units); });
}

/// A share of the wire that the job gives itself is held against what its process usually deposits.
void note_efficiency(Noting& noting, const Processes& processes) {
    const Procedure& procedure = noting.procedure();
    const Filler& filler = *noting.found.filler;
    if (!procedure.efficiency)
        return;
    const ProcessRow* row =
        efficiency_row(processes, filler.process, transfer_held(noting.found), procedure.gas);
    const bool same_measure = filler.form != FillerForm::stick || filler.efficiency_of_covered;
    const auto range = filler.efficiency_range ? filler.efficiency_range
                       : row && same_measure   ? row->efficiency
                                               : std::nullopt;
    note_window(noting, "an efficiency", *procedure.efficiency, range,
                [](double share) { return fmt::format("{:.3g}", share); });
}

} // namespace

std::vector<std::string> setting_notes(const Settings& found, const Processes& processes, UnitSystem units) {
    Noting noting{found, units};
    std::vector<std::string>& notes = noting.notes;
    const Procedure& procedure = *found.procedure;
    const WireSize& size = *found.size;
    if (!is_same_wire(size.diameter, procedure.wire))
        notes.push_back(fmt::format("procedure {}: {} has no row for {}{}; the limits of {} are used, mass "
                                    "and melting scaled by section.",
                                    procedure.name, procedure.filler, show_wire(procedure.wire, units),
                                    found.deposition.piece ? "" : " wire", show_wire(size.diameter, units)));
    note_windows(noting);
    note_efficiency(noting, processes);
    if (procedure.travel_max && found.travel_limit < *procedure.travel_max)
        notes.push_back(fmt::format(
            "procedure {}: travel_max is taken as {}, the fastest of the window of {} [{}].", procedure.name,
            show(found.travel_limit, units), procedure.filler, found.window.travel->source));
    if (found.pitch_ratio < lowest_usual_pitch_ratio || found.pitch_ratio > highest_usual_pitch_ratio)
        notes.push_back(fmt::format(
            "procedure {}: a pitch of {:.3g} of the bead width is outside the usual {} to {}.",
            procedure.name, found.pitch_ratio, lowest_usual_pitch_ratio, highest_usual_pitch_ratio));
    if (found.gas && ranges::find(found.filler->gases, procedure.gas) == found.filler->gases.end())
        notes.push_back(fmt::format("procedure {}: {} is not a gas that {} is usually welded with ({}).",
                                    procedure.name, procedure.gas, procedure.filler,
                                    listed(found.filler->gases, ", ")));
    if (found.deposition.piece && found.deposition.piece->form == FillerForm::stick)
        notes.push_back(fmt::format(
            "procedure {}: changing electrodes and chipping slag is in no time here, and the boss "
            "cools meanwhile: reckon a minute or more for each.",
            procedure.name));
    if (found.deposition.piece && found.deposition.piece->form == FillerForm::rod)
        notes.push_back(fmt::format("procedure {}: the rod is added by hand: how fast is what the job says, "
                                    "or the low end of its range; "
                                    "tungsten electrodes, cups and flux are not counted.",
                                    procedure.name));
    return noting.notes;
}

namespace {

void assume_feed(std::vector<Assumed>& assumed, const Settings& found, UnitSystem units) {
    const Procedure& procedure = *found.procedure;
    const auto assume = [&](std::string_view field, std::string value, std::string source) {
        assumed.push_back({procedure.path + "." + std::string(field), std::move(value), std::move(source)});
    };
    const auto from_table = [&] {
        return found.size->melting ? found.size->melting->a.source
                                   : found.size->feed_table.front().feed.source;
    };
    if (!procedure.stick_out && (!procedure.current || !procedure.wire_feed))
        assume("stick_out", show(found.deposition.stick_out.value, units), found.filler->stick_out.source);
    if (!procedure.wire_feed)
        assume("wire_feed", show_feed(found.deposition.wire_feed, units) + " from the current", from_table());
    if (!procedure.current && found.deposition.current)
        assume("current", show(*found.deposition.current) + " from the wire feed", from_table());
}

void assume_rate(std::vector<Assumed>& assumed, const Settings& found, UnitSystem units) {
    const PieceLaid& piece = *found.deposition.piece;
    if (!found.procedure->deposition_rate)
        assumed.push_back(
            {found.procedure->path + ".deposition_rate",
             fmt::format("{} {}", show(found.deposition.rate, units),
                         piece.form == FillerForm::stick ? "from the current" : "the low end of its range"),
             piece.rate.source});
}

} // namespace

std::vector<Assumed> assumed_settings(const Settings& found, UnitSystem units) {
    std::vector<Assumed> assumed;
    const Procedure& procedure = *found.procedure;
    const Filler& filler = *found.filler;
    const auto assume = [&](std::string_view field, std::string value, std::string source) {
        assumed.push_back({procedure.path + "." + std::string(field), std::move(value), std::move(source)});
    };
    if (!procedure.efficiency)
        assume("efficiency", fmt::format("{:.3g}", found.deposition.efficiency),
               found.deposition.efficiency_source);
    if (!procedure.bead_ratio)
        assume("bead_ratio", fmt::format("{:.3g}", found.bead_ratio), filler.bead_ratio.source);
    if (!procedure.pitch_ratio)
        assume("pitch_ratio", fmt::format("{:.3f}", found.pitch_ratio), "Suryakumar");
    if (found.deposition.piece)
        assume_rate(assumed, found, units);
    else
        assume_feed(assumed, found, units);
    if (!procedure.travel_max) {
        const bool clipped = found.travel_limit < procedure.travel / least_heat_share;
        assume("travel_max", show(found.travel_limit, units),
               clipped ? found.window.travel->source : "ISO15614-1");
    }
    if (found.gas && !procedure.gas_flow)
        assume("gas_flow", show(found.gas_flow, units),
               filler.form != FillerForm::solid ? "practice" : found.gas->flow_L_min_per_mm.source);
    return assumed;
}

void leave_out_unfit(std::vector<Assumed>& assumed, const Settings& found) {
    if (!found.deposition.piece)
        return;
    const bool stick = found.deposition.piece->form == FillerForm::stick;
    const std::string path = found.procedure->path + ".";
    std::erase_if(assumed, [&](const Assumed& one) {
        return one.path == path + "transfer" ||
               (stick && (one.path == path + "gas_before" || one.path == path + "gas_after"));
    });
}

} // namespace ringfill
