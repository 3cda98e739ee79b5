#include <array>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array axes = {"horizontal"sv, "vertical"sv};
constexpr std::array no_skim = {"none"sv};
constexpr std::array other_ends = {"open"sv, "fitting"sv, "blind"sv};

constexpr std::array station_fields = {
    Field{.name = "depth", .kind = Kind::length, .required = true, .span = spans::distance,
          .help = "how deep in the bore, from the near face", .sample = R"("5 mm")"},
    Field{.name = "radii", .kind = Kind::length, .shape = Shape::list, .span = spans::size,
          .help = "readings from the target axis, at equal clock steps over the whole turn from 12 o'clock, clockwise seen from the near face",
          .sample = R"(["46.9 mm", "46.4 mm", "46.2 mm", "46.3 mm", "46.6 mm", "46.3 mm", "46.2 mm", "46.4 mm"])",
          .least = 3, .most = 360},
    Field{.name = "diameters", .kind = Kind::length, .shape = Shape::list, .span = spans::size,
          .help = "two-point readings, at equal steps over half a turn from 12 o'clock; two-point readings never show three-lobed wear",
          .sample = R"(["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"])", .least = 2, .most = 180},
};

constexpr std::array worn_fields = {
    Field{.name = "diameter", .kind = Kind::length, .span = spans::size,
          .help = "one worn diameter for the whole bore; or give stations", .sample = R"("93.4 mm")", .starts = true},
    Field{.name = "offset", .kind = Kind::length, .span = spans::distance,
          .help = "how far the centre of the worn bore lies off the target axis", .sample = R"("0.4 mm")"},
    Field{.name = "offset_clock", .kind = Kind::angle, .span = spans::turn,
          .help = "towards which clock position it lies off, from 12 o'clock", .sample = R"("180 deg")"},
    Field{.name = "stations", .kind = Kind::object, .shape = Shape::list,
          .help = "readings at one or more depths, all in the same form and number",
          .sample = R"([{ "depth": "5 mm", "diameters": ["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"] }])",
          .record = &station_record, .least = 1, .most = 100},
};

constexpr std::array attached_fields = {
    Field{.name = "thickness", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "thickness of the plate", .sample = R"("25 mm")"},
};

constexpr std::array face_fields = {
    Field{.name = "inner", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "inner diameter of the pad", .sample = R"("90 mm")"},
    Field{.name = "outer", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "outer diameter of the pad", .sample = R"("150 mm")"},
    Field{.name = "build", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "how far the finished face stands over the worn one", .sample = R"("2 mm")"},
};

constexpr std::array groove_fields = {
    Field{.name = "diameter", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "diameter of the groove's floor", .sample = R"("96 mm")"},
    Field{.name = "width", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "width along the bore", .sample = R"("4 mm")"},
};

constexpr std::array hole_fields = {
    Field{.name = "diameter", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "diameter of the hole", .sample = R"("10 mm")"},
    Field{.name = "depth", .kind = Kind::length, .required = true, .span = spans::distance,
          .help = "depth of its centre from the near face", .sample = R"("50 mm")"},
    Field{.name = "clock", .kind = Kind::angle, .required = true, .span = spans::turn,
          .help = "its clock position, from 12 o'clock", .sample = R"("90 deg")"},
    Field{.name = "other_end", .kind = Kind::word, .help = "what is at its other end", .sample = R"("open")",
          .words = other_ends},
};

constexpr std::array bore_fields = {
    Field{.name = "name", .kind = Kind::text, .required = true, .span = spans::name,
          .help = "what the bore is called on site; no two alike", .sample = R"("arm root")"},
    Field{.name = "count", .kind = Kind::count, .span = spans::count,
          .help = "how many bores alike; 1 when left out", .sample = "1"},
    Field{.name = "line", .kind = Kind::text, .span = spans::name,
          .help = "bores with the same line are bored in one set-up of the bar", .sample = R"("root")"},
    Field{.name = "axis", .kind = Kind::word, .fallback = "horizontal", .fallback_source = "practice",
          .help = "how the bore lies; with a horizontal axis every turn passes overhead",
          .sample = R"("horizontal")", .words = axes},
    Field{.name = "base", .kind = Kind::text, .required = true, .span = spans::name,
          .help = "the metal of the boss, family/grade", .sample = R"("steel/C45")"},
    Field{.name = "composition", .kind = Kind::number, .shape = Shape::named, .span = spans::percent,
          .help = "percent by mass from the mill certificate", .sample = R"({ "C": 0.46, "Mn": 0.68 })"},
    Field{.name = "finish_diameter", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "the diameter the bore will be finished to", .sample = R"("90 mm")"},
    Field{.name = "size_class", .kind = Kind::text, .span = spans::name,
          .help = "the ISO 286 tolerance of the finished bore", .sample = R"("H9")"},
    Field{.name = "length", .kind = Kind::length, .required = true, .span = spans::size,
          .help = "finished length between the faces", .sample = R"("100 mm")"},
    Field{.name = "boss_diameter", .kind = Kind::length, .span = spans::size,
          .help = "outside diameter of the boss; without it no wall, no boss mass and no heat balance",
          .sample = R"("180 mm")", .starts = true},
    Field{.name = "attached", .kind = Kind::object, .shape = Shape::list,
          .help = "plates on the boss that carry heat off", .sample = R"([{ "thickness": "25 mm" }])",
          .record = &attached_record, .least = 1, .most = 100},
    Field{.name = "carry_off", .kind = Kind::conductance, .span = spans::carry_off,
          .help = "heat carried off into the machine, if known; overrules the plates", .sample = R"("2 W/K")"},
    Field{.name = "heat_wall", .kind = Kind::length, .span = spans::size,
          .help = "the thickness that governs preheat, if not the wall after the skim", .sample = R"("43 mm")"},
    Field{.name = "worn", .kind = Kind::object, .required = true, .help = "the worn surface, as measured",
          .sample = R"({ "diameter": "93.4 mm", "offset": "0.4 mm" })", .record = &worn_record},
    Field{.name = "skim", .kind = Kind::length, .span = spans::distance, .fallback = "0.5 mm",
          .fallback_source = "practice",
          .help = "clean-up cut before welding, per side, past the deepest wear; \"none\" welds on the surface as it is",
          .sample = R"("0.5 mm")", .words = no_skim},
    Field{.name = "stock", .kind = Kind::length, .span = spans::distance, .fallback = "2 mm",
          .fallback_source = "practice", .help = "weld metal left for the boring bar, per side",
          .sample = R"("2 mm")"},
    Field{.name = "overhang", .kind = Kind::length, .span = spans::distance, .fallback = "3 mm",
          .fallback_source = "practice", .help = "how far the weld runs past each face", .sample = R"("3 mm")"},
    Field{.name = "procedure", .kind = Kind::text, .span = spans::name,
          .help = "which of the procedures; may be left out when there is only one", .sample = R"("main")"},
    Field{.name = "faces", .kind = Kind::object, .shape = Shape::list, .help = "worn boss faces to build up",
          .sample = R"([{ "inner": "90 mm", "outer": "150 mm", "build": "2 mm" }])", .record = &face_record,
          .least = 1, .most = 20},
    Field{.name = "grooves", .kind = Kind::object, .shape = Shape::list,
          .help = "ring grooves, filled before the bore is welded",
          .sample = R"([{ "diameter": "96 mm", "width": "4 mm" }])", .record = &groove_record, .least = 1,
          .most = 100},
    Field{.name = "holes", .kind = Kind::object, .shape = Shape::list,
          .help = "holes into the bore, plugged before welding",
          .sample = R"([{ "diameter": "10 mm", "depth": "50 mm", "clock": "90 deg", "other_end": "open" }])",
          .record = &hole_record, .least = 1, .most = 100},
};

} // namespace

constinit const Record station_record{"a station", "readings at one depth", station_fields};
constinit const Record worn_record{"worn", "the worn surface, measured from the target axis", worn_fields};
constinit const Record attached_record{"an attached plate", "a plate on the boss", attached_fields};
constinit const Record face_record{"a face", "a worn boss face", face_fields};
constinit const Record groove_record{"a groove", "a ring groove", groove_fields};
constinit const Record hole_record{"a hole", "a hole into the bore", hole_fields};
constinit const Record bore_record{"a bore", "one bore, or several alike", bore_fields};

} // namespace ringfill
