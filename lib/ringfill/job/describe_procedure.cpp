
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/description.hpp>
#include <ringfill/job/field_rules.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace spans;

constexpr std::string_view paths[] = {"ring", "helix"};
constexpr std::string_view transfers[] = {"short", "pulse", "spray", "globular"};

constexpr Field post_heat_fields[] = {
    must<&Approved::PostHeat::temperature>("temperature", temperature, R"("250 degC")", "held at"),
    must<&Approved::PostHeat::time>("time", time, R"("2 h")", "held for"),
};

constexpr Field approved_fields[] = {
    must<&Approved::reference>("reference", name, R"("P-12 rev 2")",
                               "its number and revision, printed on every view"),
    field<&Approved::preheat_min>("preheat_min", temperature, R"("180 degC")",
                                  "lowest temperature to weld at"),
    field<&Approved::interpass_max>("interpass_max", temperature, R"("300 degC")",
                                    "highest temperature to start a ring at"),
    // J/m, 0.001 to 100 kJ/mm
    field<&Approved::heat_input>("heat_input", Span{1e3, 1e8}, R"(["0.4 kJ/mm", "0.9 kJ/mm"])",
                                 "lowest and highest heat input"),
    field<&Approved::post_heat>("post_heat", post_heat_record,
                                R"({ "temperature": "250 degC", "time": "2 h" })", "hold after welding"),
    field<&Approved::confirmed>("confirmed", "false",
                                "whether its author has confirmed what would be stopped without it"),
};

constexpr Field procedure_fields[] = {
    must<&Procedure::filler>("filler", name, R"("steel/ER70S-6")",
                             "the designation of the wire, electrode or rod, family/name"),
    // m, a thin hair to a thick rod
    must<&Procedure::wire>("wire", Span{1e-4, 0.01}, R"("1.0 mm")",
                           "diameter of the wire, of an electrode's core or of a rod"),
    // kg
    field<&Procedure::spools>("spools", list_of(Span{0.1, 2'000}, 1, 12), R"(["15 kg", "5 kg"])",
                              "spool sizes the feeder takes; the table's spools when left out"),
    shown<&Procedure::gas>("gas", name, R"("M21")",
                           "shielding gas by its EN ISO 14175 designation, or \"none\"; left out for "
                           "electrodes and for wire that needs none"),
    shown<&Procedure::wire_feed>("wire_feed", speed, R"("8 m/min")",
                                 "wire feed speed; it sets the metal. Feed or current may be left out, not "
                                 "both; an electrode or rod has none"),
    shown<&Procedure::current>("current", current, R"("180 A")", "welding current; it sets the heat"),
    // kg/s, 1 g/h to 50 kg/h
    field<&Procedure::deposition_rate>("deposition_rate", Span{1e-3 / 3600, 50.0 / 3600}, R"("1.2 kg/h")",
                                       "metal laid in an hour of arc by an electrode or rod; by current, or "
                                       "the low end of its range, when left out"),
    // V
    shown<&Procedure::voltage>("voltage", Span{1, 200}, R"("19.5 V")", "arc voltage"),
    must<&Procedure::travel>("travel", speed, R"("350 mm/min")", "travel speed at the weld surface"),
    field<&Procedure::travel_max>("travel_max", speed, R"("450 mm/min")",
                                  "fastest travel that still welds well; travel / 0.75 when left out (heat "
                                  "input down by a quarter at most)"),
    by_practice<&Procedure::transfer>("transfer", transfers, R"("short")", "how the metal crosses the arc"),
    by_practice<&Procedure::torch_path>(
        "path", paths, R"("ring")", "closed rings stepped by the pitch, or one helix a layer (wire only)"),
    field<&Procedure::efficiency>(
        "efficiency", Span{0.001, 2.5}, "0.92",
        "share of the wire or rod that ends in the weld, of an electrode as its table says; the filler's "
        "when left out. Over 1 only with iron powder in a covering"),
    field<&Procedure::bead_ratio>("bead_ratio", Span{0.001, 50}, "3.0",
                                  "bead width over its crown; the filler's when left out"),
    field<&Procedure::pitch_ratio>("pitch_ratio", ratio, "0.667",
                                   "pitch over bead width; two thirds when left out"),
    field<&Procedure::dilution>("dilution", Span{0.001, 0.9}, "0.2",
                                "share of what lies under that is melted into a bead, from a section of a "
                                "trial weld; by process when left out"),
    // m3/s, 0.1 to 600 L/min
    field<&Procedure::gas_flow>("gas_flow", Span{1e-4 / 60, 0.01}, R"("12 L/min")",
                                "shielding gas flow; by wire diameter and gas when left out"),
    field<&Procedure::step_over>("step_over", Span{0, 3'600}, R"("12 s")",
                                 "least pause between rings, the torch stepping over; that of the standing "
                                 "times when left out"),
    by_practice<&Procedure::gas_before>("gas_before", gas_time, R"("1 s")", "gas before each start"),
    by_practice<&Procedure::gas_after>("gas_after", gas_time, R"("2 s")", "gas after each stop"),
    field<&Procedure::stick_out>("stick_out", size, R"("12 mm")",
                                 "wire from the contact tip to the arc; the filler's when left out"),
    // ml in 100 g, the most that a rule runs on to
    field<&Procedure::hydrogen_ml_100g>(
        "hydrogen_ml_100g", Span{0.01, 30}, "3.5",
        "diffusible hydrogen of the weld metal, measured (ISO 3690), ml in 100 g; the limit of the filler's "
        "class when left out. Over 30 no rule holds: take a drier filler"),
    field<&Procedure::deposit>("deposit", Span{0, 100}, R"({ "C": 0.07, "Mn": 1.1 })",
                               "measured analysis of its undiluted weld metal, percent by mass; the filler's "
                               "when left out"),
    field<&Procedure::approved>(
        "approved", approved_record,
        R"({ "reference": "P-12 rev 2", "preheat_min": "180 degC", "interpass_max": "300 degC" })",
        "the approved welding procedure, where there is one: it rules"),
};

void check_approved(Approved& approved, const Entry& entry) {
    if (approved.heat_input && approved.heat_input->first > approved.heat_input->second)
        entry.refuse("heat_input", "has its lowest over its highest", "write the lower one first");
}

void check_procedure(Procedure& procedure, const Entry& entry) {
    if (procedure.name.empty() || count_characters(procedure.name) > 80)
        entry.refuse("has a name of no or too many characters", "write 1 to 80 characters");
    if (!entry.has("wire_feed") && !entry.has("current") && !entry.has("deposition_rate"))
        entry.refuse("wire_feed", "is missing, and so is current",
                     R"(write "wire_feed": "8 m/min" or "current": "180 A", or both)");
    if (entry.is_read("travel") && procedure.travel_max && procedure.travel > *procedure.travel_max)
        entry.refuse("travel_max", "is slower than travel", "write the fastest travel that still welds well");
    check_shares(procedure.deposit, entry, "deposit");
    procedure.transfer_given = entry.has("transfer");
}

} // namespace

const Record post_heat_record =
    record_of<Approved::PostHeat>("post_heat", "hold after welding", post_heat_fields);
const Record approved_record =
    record_of<Approved, check_approved>("approved", "an approved welding procedure", approved_fields);
const Record procedure_record = record_of<Procedure, check_procedure>(
    "a procedure", "the settings a bore is welded with", procedure_fields);

} // namespace ringfill
