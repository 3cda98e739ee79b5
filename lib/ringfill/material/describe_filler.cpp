#include <ringfill/material/describe_family.hpp>

#include <array>

#include <ringfill/material/preheat_table.hpp>
#include <ringfill/table/processes.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/table/suits.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span density{500, 25'000};
constexpr Span percent{0, 100};
constexpr Span ratio{0, 1, true};
constexpr Span recovery{0, 2.5, true}; // covered electrodes with iron powder give more than their core
constexpr Span positive{0, 1e6, true};
constexpr Span not_negative{0, 1e6};
constexpr Span hydrogen{0, 100, true};
constexpr Span piece_length{100, 3'000};
constexpr Span stub_length{0, 500};
constexpr Span piece_mass{0.1, 5'000};
constexpr Span rate{0, 50, true};
constexpr std::array forms = {"solid"sv, "cored"sv, "stick"sv, "rod"sv};
constexpr Span celsius{-60, 700};
constexpr std::array advice_words = {"soak"sv, "slow_cooling"sv, "interpass"sv, "technique"sv};
constexpr std::array efficiency_words = {"core"sv, "electrode"sv};
constexpr std::array covering_words = {"iron_powder"sv};

constexpr std::array melting_fields = {
    Field{.name = "a_mm_per_A_s",
          .kind = Kind::sourced,
          .required = true,
          .span = positive,
          .sample = R"([0.3, "Norrish"])"},
    Field{.name = "b_per_A2_s",
          .kind = Kind::sourced,
          .required = true,
          .span = not_negative,
          .sample = R"([5e-5, "Norrish"])"},
};

constexpr std::array window_fields = {
    Field{.name = "wire_feed_m_min",
          .kind = Kind::sourced_range,
          .span = positive,
          .sample = R"([2, 12, "practice"])"},
    Field{.name = "current_A",
          .kind = Kind::sourced_range,
          .span = positive,
          .sample = R"([70, 260, "practice"])"},
    Field{.name = "voltage_V",
          .kind = Kind::sourced_range,
          .span = positive,
          .sample = R"([15, 22, "practice"])"},
    Field{.name = "travel_mm_min",
          .kind = Kind::sourced_range,
          .span = positive,
          .sample = R"([100, 1000, "practice"])"},
    Field{.name = "spray_from_A",
          .kind = Kind::sourced,
          .span = positive,
          .sample = R"([220, "spray-currents"])"},
};

constexpr std::array windows_fields = {
    Field{.name = "short", .kind = Kind::object, .sample = "{ ... }", .record = &window_record},
    Field{.name = "pulse", .kind = Kind::object, .sample = "{ ... }", .record = &window_record},
    Field{.name = "spray", .kind = Kind::object, .sample = "{ ... }", .record = &window_record},
    Field{.name = "globular", .kind = Kind::object, .sample = "{ ... }", .record = &window_record},
};

constexpr std::array feed_point_fields = {
    Field{.name = "wire_feed_m_min",
          .kind = Kind::sourced,
          .required = true,
          .span = positive,
          .sample = R"([8, "practice"])"},
    Field{.name = "current_A",
          .kind = Kind::sourced,
          .required = true,
          .span = positive,
          .sample = R"([180, "practice"])"},
};

constexpr std::array rate_point_fields = {
    Field{.name = "current_A",
          .kind = Kind::sourced,
          .required = true,
          .span = positive,
          .sample = R"([140, "practice"])"},
    Field{.name = "rate_kg_h",
          .kind = Kind::sourced,
          .required = true,
          .span = rate,
          .sample = R"([1.2, "practice"])"},
};

constexpr std::array size_fields = {
    Field{.name = "linear_mass_kg_m",
          .kind = Kind::sourced,
          .span = ratio,
          .sample = R"([0.0072, "practice"])"},
    Field{.name = "melting", .kind = Kind::object, .record = &melting_record},
    Field{.name = "feed_table",
          .kind = Kind::object,
          .shape = Shape::list,
          .record = &feed_point_record,
          .least = 2,
          .most = 100},
    Field{.name = "window", .kind = Kind::object, .record = &window_record},
    Field{.name = "windows", .kind = Kind::object, .record = &windows_record},
    Field{.name = "length_mm", .kind = Kind::sourced, .span = piece_length, .sample = R"([350, "practice"])"},
    Field{.name = "stub_mm", .kind = Kind::sourced, .span = stub_length, .sample = R"([50, "practice"])"},
    Field{.name = "mass_g", .kind = Kind::sourced, .span = piece_mass, .sample = R"([36, "practice"])"},
    Field{.name = "rate_kg_h_A", .kind = Kind::sourced, .span = rate, .sample = R"([0.009, "practice"])"},
    Field{.name = "rate_table",
          .kind = Kind::object,
          .shape = Shape::list,
          .record = &rate_point_record,
          .least = 2,
          .most = 100},
    Field{
        .name = "rate_kg_h", .kind = Kind::sourced_range, .span = rate, .sample = R"([0.5, 3, "practice"])"},
};

constexpr std::array advice_fields = {
    Field{.name = "kind",
          .kind = Kind::word,
          .required = true,
          .sample = R"("technique")",
          .words = advice_words},
    Field{.name = "text", .required = true, .span = table_words, .sample = R"("Lay short beads.")"},
    Field{.name = "source", .required = true, .span = table_words, .sample = R"("practice")"},
};

constexpr std::array filler_fields = {
    Field{.name = "standard", .required = true, .span = table_words, .sample = R"("AWS A5.18")"},
    Field{.name = "form", .kind = Kind::word, .required = true, .sample = R"("solid")", .words = forms},
    Field{.name = "process", .kind = Kind::word, .sample = R"("metal_cored_arc")", .words = process_words},
    Field{.name = "group", .span = group_name, .sample = R"("carbon_steel")"},
    Field{.name = "wire_density_kg_m3",
          .kind = Kind::sourced,
          .span = density,
          .sample = R"([7850, "EN1993-1-2"])"},
    Field{.name = "deposit_density_kg_m3",
          .kind = Kind::sourced,
          .required = true,
          .span = density,
          .sample = R"([7850, "EN1993-1-2"])"},
    Field{.name = "efficiency",
          .kind = Kind::sourced,
          .required = true,
          .span = recovery,
          .sample = R"([0.92, "efficiency-articles"])"},
    Field{.name = "efficiency_of", .kind = Kind::word, .sample = R"("core")", .words = efficiency_words},
    Field{.name = "covering", .kind = Kind::word, .sample = R"("iron_powder")", .words = covering_words},
    Field{.name = "efficiency_range",
          .kind = Kind::sourced_range,
          .span = recovery,
          .sample = R"([0.90, 0.93, "efficiency-articles"])"},
    Field{.name = "efficiency_by_gas",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = ratio,
          .sample = R"({ "C1": [0.90, "efficiency-articles"] })"},
    Field{.name = "efficiency_by_transfer",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = ratio,
          .sample = R"({ "spray": [0.98, "efficiency-articles"] })"},
    Field{.name = "bead_ratio",
          .kind = Kind::sourced,
          .required = true,
          .span = positive,
          .sample = R"([3.0, "Suryakumar"])"},
    Field{.name = "stick_out_mm", .kind = Kind::sourced, .span = positive, .sample = R"([12, "practice"])"},
    Field{.name = "gases",
          .kind = Kind::text,
          .shape = Shape::list,
          .required = true,
          .sample = R"(["M21"])",
          .least = 0,
          .most = 50},
    Field{.name = "composition_pct",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = percent,
          .sample = R"({ "C": [0.15, "A5.18"] })"},
    Field{.name = "typical_pct",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = percent,
          .sample = R"({ "C": [0.02, "practice"], "Cr": [23.5, "practice"] })"},
    Field{
        .name = "hydrogen_ml_100g", .kind = Kind::sourced, .span = hydrogen, .sample = R"([5, "EN1011-2"])"},
    Field{.name = "practice",
          .kind = Kind::object,
          .sample = R"({ "rows": [{ "practice_degC": [100, 250, "EN14700"] }] })",
          .record = &preheat_group_record},
    Field{.name = "interpass_max_degC",
          .kind = Kind::sourced,
          .span = celsius,
          .sample = R"([150, "practice"])"},
    Field{.name = "advice",
          .kind = Kind::object,
          .shape = Shape::list,
          .record = &filler_advice_record,
          .least = 1,
          .most = 10},
    Field{.name = "diameters_mm",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = R"({ "1.0": { ... } })",
          .record = &filler_size_record,
          .least = 1},
};

} // namespace

constinit const Record melting_record{"a melting curve", "", melting_fields};
constinit const Record window_record{"a window of settings", "", window_fields};
constinit const Record windows_record{"windows of settings by transfer", "", windows_fields};
constinit const Record feed_point_record{"a point of the feed table", "", feed_point_fields};
constinit const Record rate_point_record{"a point of the rate table", "", rate_point_fields};
constinit const Record filler_size_record{"a diameter", "", size_fields};
constinit const Record filler_advice_record{"an advice", "", advice_fields};
constinit const Record filler_record{"a filler", "", filler_fields};

} // namespace ringfill
