#include <array>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array formats = {"ringfill-job/1"sv};
constexpr std::array unit_words = {"mm"sv, "inch"sv};
constexpr std::array heaters = {"propane"sv, "acetylene"sv, "resistance"sv, "induction"sv};

constexpr Field torch_fields[] = {
    field<&Torch::smallest_bore>("smallest_bore", spans::size, "smallest bore the torch head goes into",
                                 R"("40 mm")"),
    field<&Torch::reach>("reach", spans::size, "how deep it reaches", R"("300 mm")"),
};

constexpr Field heater_fields[] = {
    field<&Heater::kind>("kind", heaters, "what heats the boss", R"("propane")").required(),
    field<&Heater::power>("power", spans::power, "what the source gives off", R"("30 kW")"),
    field<&Heater::efficiency>("efficiency", spans::ratio, "share that reaches the metal", "0.25"),
};

constexpr Field boring_fields[] = {
    field<&BoringBar::bar_speeds>("bar_speeds", spans::turning, "the speeds the bar has",
                                  R"(["80 rev/min", "125 rev/min", "200 rev/min", "315 rev/min"])")
        .list(1, 50),
    field<&BoringBar::cutting_speed>("cutting_speed", spans::speed, "cutting speed", R"("60 m/min")"),
    field<&BoringBar::feed>("feed", spans::size, "feed per revolution", R"("0.15 mm")"),
    field<&BoringBar::rough_cut>("rough_cut", spans::size, "deepest rough cut, per side", R"("1.5 mm")"),
    field<&BoringBar::edge_life>("edge_life", spans::time, "cutting time of one edge", R"("20 min")"),
    field<&BoringBar::stroke>("stroke", spans::size, "travel of the bar in one set-up", R"("350 mm")"),
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
          .most = 60},
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

constinit const Record torch_record = record_of<Torch>("torch", "the torch head", torch_fields);
constinit const Record heater_record = record_of<Heater>("heater", "what heats the boss", heater_fields);
constinit const Record boring_record = record_of<BoringBar>("boring", "the boring bar", boring_fields);
constinit const Record job_record{"the job", "a whole job", job_fields};

} // namespace ringfill
