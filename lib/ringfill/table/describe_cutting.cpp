#include <ringfill/table/describe_cutting.hpp>

#include <array>

#include <ringfill/table/read_table.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span metres_a_minute{0, 10'000, true};
constexpr Span cut{0, 100, true};     // mm
constexpr Span size{0, 10'000, true}; // mm
constexpr Span minutes{0, 14'400};    // ten days
constexpr Span life{0, 14'400, true}; // min
constexpr Span per_kelvin{0, 1e-3, true};
constexpr Span celsius{-60, 700};
constexpr Span turning{0, 6'000};   // rev/min
constexpr Span drive{0, 100, true}; // kW
constexpr Span axial{0, 100'000};   // mm/min

constexpr std::array cutting_fields = {
    Field{.name = "cutting_speed_m_min",
          .kind = Kind::sourced,
          .span = metres_a_minute,
          .sample = R"([60, "practice"])"},
    Field{.name = "feed_mm", .kind = Kind::sourced, .span = cut, .sample = R"([0.15, "practice"])"},
    Field{.name = "facing_feed_mm", .kind = Kind::sourced, .span = cut, .sample = R"([0.127, "practice"])"},
    Field{.name = "rough_cut_mm", .kind = Kind::sourced, .span = cut, .sample = R"([1.5, "practice"])"},
    Field{.name = "semi_finish_cut_mm", .kind = Kind::sourced, .span = cut, .sample = R"([0.5, "practice"])"},
    Field{.name = "finish_cut_mm", .kind = Kind::sourced, .span = cut, .sample = R"([0.25, "practice"])"},
    Field{.name = "nose_radius_mm", .kind = Kind::sourced, .span = cut, .sample = R"([0.8, "practice"])"},
    Field{.name = "edge_life_min", .kind = Kind::sourced, .span = life, .sample = R"([20, "practice"])"},
    Field{.name = "expansion_per_K",
          .kind = Kind::sourced,
          .span = per_kelvin,
          .sample = R"([12e-6, "practice"])"},
    Field{
        .name = "rough_below_degC", .kind = Kind::sourced, .span = celsius, .sample = R"([60, "practice"])"},
    Field{
        .name = "finish_below_degC", .kind = Kind::sourced, .span = celsius, .sample = R"([30, "practice"])"},
};
constexpr Record figures_record{"cutting", "", cutting_fields};

constexpr std::array bar_fields = {
    Field{.name = "small_bar_rpm",
          .kind = Kind::sourced_range,
          .span = turning,
          .sample = R"([100, 420, "practice"])"},
    Field{.name = "large_bar_rpm",
          .kind = Kind::sourced_range,
          .span = turning,
          .sample = R"([20, 180, "practice"])"},
    Field{.name = "axial_feed_mm_min",
          .kind = Kind::sourced_range,
          .span = axial,
          .sample = R"([0, 63.5, "practice"])"},
    Field{.name = "bores_mm",
          .kind = Kind::sourced_range,
          .span = size,
          .sample = R"([38.1, 914.4, "practice"])"},
    Field{.name = "drive_kW", .kind = Kind::sourced, .span = drive, .sample = R"([1.5, "practice"])"},
    Field{.name = "bit_step_mm", .kind = Kind::sourced, .span = cut, .sample = R"([0.0254, "practice"])"},
};
constexpr Record bars_record{"bars", "", bar_fields};

constexpr std::array time_fields = {
    Field{.name = "minutes", .kind = Kind::sourced, .span = minutes, .sample = R"([3, "practice"])"},
    Field{.name = "range_minutes",
          .kind = Kind::sourced_range,
          .span = minutes,
          .sample = R"([2, 6, "practice"])"},
};
constexpr Record time_record{"a standing time", "", time_fields};

constexpr std::array standing_fields = {
    Field{.name = "tool_set", .kind = Kind::object, .record = &time_record},
    Field{.name = "trim", .kind = Kind::object, .record = &time_record},
    Field{.name = "facing_head", .kind = Kind::object, .record = &time_record},
    Field{.name = "groove", .kind = Kind::object, .record = &time_record},
    Field{.name = "hole", .kind = Kind::object, .record = &time_record},
    Field{.name = "chamfer", .kind = Kind::object, .record = &time_record},
    Field{.name = "bar_move", .kind = Kind::object, .record = &time_record},
};
constexpr Record standing_record{"standing", "", standing_fields};

constexpr std::array format = {"ringfill-cutting/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-cutting/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "cutting", .kind = Kind::object, .record = &figures_record},
    Field{.name = "bars", .kind = Kind::object, .record = &bars_record},
    Field{.name = "standing", .kind = Kind::object, .record = &standing_record},
};

} // namespace

constinit const Record cutting_record{"the table of cutting", "", file_fields};

} // namespace ringfill
