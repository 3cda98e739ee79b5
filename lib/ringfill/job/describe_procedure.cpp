#include <array>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array paths = {"ring"sv, "helix"sv};
constexpr std::array transfers = {"short"sv, "pulse"sv, "spray"sv, "globular"sv};

constexpr std::array post_heat_fields = {
    Field{.name = "temperature", .kind = Kind::temperature, .required = true, .span = spans::temperature,
          .help = "held at", .sample = R"("250 degC")"},
    Field{.name = "time", .kind = Kind::time, .required = true, .span = spans::time, .help = "held for",
          .sample = R"("2 h")"},
};

constexpr std::array approved_fields = {
    Field{.name = "reference", .kind = Kind::text, .required = true, .span = spans::name,
          .help = "its number and revision, printed on every view", .sample = R"("P-12 rev 2")"},
    Field{.name = "preheat_min", .kind = Kind::temperature, .span = spans::temperature,
          .help = "lowest temperature to weld at", .sample = R"("180 degC")"},
    Field{.name = "interpass_max", .kind = Kind::temperature, .span = spans::temperature,
          .help = "highest temperature to start a ring at", .sample = R"("300 degC")"},
    Field{.name = "heat_input", .kind = Kind::energy_per_length, .shape = Shape::list, .span = spans::heat_input,
          .help = "lowest and highest heat input", .sample = R"(["0.4 kJ/mm", "0.9 kJ/mm"])", .least = 2,
          .most = 2},
    Field{.name = "post_heat", .kind = Kind::object, .help = "hold after welding",
          .sample = R"({ "temperature": "250 degC", "time": "2 h" })", .record = &post_heat_record},
};

constexpr std::array procedure_fields = {
    Field{.name = "filler", .kind = Kind::text, .required = true, .span = spans::name,
          .help = "the wire's designation, family/name", .sample = R"("steel/ER70S-6")"},
    Field{.name = "wire", .kind = Kind::length, .required = true, .span = spans::wire,
          .help = "wire diameter", .sample = R"("1.0 mm")"},
    Field{.name = "spools", .kind = Kind::mass, .shape = Shape::list, .span = spans::mass,
          .help = "spool sizes the feeder takes; the table's spools when left out",
          .sample = R"(["15 kg", "5 kg"])", .least = 1, .most = 12},
    Field{.name = "gas", .kind = Kind::text, .required = true, .span = spans::name,
          .help = "shielding gas by its EN ISO 14175 designation, or \"none\" for a wire that needs none",
          .sample = R"("M21")"},
    Field{.name = "wire_feed", .kind = Kind::speed, .span = spans::speed,
          .help = "wire feed speed; it sets the metal. Feed or current may be left out, not both",
          .sample = R"("8 m/min")", .starts = true},
    Field{.name = "current", .kind = Kind::current, .span = spans::current,
          .help = "welding current; it sets the heat", .sample = R"("180 A")"},
    Field{.name = "voltage", .kind = Kind::voltage, .span = spans::voltage, .help = "arc voltage",
          .sample = R"("19.5 V")"},
    Field{.name = "travel", .kind = Kind::speed, .required = true, .span = spans::speed,
          .help = "travel speed at the weld surface", .sample = R"("350 mm/min")"},
    Field{.name = "travel_max", .kind = Kind::speed, .span = spans::speed,
          .help = "fastest travel that still welds well; travel / 0.75 when left out (heat input down by a quarter at most)",
          .sample = R"("450 mm/min")"},
    Field{.name = "transfer", .kind = Kind::word, .fallback = "short", .fallback_source = "practice",
          .help = "how the metal crosses the arc", .sample = R"("short")", .words = transfers},
    Field{.name = "path", .kind = Kind::word, .fallback = "ring", .fallback_source = "practice",
          .help = "closed rings stepped by the pitch, or one helix a layer", .sample = R"("ring")", .words = paths},
    Field{.name = "efficiency", .kind = Kind::number, .span = spans::ratio,
          .help = "share of the wire that ends in the weld; the filler's when left out", .sample = "0.92"},
    Field{.name = "bead_ratio", .kind = Kind::number, .span = spans::shape,
          .help = "bead width over its crown; the filler's when left out", .sample = "3.0"},
    Field{.name = "pitch_ratio", .kind = Kind::number, .span = spans::ratio,
          .help = "pitch over bead width; two thirds when left out", .sample = "0.667"},
    Field{.name = "gas_flow", .kind = Kind::volume_flow, .span = spans::flow,
          .help = "shielding gas flow; by wire diameter and gas when left out", .sample = R"("12 L/min")"},
    Field{.name = "gas_before", .kind = Kind::time, .span = spans::gas_time, .fallback = "1 s",
          .fallback_source = "practice", .help = "gas before each start", .sample = R"("1 s")"},
    Field{.name = "gas_after", .kind = Kind::time, .span = spans::gas_time, .fallback = "2 s",
          .fallback_source = "practice", .help = "gas after each stop", .sample = R"("2 s")"},
    Field{.name = "stick_out", .kind = Kind::length, .span = spans::size,
          .help = "wire from the contact tip to the arc; the filler's when left out", .sample = R"("12 mm")"},
    Field{.name = "approved", .kind = Kind::object,
          .help = "the approved welding procedure, where there is one: it rules",
          .sample = R"({ "reference": "P-12 rev 2", "preheat_min": "180 degC", "interpass_max": "300 degC" })",
          .record = &approved_record},
};

} // namespace

constinit const Record post_heat_record{"post_heat", "hold after welding", post_heat_fields};
constinit const Record approved_record{"approved", "an approved welding procedure", approved_fields};
constinit const Record procedure_record{"a procedure", "the settings a bore is welded with", procedure_fields};

} // namespace ringfill
