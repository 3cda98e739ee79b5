#include <ringfill/weld/deposition.hpp>

#include <numbers>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// Fills in the feed or the current that the job leaves out. False after noting a fault.
bool complete(Deposition& laid, const Procedure& procedure, const WireSize& size,
              std::vector<Fault>& faults) {
    const std::size_t before = faults.size();
    const bool has_table = !size.feed_table.empty();
    if (procedure.wire_feed) {
        laid.wire_feed = *procedure.wire_feed;
        if (!laid.current && size.melting)
            laid.current = current_of(laid.wire_feed, laid.stick_out.value, *size.melting);
        else if (!laid.current && has_table)
            laid.current = current_in_table(laid.wire_feed, size, procedure.path, faults);
    } else if (size.melting)
        laid.wire_feed = wire_feed_of(*laid.current, laid.stick_out.value, *size.melting);
    else if (has_table)
        laid.wire_feed = feed_in_table(*laid.current, size, procedure.path, faults).value_or(Speed());
    else
        faults.push_back(fault_at_path(
            procedure.path + ".current", {},
            fmt::format("gives no wire feed: no melting curve of {} is known", procedure.filler),
            "write \"wire_feed\" too"));
    return faults.size() == before;
}

/// An electrode or rod; false after noting a fault.
bool lay_pieces(Deposition& laid, const Procedure& procedure, const Filler& filler, const WireSize& size,
                std::vector<Fault>& faults) {
    auto rate = piece_rate(procedure, filler, size, faults);
    if (!rate)
        return false;
    laid.linear_mass = solid_wire_mass(size.diameter, filler.wire_density.value().value);
    laid.efficiency = efficiency_of(procedure, filler).value;
    laid.rate = in_si<MassFlow>(rate->value / factor::hour);
    const Length length = size.length.value;
    PieceLaid piece{.form = filler.form,
                    .length = length,
                    .stub = size.stub.value,
                    .mass = size.mass ? size.mass->value : laid.linear_mass * length,
                    .of_covered = filler.efficiency_of_covered,
                    .stub_source = size.stub.source,
                    .rate = std::move(*rate)};
    piece.usable = usable_mass(piece, laid.linear_mass, laid.efficiency);
    laid.piece = std::move(piece);
    return true;
}

} // namespace

LinearMass solid_wire_mass(Length diameter, Density density) {
    return std::numbers::pi / 4 * diameter * diameter * density;
}

Sourced<double> efficiency_of(const Procedure& procedure, const Filler& filler, bool transfer_holds) {
    if (procedure.efficiency)
        return {*procedure.efficiency, "job"};
    if (const auto* in_gas = value_named(filler.efficiency_by_gas, procedure.gas))
        return *in_gas;
    const auto* in_transfer = value_named(filler.efficiency_by_transfer, procedure.transfer);
    return transfer_holds && in_transfer ? *in_transfer : filler.efficiency;
}

std::optional<Deposition> deposition(const Procedure& procedure, const Filler& filler,
                                     std::vector<Fault>& faults, const Gas* gas) {
    const std::vector<Fault> unfit = form_faults(procedure, filler);
    ranges::push_back(faults, unfit);
    if (!unfit.empty())
        return std::nullopt;
    const WireSize size = scaled_to(nearest_size(filler, procedure.wire), procedure.wire);
    Deposition laid{.density = filler.deposit_density.value,
                    .current = procedure.current,
                    .current_given = procedure.current.has_value()};
    if (!is_wire(filler.form))
        return lay_pieces(laid, procedure, filler, size, faults) ? std::optional(laid) : std::nullopt;
    laid.linear_mass = filler.cored() ? size.linear_mass.value().value
                                      : solid_wire_mass(procedure.wire, filler.wire_density.value().value);
    laid.stick_out = procedure.stick_out ? Sourced<Length>{*procedure.stick_out, ""} : filler.stick_out;
    if (!complete(laid, procedure, size, faults))
        return std::nullopt;
    laid.as_transferred = transfer_holds(procedure, size, gas, laid.current);
    laid.efficiency = efficiency_of(procedure, filler, laid.as_transferred).value;
    laid.rate = laid.linear_mass * laid.wire_feed * laid.efficiency;
    return laid;
}

} // namespace ringfill
