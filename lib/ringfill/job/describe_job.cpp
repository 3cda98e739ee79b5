
#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/job/description.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

using namespace spans;

constexpr std::string_view near_words[] = {"hydraulics", "closed_cavity", "tyre", "battery",
                                           "bearing",    "fuel",          "crane"};
constexpr std::string_view coatings[] = {"none", "paint", "zinc", "unknown"};
constexpr std::string_view residues[] = {"grease", "oil", "solvent", "dust"};
constexpr std::string_view crew_words[] = {"implant", "new_to_heat"};

constexpr Field site_fields[] = {
    field<&Site::ambient>("ambient", temperature, "temperature of the air and the cold machine",
                          R"("4 degC")"),
    field<&Site::wet>("wet", "rain, dew or wet metal", "false"),
    field<&Site::indoors>("indoors", "under a roof", "false"),
    field<&Site::enclosed>("enclosed", "inside a space that is hard to leave", "false"),
    field<&Site::room_volume>("room_volume", room, "volume of the room", R"("300 m3")"),
    field<&Site::ceiling>("ceiling", distance, "height of the ceiling", R"("6 m")"),
    field<&Site::near>("near", near_words,
                       "what is near the heat or in the way of the current; what a list leaves out is not "
                       "there, [] says nothing is",
                       R"(["hydraulics", "bearing"])")
        .list(0, 20),
    field<&Site::coating>("coating", coatings, "what the metal is coated with", R"("paint")"),
    field<&Site::residue>("residue", residues, "what is left on the metal; [] for nothing", R"(["grease"])")
        .list(0, 20),
    field<&Site::crew>("crew", crew_words,
                       "who needs care: a heart implant, new to work in the heat; [] for nobody",
                       R"(["new_to_heat"])")
        .list(0, 20),
    field<&Site::fire_rules>(
        "fire_rules", name,
        "whose rule of the fire watch, such as \"NFPA51B-2019\"; \"longest\" takes the longest known",
        R"("longest")"),
};

constexpr std::string_view formats[] = {"ringfill-job/1"};
constexpr std::string_view unit_words[] = {"mm", "inch"};
constexpr std::string_view heaters[] = {"propane", "acetylene", "resistance", "induction"};

constexpr Field torch_fields[] = {
    field<&Torch::smallest_bore>("smallest_bore", size, "smallest bore the torch head goes into",
                                 R"("40 mm")"),
    field<&Torch::reach>("reach", size, "how deep it reaches", R"("300 mm")"),
};

constexpr Field heater_fields[] = {
    must<&Heater::kind>("kind", heaters, "what heats the boss", R"("propane")"),
    // W
    field<&Heater::power>("power", Span{1, 1e6}, "what the source gives off", R"("30 kW")"),
    field<&Heater::efficiency>("efficiency", ratio, "share that reaches the metal", "0.25"),
};

constexpr Field boring_fields[] = {
    // rev/s
    field<&BoringBar::bar_speeds>("bar_speeds", Span{1e-4, 100}, "the speeds the bar has",
                                  R"(["80 rev/min", "125 rev/min", "200 rev/min", "315 rev/min"])")
        .list(1, 50),
    field<&BoringBar::cutting_speed>("cutting_speed", speed, "cutting speed", R"("60 m/min")"),
    field<&BoringBar::feed>("feed", size, "feed per revolution", R"("0.15 mm")"),
    field<&BoringBar::rough_cut>("rough_cut", size, "deepest rough cut, per side", R"("1.5 mm")"),
    field<&BoringBar::edge_life>("edge_life", time, "cutting time of one edge", R"("20 min")"),
    field<&BoringBar::stroke>("stroke", size, "travel of the bar in one set-up", R"("350 mm")"),
};

void read_start(Job& job, const Entry& entry, const Field& field) {
    const auto text = entry.text(field);
    const auto time = text ? clock_time(*text) : std::nullopt;
    if (text && !time)
        entry.refuse(field.name, "is no time of day", R"(write it like "07:00")");
    job.day_start = time.value_or(Time());
}

Value give_start(const Job& job) {
    const double minutes = job.day_start.value() / factor::minute;
    if (!(minutes >= 0 && minutes < 24 * 60))
        return "24:00"; // which is none
    const int whole = static_cast<int>(minutes);
    return fmt::format("{:02}:{:02}", whole / 60, whole % 60);
}

constexpr Field job_fields[] = {
    bare_field("format", formats, "the format of this file", R"("ringfill-job/1")")
        .holds(Kind::word)
        .required(),
    must<&Job::title>("title", Span{1, 20'000}, "what the job is called",
                      R"("Swing-arm pivots, gravel dredger 3")"),
    must<&Job::units>("units", unit_words, "how bare lengths are read and results are shown", R"("mm")"),
    field<&Job::site>("site", site_record, "where the work is done", R"({ "ambient": "4 degC" })"),
    field<&Job::procedures>("procedures", procedure_record,
                            "welding settings, each under a name of your choosing",
                            R"({ "main": { "filler": "steel/ER70S-6", ... } })")
        .some()
        .required(),
    field<&Job::bores>("bores", bore_record, "the bores to fill", R"([{ "name": "arm root", ... }])")
        .list(1, 60)
        .required(),
    field<&Job::torch>("torch", torch_record, "the torch head that goes into the bore",
                       R"({ "smallest_bore": "40 mm", "reach": "300 mm" })"),
    field<&Job::heater>("heater", heater_record, "what heats the boss",
                        R"({ "kind": "propane", "power": "30 kW" })"),
    field<&Job::boring>("boring", boring_record, "the boring bar and how it is run",
                        R"({ "cutting_speed": "60 m/min" })"),
    // characters
    field<&read_start>("start", Span{4, 5}, "when each day begins, by a clock of 24 hours", R"("07:00")")
        .holds(Kind::text)
        .given_by<give_start>()
        .fallback("07:00", "practice"),
    // s, one hour to a whole day
    field<&Job::working_day>("working_day", Span{3'600, 86'400},
                             "how long a day is worked; up to 45 min more where that ends a piece of work",
                             R"("10 h")")
        .fallback("10 h", "practice"),
    // s, up to eight hours
    field<&Job::change_over>(
        "change_over", Span{0, 28'800},
        "what it takes to go to another bore of the line and back: a wait that is longer is filled so",
        R"("20 min")")
        .fallback("20 min", "practice"),
    field<&Job::reserve>("reserve", share, "how much more than needed goes into the van", R"("10 %")")
        .fallback("10 %", "practice"),
    field<&Job::prices>("prices", prices_record, "what things cost, for the quote",
                        R"({ "currency": "EUR" })")
        .starts(),
};

/// The bore's procedure exists; with a single procedure a file need not name it.
void resolve_procedure(WornBore& bore, const Entry& entry, const std::vector<std::string>& names) {
    const bool named = entry.has("procedure");
    if (names.empty() || ranges::contains(names, bore.procedure) || (named && bore.procedure.empty()))
        return;
    if (!named && names.size() == 1 && !entry.reading().by_hand)
        bore.procedure = names.front();
    else
        entry.refuse("procedure",
                     named              ? "is not one of the procedures"
                     : names.size() > 1 ? "is missing, and there are several"
                                        : "is missing",
                     suggest(bore.procedure, names));
}

void check_job(Job& job, const Entry& entry) {
    const auto names =
        job.procedures | ranges::views::transform(&Procedure::name) | ranges::to<std::vector>();
    const auto entries = entry.objects_again("bores");
    for (std::size_t i = 0; i < job.bores.size(); ++i) {
        WornBore& bore = job.bores[i];
        for (std::size_t other = 0; other < i; ++other)
            if (!bore.name.empty() && job.bores[other].name == bore.name)
                entries[i].refuse("name", "is already the name of " + entries[other].path(),
                                  "give each bore its own name");
        resolve_procedure(bore, entries[i], names);
    }
}

} // namespace

const Record site_record =
    record_of<Site>("site", "where the work is done and what stands near it", site_fields);
const Record torch_record = record_of<Torch>("torch", "the torch head", torch_fields);
const Record heater_record = record_of<Heater>("heater", "what heats the boss", heater_fields);
const Record boring_record = record_of<BoringBar>("boring", "the boring bar", boring_fields);
const Record job_record = record_of<Job, check_job>("the job", "a whole job", job_fields);

} // namespace ringfill
