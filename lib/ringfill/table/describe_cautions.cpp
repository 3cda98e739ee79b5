#include <ringfill/table/describe_cautions.hpp>

#include <array>

#include <ringfill/table/read_table.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array whens = {"before"sv, "during"sv, "after"sv};
constexpr Span figures{-1'000, 1e8};
constexpr Span minutes{0, 10'080, true}; // a week
constexpr Span metres{0, 1'000, true};
constexpr Span milligrams{0, 1'000, true};

constexpr std::array trigger_fields = {
    Field{.name = "from", .kind = Kind::sourced, .span = figures, .sample = R"([160, "key"])"},
    Field{.name = "under", .kind = Kind::sourced, .span = figures, .sample = R"([250, "key"])"},
};
constexpr Record trigger_record{"a circumstance", "", trigger_fields};

constexpr std::array limit_fields = {
    Field{.name = "agency", .required = true, .span = table_words, .sample = R"("OSHA")"},
    Field{.name = "year", .required = true, .span = table_words, .sample = R"("2006")"},
    Field{.name = "mg_m3",
          .kind = Kind::sourced,
          .required = true,
          .span = milligrams,
          .sample = R"([0.005, "key"])"},
    Field{.name = "as", .required = true, .span = table_words, .sample = R"("mean of 8 h")"},
};
constexpr Record limit_record{"an exposure limit", "", limit_fields};

constexpr std::array caution_fields = {
    Field{.name = "when", .kind = Kind::word, .required = true, .sample = R"("before")", .words = whens},
    Field{.name = "if",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = R"({ "wet": {} })",
          .record = &trigger_record},
    Field{.name = "check", .span = table_words, .sample = R"("rain or wet metal")"},
    Field{.name = "text", .required = true, .span = table_words, .sample = R"("Keep the rain off.")"},
    Field{.name = "limits",
          .kind = Kind::object,
          .shape = Shape::list,
          .record = &limit_record,
          .least = 1,
          .most = 20},
    Field{.name = "source", .required = true, .span = table_words, .sample = R"("practice")"},
    Field{.name = "second_source", .span = table_words},
};
constexpr Record caution_record{"a caution", "", caution_fields};

constexpr std::array rule_fields = {
    Field{.name = "after_min",
          .kind = Kind::sourced,
          .required = true,
          .span = minutes,
          .sample = R"([60, "key"])"},
    Field{.name = "clear_m",
          .kind = Kind::sourced,
          .required = true,
          .span = metres,
          .sample = R"([10, "key"])"},
    Field{.name = "checks_for_min", .kind = Kind::sourced, .span = minutes, .sample = R"([60, "key"])"},
    Field{.name = "checks_every_min", .kind = Kind::sourced, .span = minutes, .sample = R"([20, "key"])"},
};
constexpr Record rule_record{"a rule of the fire watch", "", rule_fields};

constexpr std::array format = {"ringfill-cautions/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-cautions/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "fire_rules",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &rule_record},
    Field{.name = "cautions",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &caution_record},
};

} // namespace

constinit const Record cautions_record{"the table of cautions", "", file_fields};

} // namespace ringfill
