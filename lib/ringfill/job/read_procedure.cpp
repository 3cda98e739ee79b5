#include <ringfill/job/read_procedure.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

Approved read_approved(const Entry& entry) {
    Approved approved;
    approved.reference = entry.text("reference").value_or("");
    approved.preheat_min = measured<Temperature>(entry, "preheat_min");
    approved.interpass_max = measured<Temperature>(entry, "interpass_max");
    if (const auto band = measured_list<EnergyPerLength>(entry, "heat_input"); band.size() == 2) {
        if (band[0] > band[1])
            entry.refuse("heat_input", "has its lowest over its highest", "write the lower one first");
        approved.heat_input = {band[0], band[1]};
    }
    if (const auto post_heat = entry.object("post_heat"))
        approved.post_heat = {measured<Temperature>(*post_heat, "temperature"),
                              measured<Time>(*post_heat, "time")};
    return approved;
}

void check_settings(const Procedure& procedure, const Entry& entry) {
    if (!entry.has("wire_feed") && !entry.has("current") && !entry.has("deposition_rate"))
        entry.refuse("wire_feed", "is missing, and so is current",
                     R"(write "wire_feed": "8 m/min" or "current": "180 A", or both)");
    if (procedure.travel_max && procedure.travel > *procedure.travel_max)
        entry.refuse("travel_max", "is slower than travel", "write the fastest travel that still welds well");
}

} // namespace

Procedure read_procedure(const std::string& name, const Entry& entry) {
    Procedure procedure;
    procedure.name = name;
    procedure.path = entry.path();
    if (name.empty() || count_characters(name) > 80)
        entry.refuse(entry.value(), entry.path(), "has a name of no or too many characters",
                     "write 1 to 80 characters");
    procedure.filler = entry.text("filler").value_or("");
    procedure.wire = measured<Length>(entry, "wire").value_or(millimetres(1));
    procedure.spools = measured_list<Mass>(entry, "spools");
    procedure.gas = entry.text("gas").value_or("");
    procedure.wire_feed = measured<Speed>(entry, "wire_feed");
    procedure.current = measured<Current>(entry, "current");
    procedure.deposition_rate = measured<MassFlow>(entry, "deposition_rate");
    procedure.voltage = measured<Voltage>(entry, "voltage");
    const auto travel = measured<Speed>(entry, "travel");
    procedure.travel_max = measured<Speed>(entry, "travel_max");
    procedure.travel = travel.value_or(procedure.travel_max.value_or(in_si<Speed>(1)));
    procedure.transfer = entry.word("transfer").value_or("");
    procedure.transfer_given = entry.has("transfer");
    procedure.torch_path = entry.word("path") == "helix" ? TorchPath::helix : TorchPath::ring;
    procedure.efficiency = entry.number("efficiency");
    procedure.bead_ratio = entry.number("bead_ratio");
    procedure.dilution = entry.number("dilution");
    procedure.pitch_ratio = entry.number("pitch_ratio");
    procedure.gas_flow = measured<VolumeFlow>(entry, "gas_flow");
    procedure.gas_before = measured<Time>(entry, "gas_before").value_or(Time());
    procedure.gas_after = measured<Time>(entry, "gas_after").value_or(Time());
    procedure.stick_out = measured<Length>(entry, "stick_out");
    procedure.hydrogen_ml_100g = entry.number("hydrogen_ml_100g");
    if (const auto approved = entry.object("approved"))
        procedure.approved = read_approved(*approved);
    check_settings(procedure, entry);
    return procedure;
}

} // namespace ringfill
