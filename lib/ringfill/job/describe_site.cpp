#include <array>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array near_words = {"hydraulics"sv, "closed_cavity"sv, "tyre"sv, "battery"sv,
                                   "bearing"sv,    "fuel"sv,          "crane"sv};
constexpr std::array coatings = {"none"sv, "paint"sv, "zinc"sv, "unknown"sv};
constexpr std::array residues = {"grease"sv, "oil"sv, "solvent"sv, "dust"sv};
constexpr std::array crew_words = {"implant"sv, "new_to_heat"sv};

constexpr std::array site_fields = {
    Field{.name = "ambient",
          .kind = Kind::temperature,
          .span = spans::temperature,
          .help = "temperature of the air and the cold machine",
          .sample = R"("4 degC")"},
    Field{.name = "wet", .kind = Kind::flag, .help = "rain, dew or wet metal", .sample = "false"},
    Field{.name = "indoors", .kind = Kind::flag, .help = "under a roof", .sample = "false"},
    Field{.name = "enclosed",
          .kind = Kind::flag,
          .help = "inside a space that is hard to leave",
          .sample = "false"},
    Field{.name = "room_volume",
          .kind = Kind::volume,
          .span = spans::room,
          .help = "volume of the room",
          .sample = R"("300 m3")"},
    Field{.name = "ceiling",
          .kind = Kind::length,
          .span = spans::distance,
          .help = "height of the ceiling",
          .sample = R"("6 m")"},
    Field{.name = "near",
          .kind = Kind::word,
          .shape = Shape::list,
          .help = "what is near the heat or in the way of the current; what a list leaves out is not there, "
                  "[] says nothing is",
          .sample = R"(["hydraulics", "bearing"])",
          .words = near_words,
          .least = 0,
          .most = 20},
    Field{.name = "coating",
          .kind = Kind::word,
          .help = "what the metal is coated with",
          .sample = R"("paint")",
          .words = coatings},
    Field{.name = "residue",
          .kind = Kind::word,
          .shape = Shape::list,
          .help = "what is left on the metal; [] for nothing",
          .sample = R"(["grease"])",
          .words = residues,
          .least = 0,
          .most = 20},
    Field{.name = "crew",
          .kind = Kind::word,
          .shape = Shape::list,
          .help = "who needs care: a heart implant, new to work in the heat; [] for nobody",
          .sample = R"(["new_to_heat"])",
          .words = crew_words,
          .least = 0,
          .most = 20},
    Field{.name = "fire_rules",
          .span = spans::name,
          .help =
              "whose rule of the fire watch, such as \"NFPA51B-2019\"; \"longest\" takes the longest known",
          .sample = R"("longest")"},
};

} // namespace

constinit const Record site_record{"site", "where the work is done and what stands near it", site_fields};

} // namespace ringfill
