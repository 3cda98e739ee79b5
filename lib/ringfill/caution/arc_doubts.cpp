#include <algorithm>
#include <cmath>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/contains.hpp>

#include <ringfill/caution/doubt_rules.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>
#include <ringfill/weld/wire.hpp>

namespace ringfill {
namespace {

std::string volts(double value, UnitSystem) {
    return fmt::format("{:.3g} V", value);
}
std::string amps(double value, UnitSystem) {
    return show(in_si<Current>(value));
}
std::string plain(double value, UnitSystem) {
    return fmt::format("{:.3g}", value);
}
std::string speed_text(double value, UnitSystem units) {
    return show(in_si<Speed>(value), units);
}
std::string feed_text(double value, UnitSystem units) {
    const bool is_tiny = value < 0.1 / factor::minute; // m/min, which a feed is shown in
    return is_tiny ? speed_text(value, units) : show_feed(in_si<Speed>(value), units);
}
std::string rate_text(double value, UnitSystem units) {
    return show(in_si<MassFlow>(value), units);
}
std::string flow_text(double value, UnitSystem units) {
    return show(in_si<VolumeFlow>(value), units);
}

/// Arc voltages of a process, whatever the wire [common practice, no source].
std::optional<Usual> usual_volts(const Filler& filler) {
    if (filler.process == "torch_brazing")
        return std::nullopt;
    if (filler.process == "gas_tungsten_arc")
        return Usual{8, 22};
    return filler.process == "manual_metal_arc" ? Usual{16, 40} : Usual{13, 40};
}

/// What the melting curve asks for at the feed and stick-out there are; nothing without a curve or a feed,
/// and where one of these is in doubt itself.
std::optional<double> asked_by_curve(const DoubtList& doubts, const Settings& settings) {
    const Procedure& procedure = *settings.procedure;
    const WireSize size = scaled_to(*settings.size, procedure.wire);
    if (!size.melting || !procedure.wire_feed)
        return std::nullopt;
    for (const char* field : {".wire_feed", ".stick_out", ".wire"})
        if (ranges::contains(doubts.found, procedure.path + field, &Doubt::field))
            return std::nullopt;
    return current_of(*procedure.wire_feed, settings.deposition.stick_out.value, *size.melting).value();
}

/// Amps and volts each in the other's place; told once, with both.
bool is_swapped(const Settings& settings, const std::optional<Usual>& voltage,
                const std::optional<Usual>& current) {
    const Procedure& procedure = *settings.procedure;
    if (!procedure.voltage || !procedure.current || !voltage || voltage->holds(procedure.voltage->value()))
        return false;
    const Usual fits = current.value_or(Usual{30, 600});
    return voltage->holds(procedure.current->value()) && fits.holds(procedure.voltage->value());
}

void current_doubts(DoubtList& doubts, const Settings& settings, const std::optional<Usual>& window) {
    const Procedure& procedure = *settings.procedure;
    if (!procedure.current)
        return;
    doubts.judge("current", procedure.current->value(), window, amps);
    const auto asked = asked_by_curve(doubts, settings);
    if (!asked)
        return;
    const bool pulses = procedure.transfer == "pulse";
    const Usual by_curve = pulses ? Usual{0.55 * *asked, 1.35 * *asked} : Usual{0.65 * *asked, 1.5 * *asked};
    doubts.judge("current", procedure.current->value(), by_curve, amps,
                 fmt::format(" at a feed of {}", show_feed(*procedure.wire_feed, doubts.units)));
}

/// Metal laid in an hour by an electrode or rod, a half more or less than its row has.
std::optional<Usual> usual_rate(const Settings& settings) {
    const WireSize& size = *settings.size;
    const auto around = [](double low, double high) { return Usual{low / 2, high * 1.5}; };
    if (size.range)
        return around(size.range->value.first.value(), size.range->value.second.value());
    if (!size.rates.empty())
        return around(size.rates.front().rate.value.value(), size.rates.back().rate.value.value());
    const auto& current = settings.window.current;
    if (!size.per_A || !current)
        return std::nullopt;
    return around(size.per_A->value * current->value.first.value(),
                  size.per_A->value * current->value.second.value());
}

/// Deposited shares [common practice, no source]; none of an electrode whose share is of its core.
std::optional<Usual> usual_efficiency(const Filler& filler) {
    switch (filler.form) {
    case FillerForm::solid:
        return Usual{0.85, 1};
    case FillerForm::cored:
        return Usual{0.72, 0.99};
    case FillerForm::stick:
        return filler.efficiency_of_covered ? std::optional(Usual{0.5, 0.85}) : std::nullopt;
    case FillerForm::rod:
        return Usual{0.88, 1};
    }
    return std::nullopt;
}

constexpr double wire_sizes_mm[] = {0.6,   0.8,   0.9,   1.0,   1.1,   1.2,    1.4,   1.6,   2.0,  2.4,
                                    0.762, 0.889, 1.016, 1.143, 1.321, 1.5875, 1.727, 1.984, 2.381};
constexpr double piece_sizes_mm[] = {1.6,    2.0,   2.4,   2.5,   3.2,   4.0,   5.0,  6.0,
                                     1.5875, 1.984, 2.381, 3.175, 3.969, 4.763, 5.556};

/// Made in that diameter: by standard sizes, or since the filler's own table has it.
bool is_made(const Filler& filler, Length wire) {
    const auto is_near = [&](double size_mm) { return std::abs(mm(wire) - size_mm) <= 0.03; };
    const bool standard = is_wire(filler.form) ? ranges::any_of(wire_sizes_mm, is_near)
                                               : ranges::any_of(piece_sizes_mm, is_near);
    return standard ||
           ranges::any_of(filler.sizes, [&](const WireSize& size) { return is_near(mm(size.diameter)); });
}

void size_doubt(DoubtList& doubts, const Settings& settings) {
    const Procedure& procedure = *settings.procedure;
    if (is_made(*settings.filler, procedure.wire))
        return;
    doubts.add(
        "wire", show_wire(procedure.wire, doubts.units),
        fmt::format("a size that is made, such as {}", show_wire(settings.size->diameter, doubts.units)));
}

} // namespace

void arc_doubts(DoubtList& doubts, const Settings& settings) {
    const Procedure& procedure = *settings.procedure;
    const Filler& filler = *settings.filler;
    size_doubt(doubts, settings);
    doubts.judge("wire_feed", si_number(procedure.wire_feed), with_room(settings.window.wire_feed),
                 feed_text);
    doubts.judge("stick_out", si_number(procedure.stick_out),
                 filler.cored() ? Usual{0.012, 0.038} : Usual{0.008, 0.025}, length_text);
    const auto voltage = usual_volts(filler);
    const auto current = with_room(settings.window.current);
    if (is_swapped(settings, voltage, current)) {
        doubts.add(
            "voltage", volts(procedure.voltage->value(), doubts.units),
            fmt::format("{} to {}", volts(voltage->low, doubts.units), volts(voltage->high, doubts.units)),
            fmt::format("{} and {}", volts(procedure.current->value(), doubts.units),
                        amps(procedure.voltage->value(), doubts.units)));
    } else {
        doubts.judge("voltage", si_number(procedure.voltage), voltage, volts);
        current_doubts(doubts, settings, current);
    }
    doubts.judge("travel", procedure.travel.value(), with_room(settings.window.travel), speed_text);
    const double twice = 2.2 * procedure.travel.value();
    doubts.judge("travel_max", si_number(procedure.travel_max), Usual{procedure.travel.value(), twice},
                 speed_text, " at that travel");
    doubts.judge("deposition_rate", si_number(procedure.deposition_rate), usual_rate(settings), rate_text);
    const double litre_a_minute = factor::litre / factor::minute;
    doubts.judge("gas_flow", si_number(procedure.gas_flow),
                 filler.form == FillerForm::rod ? Usual{6 * litre_a_minute, 15 * litre_a_minute}
                                                : Usual{10 * litre_a_minute, 25 * litre_a_minute},
                 flow_text);
    doubts.judge("bead_ratio", procedure.bead_ratio, Usual{2, 5}, plain);
    doubts.judge("pitch_ratio", procedure.pitch_ratio, Usual{0.55, 0.738}, plain);
    doubts.judge("efficiency", procedure.efficiency, usual_efficiency(filler), plain);
}

} // namespace ringfill
