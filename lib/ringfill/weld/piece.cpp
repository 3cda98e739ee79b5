#include <ringfill/weld/piece.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/units/metric.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/wire.hpp>

namespace ringfill {
namespace {

Working rate_by(std::string formula, std::vector<Input> inputs, MassFlow rate, std::string source) {
    return worked("deposition_kg_h", std::move(formula), std::move(inputs), in_kg_h(rate), std::move(source));
}

/// Between the two points of the table that the current lies between.
std::optional<Working> rate_in_table(Current current, const WireSize& size, const Procedure& procedure,
                                     std::vector<Fault>& faults) {
    const RatePoint* low =
        point_before(current, size.rates, &RatePoint::current, procedure.path + ".current",
                     "choose a current in the table or write \"deposition_rate\" too", faults);
    if (!low)
        return std::nullopt;
    const auto& [from, low_rate] = low[0];
    const auto& [to, high_rate] = low[1];
    const double share = (current - from.value) / (to.value - from.value);
    return rate_by("D_1 + (D_2 - D_1)*(I - I_1)/(I_2 - I_1)",
                   {{"D_1", in_kg_h(low_rate.value)},
                    {"D_2", in_kg_h(high_rate.value)},
                    {"I", current.value(), "A"},
                    {"I_1", from.value.value(), "A"},
                    {"I_2", to.value.value(), "A"}},
                   low_rate.value + share * (high_rate.value - low_rate.value), low_rate.source);
}

Fault misplaced(const Procedure& procedure, std::string_view field, std::string reason, std::string remedy) {
    return fault_at_path(procedure.path + "." + std::string(field), {}, std::move(reason), std::move(remedy));
}

} // namespace

Mass usable_mass(const PieceLaid& piece, LinearMass core, double efficiency) {
    const Length melted = piece.length - piece.stub;
    return piece.of_covered ? piece.mass * (melted / piece.length) * efficiency : core * melted * efficiency;
}

int pieces_for(Mass laid, const PieceLaid& piece) {
    const double count = std::ceil((laid / piece.usable).value() - 1e-9);
    return count <= most_pieces ? static_cast<int>(count) : most_pieces + 1;
}

std::optional<Working> piece_rate(const Procedure& procedure, const Filler& filler, const WireSize& size,
                                  std::vector<Fault>& faults) {
    const auto refuse = [&](const char* field, const char* reason, const char* remedy) {
        faults.push_back(misplaced(procedure, field, reason, remedy));
        return std::nullopt;
    };
    const auto& given = procedure.deposition_rate;
    if (given)
        return rate_by("60*d", {{"d", kg_h(*given) / 60, "kg/min"}}, *given, "job");
    if (filler.form == FillerForm::rod) {
        if (!size.range)
            return refuse("deposition_rate", "is missing, and the table has none of this rod",
                          R"(write "deposition_rate": "1.0 kg/h" from a trial weld)");
        const MassFlow low = size.range->value.first;
        return rate_by("60*d_low", {{"d_low", kg_h(low) / 60, "kg/min"}}, low, size.range->source);
    }
    if (!procedure.current)
        return refuse("current", "is missing: it sets how fast an electrode melts",
                      R"(write "current": "130 A" or "deposition_rate": "1.2 kg/h")");
    if (!size.per_A)
        return rate_in_table(*procedure.current, size, procedure, faults);
    const double amps = procedure.current->value();
    const auto& [per_A, source] = *size.per_A;
    return rate_by("k*I", {{"k", per_A * factor::hour, "kg/(h A)"}, {"I", amps, "A"}},
                   in_si<MassFlow>(per_A * amps), source);
}

std::vector<Fault> form_faults(const Procedure& procedure, const Filler& filler) {
    std::vector<Fault> faults;
    const auto refuse = [&](bool is_there, std::string_view field, std::string reason, std::string remedy) {
        if (is_there)
            faults.push_back(misplaced(procedure, field, std::move(reason), std::move(remedy)));
    };
    const bool over = procedure.efficiency.value_or(1) > 1;
    if (is_wire(filler.form)) {
        refuse(procedure.deposition_rate.has_value(), "deposition_rate",
               "belongs to electrodes and rods; the feed sets the metal of wire",
               R"(take it out and write "wire_feed")");
        refuse(over, "efficiency", "is over 1, which only a covered electrode reaches", "write at most 1");
        return faults;
    }
    const bool stick = filler.form == FillerForm::stick;
    const std::string_view what = stick ? "an electrode" : "a rod";
    const auto no_part = fmt::format("is of wire, and {} is {}", procedure.filler, what);
    refuse(procedure.wire_feed.has_value(), "wire_feed", no_part,
           stick ? R"(take it out; "current" sets how fast it melts)"
                 : R"(take it out; "deposition_rate" says how fast it is added)");
    refuse(procedure.stick_out.has_value(), "stick_out", no_part, "take it out");
    refuse(!procedure.spools.empty(), "spools", no_part, "take them out");
    refuse(!procedure.transfer.empty(), "transfer", no_part, "take it out");
    refuse(procedure.torch_path == TorchPath::helix, "path",
           fmt::format("is a helix, and {} is changed on the way", what), R"(write "path": "ring")");
    refuse(stick && procedure.gas_flow.has_value(), "gas_flow",
           "does not go with an electrode, which shields itself", "take it out");
    refuse(!stick && over, "efficiency", "is over 1, which only a covered electrode reaches",
           "write at most 1");
    if (filler.process == "torch_brazing") {
        refuse(procedure.current.has_value(), "current", "does not go with a torch", "take it out");
        refuse(procedure.voltage.has_value(), "voltage", "does not go with a torch", "take it out");
    }
    return faults;
}

} // namespace ringfill
