#include <ringfill/material/describe_family.hpp>

#include <array>

#include <ringfill/material/preheat_table.hpp>
#include <ringfill/material/usual.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/table/suits.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span density{500, 25'000};
constexpr Span percent{0, 100};
constexpr Span strength{0, 5'000, true};
constexpr Span celsius{-60, 700};
constexpr std::array structures = {"ferritic"sv,  "martensitic"sv, "austenitic"sv,
                                   "cast_iron"sv, "nickel"sv,      "copper"sv};

constexpr std::array base_fields = {
    Field{.name = "standard", .required = true, .span = table_words, .sample = R"("EN ISO 683-1")"},
    Field{.name = "group", .span = group_name, .sample = R"("carbon_steel")"},
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
    Field{.name = "typical_pct",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = percent,
          .sample = R"({ "C": [0.20, "practice"] })"},
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
    Field{.name = "never_quenched", .kind = Kind::flag, .sample = "true"},
    Field{.name = "tempering_degC", .kind = Kind::sourced, .span = celsius, .sample = R"([540, "practice"])"},
    Field{.name = "softens_over_degC",
          .kind = Kind::sourced,
          .span = celsius,
          .sample = R"([225, "practice"])"},
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
    Field{.name = "practice_of", .span = table_words, .sample = R"("4140")"},
    Field{.name = "preheat_groups",
          .kind = Kind::text,
          .shape = Shape::list,
          .sample = R"(["D1.1 B"])",
          .least = 1,
          .most = 20},
    Field{.name = "advice",
          .kind = Kind::object,
          .shape = Shape::list,
          .record = &filler_advice_record,
          .least = 1,
          .most = 10},
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
    Field{.name = "usual", .kind = Kind::object, .sample = "{ ... }", .record = &usual_record},
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
    Field{.name = "suits",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &suit_record},
};

} // namespace

constinit const Record base_record{"a base metal", "", base_fields};
constinit const Record family_record{"a material family", "", family_fields};

} // namespace ringfill
