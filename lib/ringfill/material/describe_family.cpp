#include <ringfill/material/describe_family.hpp>

#include <array>

#include <ringfill/material/preheat_table.hpp>
#include <ringfill/table/signature.hpp>
#include <ringfill/table/source.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span density{500, 25'000};
constexpr Span percent{0, 100};
constexpr Span ratio{0, 1, true};
constexpr Span positive{0, 1e6, true};
constexpr Span not_negative{0, 1e6};
constexpr Span hydrogen{0, 100, true};
constexpr Span strength{0, 5'000, true};
constexpr Span celsius{-60, 700};
constexpr std::array forms = {"solid"sv, "cored"sv};
constexpr std::array structures = {"ferritic"sv,  "martensitic"sv, "austenitic"sv,
                                   "cast_iron"sv, "nickel"sv,      "copper"sv};

constexpr std::array base_fields = {
    Field{.name = "standard", .required = true, .span = table_words, .sample = R"("EN ISO 683-1")"},
    Field{.name = "density_kg_m3",
          .kind = Kind::sourced,
          .required = true,
          .span = density,
          .sample = R"([7850, "EN1993-1-2"])"},
    Field{.name = "composition_pct",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = percent,
          .sample = R"({ "C": [0.46, "ISO683-1"] })"},
    Field{.name = "composition_min_pct",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = percent,
          .sample = R"({ "Cr": [17.5, "A240"] })"},
    Field{.name = "structure",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ferritic")",
          .words = structures},
    Field{.name = "yield_MPa", .kind = Kind::sourced, .span = strength, .sample = R"([690, "EN10025-6"])"},
    Field{.name = "tensile_MPa", .kind = Kind::sourced, .span = strength, .sample = R"([470, "EN10025-2"])"},
    Field{.name = "specific_heat_J_kgK",
          .kind = Kind::sourced,
          .span = {50, 5'000},
          .sample = R"([500, "EN10088-1"])"},
    Field{.name = "conductivity_W_mK",
          .kind = Kind::sourced,
          .span = {1, 500},
          .sample = R"([15, "EN10088-1"])"},
    Field{.name = "expansion_per_K",
          .kind = Kind::sourced,
          .span = {0, 1e-3},
          .sample = R"([16e-6, "EN10088-1"])"},
    Field{.name = "tempering_degC", .kind = Kind::sourced, .span = celsius, .sample = R"([540, "practice"])"},
    Field{.name = "interpass_max_degC",
          .kind = Kind::sourced,
          .span = celsius,
          .sample = R"([350, "EN10293"])"},
    Field{.name = "interpass_range_K",
          .kind = Kind::sourced,
          .span = {0, 500},
          .sample = R"([50, "practice"])"},
    Field{.name = "practice",
          .kind = Kind::object,
          .sample = R"({ "rows": [{ "practice_degC": [150, 200, "practice"] }] })",
          .record = &preheat_group_record},
    Field{.name = "preheat_groups",
          .kind = Kind::text,
          .shape = Shape::list,
          .sample = R"(["D1.1 B"])",
          .least = 1,
          .most = 20},
};

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
    Field{.name = "travel_mm_min",
          .kind = Kind::sourced_range,
          .span = positive,
          .sample = R"([100, 1000, "practice"])"},
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

constexpr std::array wire_size_fields = {
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
};

constexpr std::array filler_fields = {
    Field{.name = "standard", .required = true, .span = table_words, .sample = R"("AWS A5.18")"},
    Field{.name = "form", .kind = Kind::word, .required = true, .sample = R"("solid")", .words = forms},
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
          .span = ratio,
          .sample = R"([0.92, "deposition-by-process"])"},
    Field{.name = "efficiency_by_gas",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = ratio,
          .sample = R"({ "C1": [0.90, "deposition-by-process"] })"},
    Field{.name = "bead_ratio",
          .kind = Kind::sourced,
          .required = true,
          .span = positive,
          .sample = R"([3.0, "Suryakumar"])"},
    Field{.name = "stick_out_mm",
          .kind = Kind::sourced,
          .required = true,
          .span = positive,
          .sample = R"([12, "practice"])"},
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
    Field{
        .name = "hydrogen_ml_100g", .kind = Kind::sourced, .span = hydrogen, .sample = R"([5, "EN1011-2"])"},
    Field{.name = "diameters_mm",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = R"({ "1.0": { ... } })",
          .record = &wire_size_record,
          .least = 1},
};

constexpr std::array format = {"ringfill-family/1"sv};
constexpr std::array family_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-family/1")",
          .words = format},
    Field{.name = "family", .required = true, .span = table_words, .sample = R"("steel")"},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "has_rules", .kind = Kind::flag, .sample = "true"},
    Field{.name = "preheat_groups",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &preheat_group_record},
    Field{.name = "bases",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &base_record},
    Field{.name = "fillers",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &filler_record},
};

} // namespace

constinit const Record base_record{"a base metal", "", base_fields};
constinit const Record melting_record{"a melting curve", "", melting_fields};
constinit const Record window_record{"a window of settings", "", window_fields};
constinit const Record feed_point_record{"a point of the feed table", "", feed_point_fields};
constinit const Record wire_size_record{"a wire diameter", "", wire_size_fields};
constinit const Record filler_record{"a filler", "", filler_fields};
constinit const Record family_record{"a material family", "", family_fields};

} // namespace ringfill
