
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
    field<&Site::ambient>("ambient", Span{213.15, 333.15}, R"("4 degC")",
                          "temperature of the air and the cold machine"),
    field<&Site::wet>("wet", "false", "rain, dew or wet metal"),
    field<&Site::indoors>("indoors", "false", "under a roof"),
    field<&Site::enclosed>("enclosed", "false", "inside a space that is hard to leave"),
    field<&Site::room_volume>("room_volume", room, R"("300 m3")", "volume of the room"),
    field<&Site::ceiling>("ceiling", distance, R"("6 m")", "height of the ceiling"),
    field<&Site::near>("near", list_of(near_words, 0, 20), R"(["hydraulics", "bearing"])",
                       "what is near the heat or in the way of the current; what a list leaves out is not "
                       "there, [] says nothing is"),
    field<&Site::coating>("coating", coatings, R"("paint")", "what the metal is coated with"),
    field<&Site::residue>("residue", list_of(residues, 0, 20), R"(["grease"])",
                          "what is left on the metal; [] for nothing"),
    field<&Site::crew>("crew", list_of(crew_words, 0, 20), R"(["new_to_heat"])",
                       "who needs care: a heart implant, new to work in the heat; [] for nobody"),
    field<&Site::fire_rules>(
        "fire_rules", name, R"("longest")",
        "whose rule of the fire watch, such as \"NFPA51B-2019\"; \"longest\" takes the longest known"),
};

constexpr std::string_view formats[] = {"ringfill-job/1"};
constexpr std::string_view unit_words[] = {"mm", "inch"};
constexpr std::string_view heaters[] = {"propane", "acetylene", "resistance", "induction"};

constexpr Field torch_fields[] = {
    field<&Torch::smallest_bore>("smallest_bore", size, R"("40 mm")",
                                 "smallest bore the torch head goes into"),
    field<&Torch::reach>("reach", size, R"("300 mm")", "how deep it reaches"),
};

constexpr Field heater_fields[] = {
    must<&Heater::kind>("kind", heaters, R"("propane")", "what heats the boss"),
    // W
    field<&Heater::power>("power", Span{1, 1e6}, R"("30 kW")", "what the source gives off"),
    field<&Heater::efficiency>("efficiency", ratio, "0.25", "share that reaches the metal"),
    field<&Heater::stays>("stays", "false",
                          "it stays on the boss while it is welded; an electric one does when left out"),
    // K, 50 to 700 degC
    field<&Heater::skin>("skin", Span{323.15, 973.15}, R"("300 degC")",
                         "hottest that the outside may get; the interpass maximum when left out"),
    field<&Heater::start_delay>("start_delay", Span{0, 3'600}, R"("2 min")",
                                "from heater off to the first arc; 2 min when left out"),
};

constexpr Field boring_fields[] = {
    // rev/s
    field<&BoringBar::bar_speeds>("bar_speeds", list_of(Span{1e-4, 100}, 1, 50),
                                  R"(["80 rev/min", "125 rev/min", "200 rev/min", "315 rev/min"])",
                                  "the speeds the bar has"),
    field<&BoringBar::tool>("tool", enum_words<CuttingTool>, R"("carbide")",
                            "what its edges are made of; carbide when left out"),
    field<&BoringBar::cutting_speed>("cutting_speed", speed, R"("60 m/min")",
                                     "cutting speed; that of the deposit when left out"),
    field<&BoringBar::feed>("feed", size, R"("0.15 mm")",
                            "feed per revolution; that of the deposit when left out"),
    field<&BoringBar::rough_cut>("rough_cut", size, R"("1.5 mm")", "deepest rough cut, per side"),
    field<&BoringBar::edge_life>("edge_life", time, R"("20 min")",
                                 "cutting time of one edge; that of the deposit when left out"),
    field<&BoringBar::stroke>("stroke", size, R"("350 mm")", "travel of the bar in one set-up"),
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
    bare_field("format", formats, R"("ringfill-job/1")", "the format of this file").required(),
    must<&Job::title>("title", Span{1, 20'000}, R"("Swing-arm pivots, gravel dredger 3")",
                      "what the job is called"),
    must<&Job::units>("units", unit_words, R"("mm")", "how bare lengths are read and results are shown"),
    field<&Job::site>("site", site_record, R"({ "ambient": "4 degC" })", "where the work is done"),
    must<&Job::procedures>("procedures", procedure_record,
                           R"({ "main": { "filler": "steel/ER70S-6", ... } })",
                           "welding settings, each under a name of your choosing")
        .some(),
    must<&Job::bores>("bores", list_of(bore_record, 1, 60), R"([{ "name": "arm root", ... }])",
                      "the bores to fill"),
    field<&Job::torch>("torch", torch_record, R"({ "smallest_bore": "40 mm", "reach": "300 mm" })",
                       "the torch head that goes into the bore"),
    field<&Job::heater>("heater", heater_record, R"({ "kind": "propane", "power": "30 kW" })",
                        "what heats the boss"),
    field<&Job::boring>("boring", boring_record, R"({ "cutting_speed": "60 m/min" })",
                        "the boring bar and how it is run"),
    // characters
    by_practice<&read_start>("start", Span{4, 5}, R"("07:00")",
                             "when each day begins, by a clock of 24 hours")
        .given_by<give_start>(),
    // s, one hour to a whole day
    by_practice<&Job::working_day>(
        "working_day", Span{3'600, 86'400}, R"("10 h")",
        "how long a day is worked; up to 45 min more where that ends a piece of work"),
    // s, up to eight hours
    by_practice<&Job::breaks>("breaks", Span{0, 28'800}, R"("45 min")",
                              "the break of a day, inside the working day; the fire watch goes on"),
    // s, up to eight hours
    by_practice<&Job::change_over>(
        "change_over", Span{0, 28'800}, R"("20 min")",
        "what it takes to go to another bore of the line and back: a wait that is longer is filled so"),
    // m
    by_practice<&Job::blanket>("blanket", Span{5e-3, 0.2}, R"("25 mm")",
                               "thickness of the insulating blanket, ceramic fibre"),
    by_practice<&Job::reserve>("reserve", share, R"("10 %")", "how much more than needed goes into the van"),
    field<&Job::welding_rules>("welding_rules", name, R"("AWS D1.1")",
                               "the document the job works by, as the tables of preheat name it"),
    shown<&Job::prices>("prices", prices_record, R"({ "currency": "EUR" })",
                        "what things cost, for the quote"),
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

/// A name as people hear it, without blanks and case.
std::string plain_name(std::string_view name) {
    std::string plain;
    for (const char c : name)
        if (c != ' ' && c != '\t')
            plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return plain;
}

/// No two bores are told apart by blanks or case alone.
void refuse_twin_name(const Job& job, const std::vector<Entry>& entries, std::size_t at) {
    const std::string& name = job.bores[at].name;
    for (std::size_t other = 0; other < at; ++other) {
        const std::string& known = job.bores[other].name;
        if (name.empty() || plain_name(known) != plain_name(name))
            continue;
        entries[at].refuse(
            "name",
            fmt::format("is {} {}",
                        known == name ? "already the name of" : "by blanks or case alone not the name of",
                        entries[other].path()),
            "give each bore its own name");
    }
}

void check_job(Job& job, const Entry& entry) {
    if (job.breaks >= job.working_day && entry.is_read("breaks") && entry.is_read("working_day"))
        entry.refuse("breaks", "takes the whole working day", "write less than working_day");
    const auto names =
        job.procedures | ranges::views::transform(&Procedure::name) | ranges::to<std::vector>();
    const auto entries = entry.objects_again("bores");
    for (std::size_t i = 0; i < job.bores.size(); ++i) {
        WornBore& bore = job.bores[i];
        if (!bore.name.empty() && plain_name(bore.name).empty())
            entries[i].refuse("name", "is blank", "write what the bore is called on site");
        else
            refuse_twin_name(job, entries, i);
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
