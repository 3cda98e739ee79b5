#include <array>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array formats = {"ringfill-job/1"sv};
constexpr std::array unit_words = {"mm"sv, "inch"sv};
constexpr std::array heaters = {"propane"sv, "acetylene"sv, "resistance"sv, "induction"sv};

constexpr std::array torch_fields = {
    Field{.name = "smallest_bore",
          .kind = Kind::length,
          .span = spans::size,
          .help = "smallest bore the torch head goes into",
          .sample = R"("40 mm")"},
    Field{.name = "reach",
          .kind = Kind::length,
          .span = spans::size,
          .help = "how deep it reaches",
          .sample = R"("300 mm")"},
};

constexpr std::array heater_fields = {
    Field{.name = "kind",
          .kind = Kind::word,
          .required = true,
          .help = "what heats the boss",
          .sample = R"("propane")",
          .words = heaters},
    Field{.name = "power",
          .kind = Kind::power,
          .span = spans::power,
          .help = "what the source gives off",
          .sample = R"("30 kW")"},
    Field{.name = "efficiency",
          .kind = Kind::number,
          .span = Span{0.001, 1}, // what no heater gives the metal must not be divided by
          .help = "share that reaches the metal",
          .sample = "0.25"},
};

constexpr std::array boring_fields = {
    Field{.name = "bar_speeds",
          .kind = Kind::turning,
          .shape = Shape::list,
          .span = spans::turning,
          .help = "the speeds the bar has",
          .sample = R"(["80 rev/min", "125 rev/min", "200 rev/min", "315 rev/min"])",
          .least = 1,
          .most = 50},
    Field{.name = "cutting_speed",
          .kind = Kind::speed,
          .span = spans::speed,
          .help = "cutting speed",
          .sample = R"("60 m/min")"},
    Field{.name = "feed",
          .kind = Kind::length,
          .span = spans::size,
          .help = "feed per revolution",
          .sample = R"("0.15 mm")"},
    Field{.name = "rough_cut",
          .kind = Kind::length,
          .span = spans::size,
          .help = "deepest rough cut, per side",
          .sample = R"("1.5 mm")"},
    Field{.name = "edge_life",
          .kind = Kind::time,
          .span = spans::time,
          .help = "cutting time of one edge",
          .sample = R"("20 min")"},
    Field{.name = "stroke",
          .kind = Kind::length,
          .span = spans::size,
          .help = "travel of the bar in one set-up",
          .sample = R"("350 mm")"},
};

constexpr std::array job_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .help = "the format of this file",
          .sample = R"("ringfill-job/1")",
          .words = formats},
    Field{.name = "title",
          .kind = Kind::text,
          .required = true,
          .span = spans::title,
          .help = "what the job is called",
          .sample = R"("Swing-arm pivots, gravel dredger 3")"},
    Field{.name = "units",
          .kind = Kind::word,
          .required = true,
          .help = "how bare lengths are read and results are shown",
          .sample = R"("mm")",
          .words = unit_words},
    Field{.name = "site",
          .kind = Kind::object,
          .help = "where the work is done",
          .sample = R"({ "ambient": "4 degC" })",
          .record = &site_record},
    Field{.name = "procedures",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .help = "welding settings, each under a name of your choosing",
          .sample = R"({ "main": { "filler": "steel/ER70S-6", ... } })",
          .record = &procedure_record,
          .least = 1},
    Field{.name = "bores",
          .kind = Kind::object,
          .shape = Shape::list,
          .required = true,
          .help = "the bores to fill",
          .sample = R"([{ "name": "arm root", ... }])",
          .record = &bore_record,
          .least = 1,
          .most = 1'000},
    Field{.name = "torch",
          .kind = Kind::object,
          .help = "the torch head that goes into the bore",
          .sample = R"({ "smallest_bore": "40 mm", "reach": "300 mm" })",
          .record = &torch_record},
    Field{.name = "heater",
          .kind = Kind::object,
          .help = "what heats the boss",
          .sample = R"({ "kind": "propane", "power": "30 kW" })",
          .record = &heater_record},
    Field{.name = "boring",
          .kind = Kind::object,
          .help = "the boring bar and how it is run",
          .sample = R"({ "cutting_speed": "60 m/min" })",
          .record = &boring_record},
    Field{.name = "start",
          .kind = Kind::text,
          .span = spans::clock,
          .fallback = "07:00",
          .fallback_source = "practice",
          .help = "when each day begins, by a clock of 24 hours",
          .sample = R"("07:00")"},
    Field{.name = "working_day",
          .kind = Kind::time,
          .span = spans::working_day,
          .fallback = "10 h",
          .fallback_source = "practice",
          .help = "how long a day is worked; up to 45 min more where that ends a piece of work",
          .sample = R"("10 h")"},
    Field{.name = "change_over",
          .kind = Kind::time,
          .span = spans::change_over,
          .fallback = "20 min",
          .fallback_source = "practice",
          .help =
              "what it takes to go to another bore of the line and back: a wait that is longer is filled so",
          .sample = R"("20 min")"},
    Field{.name = "reserve",
          .kind = Kind::share,
          .span = spans::share,
          .fallback = "10 %",
          .fallback_source = "practice",
          .help = "how much more than needed goes into the van",
          .sample = R"("10 %")"},
    Field{.name = "prices",
          .kind = Kind::object,
          .help = "what things cost, for the quote",
          .sample = R"({ "currency": "EUR" })",
          .starts = true,
          .record = &prices_record},
};

} // namespace

constinit const Record torch_record{"torch", "the torch head", torch_fields};
constinit const Record heater_record{"heater", "what heats the boss", heater_fields};
constinit const Record boring_record{"boring", "the boring bar", boring_fields};
constinit const Record job_record{"the job", "a whole job", job_fields};

} // namespace ringfill
