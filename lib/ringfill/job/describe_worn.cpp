#include <array>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

constexpr std::array station_fields = {
    Field{.name = "depth",
          .kind = Kind::length,
          .required = true,
          .span = spans::distance,
          .help = "how deep in the bore, from the near face",
          .sample = R"("5 mm")"},
    Field{.name = "radii",
          .kind = Kind::length,
          .shape = Shape::list,
          .span = spans::size,
          .help = "readings from the target axis, at equal clock steps over the whole turn from 12 o'clock, "
                  "clockwise seen from the near face",
          .sample =
              R"(["46.9 mm", "46.4 mm", "46.2 mm", "46.3 mm", "46.6 mm", "46.3 mm", "46.2 mm", "46.4 mm"])",
          .least = 3,
          .most = 360},
    Field{.name = "diameters",
          .kind = Kind::length,
          .shape = Shape::list,
          .span = spans::size,
          .help = "two-point readings, at equal steps over half a turn from 12 o'clock; two-point readings "
                  "never show three-lobed wear",
          .sample = R"(["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"])",
          .least = 2,
          .most = 180},
};

constexpr std::array worn_fields = {
    Field{.name = "diameter",
          .kind = Kind::length,
          .span = spans::size,
          .help = "one worn diameter for the whole bore; or give stations",
          .sample = R"("93.4 mm")",
          .starts = true},
    Field{.name = "offset",
          .kind = Kind::length,
          .span = spans::distance,
          .help = "how far the centre of the worn bore lies off the target axis",
          .sample = R"("0.4 mm")"},
    Field{.name = "offset_clock",
          .kind = Kind::angle,
          .span = spans::turn,
          .help = "towards which clock position it lies off, from 12 o'clock",
          .sample = R"("180 deg")"},
    Field{.name = "stations",
          .kind = Kind::object,
          .shape = Shape::list,
          .help = "readings at one or more depths, all in the same form and number",
          .sample = R"([{ "depth": "5 mm", "diameters": ["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"] }])",
          .record = &station_record,
          .least = 1,
          .most = 100},
};

} // namespace

constinit const Record station_record{"a station", "readings at one depth", station_fields};
constinit const Record worn_record{"worn", "the worn surface, measured from the target axis", worn_fields};

} // namespace ringfill
